import { cardLines, type CardLine } from './cardLines.ts';
import type { CardDay, CardEntry } from './reportedCard.ts';
import type { UnitSystem } from './units.ts';

/** A step of a day with its lines; what is the same as in an earlier step of that day is said once. */
export interface EntryLines {
  readonly entry: CardEntry;
  readonly lines: readonly CardLine[];
  /** The picture of the strokes stands with an earlier step. */
  readonly isPictured: boolean;
}

/** Fewer lines alike than this are written out: a reader would rather not turn back for them. */
const LEAST_ALIKE = 4;

/** The lines of a day's steps: repeated lines become one that names the step where they stand, so that a day of like coats fits its page. */
export function cardDayLines({ entries }: CardDay, system: UnitSystem): EntryLines[] {
  const whole = entries.map((entry) => ({ entry, lines: cardLines(entry, system) }));
  return whole.map(({ entry, lines }, i) => {
    const earlier = whole.slice(0, i).find((other) => alike(other.lines, lines).length >= LEAST_ALIKE && other.entry.gun?.laidBy === entry.gun?.laidBy);
    if (earlier === undefined) return { entry, lines, isPictured: entry.gun !== null };
    const same = alike(earlier.lines, lines);
    const heads = same.map(({ head }) => head.toLowerCase()).join(', ');
    return { entry, lines: [{ head: `As ${earlier.entry.number}`, text: heads }, ...lines.filter((line) => !same.includes(line))], isPictured: false };
  });
}

/** Lines that stand word for word in another step. */
function alike(others: readonly CardLine[], lines: readonly CardLine[]): CardLine[] {
  return lines.filter(({ head, text }) => others.some((other) => other.head === head && other.text === text));
}
