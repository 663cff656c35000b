import type { ReadingSpec } from '../job/schema.ts';

/** A reading as dry film, m. A comb says no more than two bounds; the other kinds give one figure, which is both. */
export interface FilmReading {
  /** Its place in the survey's list, from 0. */
  readonly index: number;
  readonly kind: ReadingSpec['kind'];
  readonly low_m: number;
  /** Infinity where every tooth of a comb was wetted. */
  readonly high_m: number;
  /** x and y on the panel, m; null where it was not said. */
  readonly at_m: readonly [number, number] | null;
  /** Names of its area and of its spot in it; null where it was not said. */
  readonly area: string | null;
  readonly spot: string | null;
}

/** The middle of what a reading says; null where it has no upper bound. */
export function middle_m({ low_m, high_m }: FilmReading): number | null {
  return Number.isFinite(high_m) ? (low_m + high_m) / 2 : null;
}

/** The middles of all that have one. */
export function middles_m(readings: readonly FilmReading[]): number[] {
  return readings.map(middle_m).filter((middle) => middle !== null);
}
