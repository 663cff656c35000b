import { weightedSum } from '../base/sums.ts';
import type { Bounds } from './limits.ts';

/** Mean by a compensated sum, so that ten thousand readings round no further than ten; Infinity where one is; NaN for none. */
export function mean(values: readonly number[]): number {
  if (values.includes(Infinity)) return Infinity;
  return weightedSum(values, new Float64Array(values.length).fill(1)) / values.length;
}

/** Mean at the low bounds and at the high ones. */
export function meanBounds(each: readonly Bounds[]): Bounds {
  return [mean(each.map(([low]) => low)), mean(each.map(([, high]) => high))];
}

/** Standard deviation, n - 1; 0 for one value, NaN for none. */
export function deviation(values: readonly number[]): number {
  if (values.length < 2) return values.length === 1 ? 0 : NaN;
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)) * (values.length / (values.length - 1)));
}
