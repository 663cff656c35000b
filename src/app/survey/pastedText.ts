import { CrosscoatError, parseSurveyReadings, shown, shownNumber, type ReadingSpec, type UnitSystem } from '../../../sim/index.ts';
import { KIND_WORDS, type ReadingKind } from './readingFigures.ts';

export type PasteUnit = 'um' | 'mil';

/** Longest first line that is quoted. */
const QUOTED = 80;

/** Readings of a text, with what they were taken to be. @param unit of films whose column names none. @throws CrosscoatError with row and column. */
export function readingsOfText(text: string, file: string, unit: PasteUnit, system: UnitSystem): { readonly readings: readonly ReadingSpec[]; readonly words: string; readonly warnings: readonly string[] } {
  const { readings, warnings } = parseSurveyReadings(text, file, { unit });
  return { readings, words: `${kindWords(readings, system)}, ${unitWords(text, unit)}`, warnings: warnings.map((warning) => warning.text) };
}

/** Kinds with their numbers, and between which films the gauge's own lie. */
function kindWords(readings: readonly ReadingSpec[], system: UnitSystem): string {
  const counts = new Map<ReadingKind, number>();
  for (const { kind } of readings) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const dry = readings.flatMap((reading) => (reading.kind === 'metal' ? [reading.dry_um * 1e-6] : []));
  const [least, most] = dry.reduce(([low, high], film) => [Math.min(low, film), Math.max(high, film)], [Infinity, -Infinity]);
  const range = dry.length === 0 ? '' : `, dry film ${shownNumber(least, 'film', system)} to ${shown(most, 'film', system)}`;
  return `${[...counts].map(([kind, count]) => `${KIND_WORDS[kind].toLowerCase()} ${count}`).join(', ')}${range}`;
}

/** Where the unit of the films is from: the columns' own names, or what was chosen beside. */
function unitWords(text: string, unit: PasteUnit): string {
  if (!saysItsUnits(text)) return `read as ${unit === 'mil' ? 'mil' : 'µm'}, since the column does not say its unit`;
  const first = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/).find((line) => line.trim() !== '') ?? '';
  return `in the units of the first line, “${first.trim().slice(0, QUOTED)}”`;
}

/** Whether the text can be read without being told a unit. */
function saysItsUnits(text: string): boolean {
  try {
    parseSurveyReadings(text);
    return true;
  } catch (thrown) {
    if (thrown instanceof CrosscoatError) return false;
    throw thrown;
  }
}
