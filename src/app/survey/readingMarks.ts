import type { ReadingSpec } from '../../../sim/index.ts';

/** A reading's place on the panel's drawing. */
export interface ReadingMark {
  readonly at_m: readonly [number, number];
  /** Its number as the table has it. */
  readonly label: string;
  readonly standsOut: boolean;
}

/** Places of the readings that have one, numbered from 1. @param chosen places in the list of those that stand out. */
export function readingMarks(readings: readonly ReadingSpec[], chosen: readonly number[]): ReadingMark[] {
  const standing = new Set(chosen);
  return readings.flatMap(({ x_mm, y_mm }, index) => (x_mm === undefined || y_mm === undefined ? [] : [{ at_m: [x_mm / 1000, y_mm / 1000] as const, label: String(index + 1), standsOut: standing.has(index) }]));
}

/** Numbers this near to each other, px across and up, would be written over each other. */
const NEAR_PX = [40, 18] as const;

/** A number at a mark, or the numbers of several that lie too near to each other: `13` or `13–15`. */
export interface MarkLabel {
  readonly at: readonly [x_px: number, y_px: number];
  readonly text: string;
  readonly standsOut: boolean;
}

/** Numbers beside the marks, those of near neighbours together. @param place where a mark comes on the picture, px. */
export function markLabels(marks: readonly ReadingMark[], place: (mark: ReadingMark) => readonly [number, number]): MarkLabel[] {
  const groups: { readonly at: readonly [number, number]; readonly first: string; last: string; standsOut: boolean }[] = [];
  for (const mark of marks) {
    const [x, y] = place(mark);
    const near = groups.find(({ at }) => Math.abs(at[0] - x) < NEAR_PX[0] && Math.abs(at[1] - y) < NEAR_PX[1]);
    if (near === undefined) groups.push({ at: [x, y], first: mark.label, last: mark.label, standsOut: mark.standsOut });
    else {
      near.last = mark.label;
      near.standsOut ||= mark.standsOut;
    }
  }
  return groups.map(({ at, first, last, standsOut }) => ({ at, text: first === last ? first : Number(last) - Number(first) < 10 ? `${first}–${last}` : `${first} …`, standsOut }));
}
