import type { CardSpec, Job } from '../../../sim/index.ts';
import { changeJob, closeStep } from '../document.ts';
import { dropDraft, fieldText, keepDraft, leaveField, type FieldText } from '../fieldText.ts';
import { readNumber } from '../readNumber.ts';
import { pathOf, pointerOf, valueAt, withValueAt, type JobPath } from '../path.ts';
import { state } from '../state.ts';

/** Measures of one kind that only count together: a cup's volume without its seconds is no flow. */
export interface CardGroup {
  /** Path of the record in the card. */
  readonly at: JobPath;
  readonly keys: readonly string[];
  /** What stands in a box until the reader types another value. */
  readonly usual: Readonly<Record<string, number>>;
}

/** Assumed: a graduated cup is read to 2 mL, a hand starts and stops a watch within half a second. */
export const CAUGHT: CardGroup = {
  at: ['caught'],
  keys: ['volume_mL', 'seconds', 'volumeWithin_mL', 'secondsWithin_s'],
  usual: { volumeWithin_mL: 2, secondsWithin_s: 0.5 },
};

/** Assumed: a scale for hundredths of a gram is right within two of them, a hand keeps its speed within 10 %. */
export const FOIL: CardGroup = {
  at: ['foil'],
  keys: ['gain_g', 'gainWithin_g', 'length_mm', 'strokes', 'speed_m_s', 'speedWithin_percent'],
  usual: { gainWithin_g: 0.02, strokes: 1, speedWithin_percent: 10 },
};

/** Assumed: as for the foil, a hand keeps its speed within 10 %. */
export const COMB: CardGroup = {
  at: ['comb'],
  keys: ['low_um', 'high_um', 'strokes', 'speed_m_s', 'speedWithin_percent'],
  usual: { strokes: 1, speedWithin_percent: 10 },
};

/** Numbers that stand on the card by themselves. */
export type CardNumber = 'distance_mm' | 'widthWithin_mm';

/** One row of the fan's widths. */
export function widthRow(row: number): CardGroup {
  return { at: ['widths', row], keys: ['distance_mm', 'width_mm'], usual: {} };
}

/** Rows that the schema allows. */
export const MOST_WIDTHS = 20;

const CARD_KEYS = ['distance_mm', 'readings', 'caught', 'widths', 'widthWithin_mm', 'foil', 'comb'] as const satisfies readonly (keyof CardSpec)[];

function cardPath(setUp: number): JobPath {
  return ['setUps', setUp, 'card'];
}

function valuePath(setUp: number, group: CardGroup, key: string): JobPath {
  return [...cardPath(setUp), ...group.at, key];
}

/** The box of one measure: what is being typed, else the card's value, else what usually stands there. */
export function partText(setUp: number, group: CardGroup, key: string): FieldText {
  const path = valuePath(setUp, group, key);
  const job = state.job.value;
  const usual = group.usual[key];
  const shown = usual === undefined || valueAt(job, path) !== undefined ? job : withCardValue(job, setUp, [...group.at, key], usual);
  return fieldText(shown, path, state.units.value, state.drafts.value[pointerOf(path)]);
}

/**
 * Takes a keystroke. Until every measure of the group is there, what was typed is kept as drafts,
 * so that half a measurement is neither lost nor taken for a whole one.
 */
export function typePart(setUp: number, group: CardGroup, key: string, label: string, text: string): void {
  const pointer = pointerOf(valuePath(setUp, group, key));
  const typed = readNumber(state.job.peek(), valuePath(setUp, group, key), text, state.units.peek());
  keepDraft(pointer, { text, problem: 'problem' in typed ? typed.problem : null });
  if ('problem' in typed) return;
  const record = wholeRecord(setUp, group);
  if (record !== null) changeJob(label, withCardValue(state.job.peek(), setUp, group.at, record), pointer);
}

/** The reader has left a box. Drafts of a group that still lacks a measure stay. */
export function leavePart(setUp: number, group: CardGroup): void {
  const job = state.job.peek();
  if (valueAt(job, [...cardPath(setUp), ...group.at]) === undefined) return;
  for (const key of group.keys) leaveField(pointerOf(valuePath(setUp, group, key)));
}

/** The box of a number that stands on the card by itself and may be left out. */
export function cardNumberText(setUp: number, key: CardNumber): FieldText {
  const path = [...cardPath(setUp), key];
  return fieldText(state.job.value, path, state.units.value, state.drafts.value[pointerOf(path)]);
}

/** Takes a keystroke of such a number; an empty box leaves it out. */
export function typeCardNumber(setUp: number, key: CardNumber, label: string, text: string): void {
  const path = [...cardPath(setUp), key];
  const pointer = pointerOf(path);
  const job = state.job.peek();
  const typed = text.trim() === '' ? { value: undefined } : readNumber(job, path, text, state.units.peek());
  keepDraft(pointer, { text, problem: 'problem' in typed ? typed.problem : null });
  if ('value' in typed) changeJob(label, withCardValue(job, setUp, [key], typed.value), pointer);
}

export function leaveCardNumber(setUp: number, key: CardNumber): void {
  leaveField(pointerOf([...cardPath(setUp), key]));
}

/** The group as far as its boxes go; null while one of them has no value. */
function wholeRecord(setUp: number, group: CardGroup): Record<string, number> | null {
  const job = state.job.peek();
  const record: Record<string, number> = {};
  for (const key of group.keys) {
    const path = valuePath(setUp, group, key);
    const draft = state.drafts.peek()[pointerOf(path)];
    const typed = draft === undefined ? null : readNumber(job, path, draft.text, state.units.peek());
    const value = typed !== null && 'value' in typed ? typed.value : (valueAt(job, path) ?? group.usual[key]);
    if (typeof value !== 'number') return null;
    record[key] = value;
  }
  return record;
}

/** Whether anything of the group was entered. */
export function isBegun(setUp: number, group: CardGroup): boolean {
  const begun = pointerOf([...cardPath(setUp), ...group.at]);
  return valueAt(state.job.value, pathOf(begun)) !== undefined || Object.keys(state.drafts.value).some((pointer) => pointer.startsWith(`${begun}/`));
}

/** Takes a group off the card, with what was being typed in it; one step of undo. */
export function clearPart(setUp: number, group: CardGroup, label: string): void {
  const job = state.job.peek();
  const last = group.at.at(-1);
  dropDraftsBelow(pointerOf([...cardPath(setUp), ...group.at]));
  closeStep();
  if (typeof last !== 'number') {
    changeJob(label, withCardValue(job, setUp, group.at, undefined));
    return;
  }
  const list = group.at.slice(0, -1);
  const path = [...cardPath(setUp), ...list];
  moveDraftsUp(pointerOf(path), last);
  const left = ((valueAt(job, path) ?? []) as unknown[]).filter((_, row) => row !== last);
  changeJob(label, withCardValue(job, setUp, list, left.length === 0 ? undefined : left));
}

function dropDraftsBelow(pointer: string): void {
  for (const each of Object.keys(state.drafts.peek())) if (each.startsWith(`${pointer}/`)) dropDraft(each);
}

/** Rows below one that goes move up, and what is being typed in them with them. */
function moveDraftsUp(list: string, gone: number): void {
  state.drafts.value = Object.fromEntries(
    Object.entries(state.drafts.peek()).map(([pointer, draft]) => {
      if (!pointer.startsWith(`${list}/`)) return [pointer, draft];
      const [row, ...rest] = pointer.slice(list.length + 1).split('/');
      const moved = Number(row) > gone ? Number(row) - 1 : Number(row);
      return [[list, moved, ...rest].join('/'), draft];
    }),
  );
}

/** Sets a value of the card, or takes it off with undefined; a card with nothing on it is no card. Keys stand in the file's order. */
export function withCardValue(job: Job, setUp: number, at: JobPath, value: unknown): Job {
  const card = (valueAt(job, cardPath(setUp)) ?? {}) as CardSpec;
  const [key, ...rest] = at;
  const inner = rest.length === 0 ? value : withValueAt((card[key as keyof CardSpec] ?? (typeof rest[0] === 'number' ? [] : {})) as object, rest, value);
  const loose: Readonly<Record<string, unknown>> = { ...card, [String(key)]: inner };
  const ordered = Object.fromEntries(CARD_KEYS.flatMap((each) => (loose[each] === undefined ? [] : [[each, loose[each]]])));
  const { card: old, ...bare } = job.setUps[setUp] as Job['setUps'][number];
  if (Object.keys(ordered).length === 0) return old === undefined ? job : withValueAt(job, ['setUps', setUp], bare);
  return withValueAt(job, cardPath(setUp), ordered);
}
