import { compensatedSum } from '../base/sums.ts';
import type { FilmReading } from './filmReading.ts';
import type { Bounds } from './limits.ts';

/** Mean by a compensated sum, so that ten thousand readings round no further than ten; Infinity where one is; NaN for none. */
export function mean(values: readonly number[]): number {
  if (values.includes(Infinity)) return Infinity;
  return compensatedSum(values) / values.length;
}

/** Mean at the low bounds and at the high ones. */
export function meanBounds(readings: readonly Pick<FilmReading, 'low_m' | 'high_m'>[]): Bounds {
  return [mean(readings.map(({ low_m }) => low_m)), mean(readings.map(({ high_m }) => high_m))];
}

/** Standard deviation, n - 1; 0 for one value, NaN for none. */
export function deviation(values: readonly number[]): number {
  if (values.length < 2) return values.length === 1 ? 0 : NaN;
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)) * (values.length / (values.length - 1)));
}
