import { CELSIUS_0_K } from '../base/units.ts';
import type { ChangeSpec, SignedSpec } from '../job/schema.ts';
import type { SignatureState } from '../log/signing.ts';
import { roundedText, shown, shownTemperature, shownTime, type UnitSystem } from './units.ts';

/** A moment for a reader: `2026-05-04 08:10 (UTC+02:00)`. Seconds and the offset stay as they were noted. */
export function momentShown(at: string): string {
  const zone = at.endsWith('Z') ? '' : at.slice(-6).replace('-', '−');
  return `${at.slice(0, 10)} ${at.slice(11, zone === '' ? -1 : -6)} (UTC${zone})`;
}

/** One change for a reader: when and who, what was changed, what was there before. */
export interface ChangeLine {
  readonly when: string;
  readonly what: string;
  readonly before: string;
}

/** Changes as lines, oldest first. A signature that was taken back is told with its words, its digest and the reason. */
export function changeLines(changes: readonly ChangeSpec[], system: UnitSystem): ChangeLine[] {
  return changes.map((change) => ({
    when: `${momentShown(change.at)}, ${change.who}`,
    ...(change.what === '/signed' ? reopenedLine(change.before) : { what: pointerWords(change.what), before: beforeWords(change, system) }),
  }));
}

function reopenedLine(before: string): Pick<ChangeLine, 'what' | 'before'> {
  const { signed, why } = (parsed(before) ?? {}) as { readonly signed?: Partial<SignedSpec>; readonly why?: unknown };
  if (signed === undefined) return { what: 'reopened', before };
  const certificate = signed.certificate === undefined ? '' : `, certificate ${signed.certificate}`;
  const words = signed.words === undefined ? '' : `: “${signed.words}”`;
  return {
    what: `reopened, because: ${String(why)}`,
    before: `signed ${momentShown(signed.at ?? '')} by ${signed.who ?? '?'}${certificate}${words}; digest ${signed.sha256 ?? '?'}`,
  };
}

/** Names of places in a record that their key does not say well. */
const NAMES: Readonly<Record<string, string>> = {
  started: 'start', ended: 'end', who: 'who did it', cup: 'cup reading', airStart: 'air at the start', airEnd: 'air at the end', setUp: 'set-up', combs: 'comb', faults: 'fault', photos: 'photograph', notes: 'remark',
  readings: 'reading', at: 'when', dry: 'film', shelfLife: 'shelf life', used: 'liquid used', waited: 'wait', solids: 'solids', kind: 'kind', low: 'low', high: 'high',
};

/** A place in a record in words: `air at the start, temperature`, `comb 3`. */
export function pointerWords(pointer: string): string {
  const words: string[] = [];
  for (const key of pointer.split('/').slice(1)) {
    if (/^\d+$/.test(key) && words.length > 0) words[words.length - 1] = `${words.at(-1) as string} ${Number(key) + 1}`;
    else words.push(keyWords(key));
  }
  return words.join(', ');
}

/** The key without its unit, words apart. */
function keyWords(key: string): string {
  const bare = key.replace(/_(um|mm|C|percent|min|mL|s|g|cm2|kg_m3)$/, '');
  return NAMES[bare] ?? bare.replace(/([a-z])([A-Z])/g, (_, end: string, start: string) => `${end} ${start.toLowerCase()}`);
}

function beforeWords({ what, before }: ChangeSpec, system: UnitSystem): string {
  if (before === '') return 'nothing';
  const value = parsed(before);
  return value === undefined ? before : valueWords(what.split('/').findLast((key) => !/^\d+$/.test(key)) ?? '', value, system);
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function valueWords(key: string, value: unknown, system: UnitSystem): string {
  if (typeof value === 'number') return numberWords(key, value, system);
  if (typeof value === 'string') return /^\d{4}-\d\d-\d\dT/.test(value) ? momentShown(value) : `“${value}”`;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return value.map((item) => valueWords(key, item, system)).join('; ');
  if (value === null || typeof value !== 'object') return 'nothing';
  return Object.entries(value).map(([each, held]) => `${keyWords(each)} ${valueWords(each, held, system)}`).join(', ');
}

/** A number in the reader's unit by the suffix of its key. */
function numberWords(key: string, value: number, system: UnitSystem): string {
  if (key.endsWith('_um')) return shown(value * 1e-6, 'film', system);
  if (key.endsWith('_mm')) return shown(value / 1000, 'length', system);
  if (key.endsWith('_mL')) return shown(value * 1e-6, 'volume', system);
  if (key.endsWith('_min')) return shownTime(value * 60);
  if (key.endsWith('_C')) return shownTemperature(value + CELSIUS_0_K, system);
  if (key.endsWith('_percent')) return `${roundedText(value)} %`;
  if (key.endsWith('_g')) return `${value} g`;
  if (key.endsWith('_cm2')) return `${value} cm²`;
  if (key.endsWith('_kg_m3')) return `${roundedText(value)} kg/m³`;
  return key === 'seconds' ? `${roundedText(value)} s` : String(value);
}

/** Whether a record still is what was signed, a sentence for a sheet and a print. */
export const SIGNATURE_STATE_WORDS: Readonly<Record<SignatureState, string>> = {
  unsigned: 'Not signed.',
  matches: 'Unchanged since it was signed: its digest, worked out again just now, is the one below.',
  'entry-changed': 'CHANGED SINCE SIGNED: what stands here is not what was signed. Its digest, worked out again just now, is another one than below.',
  'recording-changed': 'RECORDED STROKES CHANGED SINCE SIGNED: the words and figures here are as signed, but the recording that they name is not.',
  'recording-missing': 'The words and figures here are as signed, but the recording that was signed with them is not in this job, so it cannot be compared.',
};

/** What signing does and does not do, said where it is done and where it is read. */
export const SIGNING_NOTE =
  'The program records who signed and what, and certifies nothing: whether the work is acceptable is for the person who signs, by the approved data. Signing locks the record. A digest shows a change; it does not prove who made it.';
