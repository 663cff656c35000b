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
