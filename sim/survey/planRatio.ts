import { MOST_FREEDOM, studentQuantile } from '../base/studentQuantile.ts';
import type { ComparedReading, Estimate, Trend, TrendKind } from './comparison.ts';
import { dot, forward } from './kriging/cholesky.ts';
import type { CovarianceLaw } from './kriging/covariance.ts';
import { covariancesOf } from './kriging/kriging.ts';
import { MOST_WHOLE } from './kriging/krigePlaces.ts';
import { thinned, type PlacedValues } from './kriging/placedValues.ts';

/** Upper end of a 95 % interval. */
const UPPER = 0.975;
/** Fewer readings show no trend. */
const LEAST_FOR_TREND = 8;

/** A measured film beside a planned one, m. */
export type FilmPair = Pick<ComparedReading, 'measured_m' | 'predicted_m'>;

/**
 * Measured over planned by least squares through the origin, with Student's 95 % interval; readings independent of each
 * other. One reading has no interval (NaN). @returns null where nothing was planned, or nothing read.
 */
export function planRatio(pairs: readonly FilmPair[]): Estimate | null {
  const squares = sumOf(pairs, ({ predicted_m }) => predicted_m ** 2);
  if (!(squares > 0)) return null;
  const value = sumOf(pairs, ({ measured_m, predicted_m }) => measured_m * predicted_m) / squares;
  const left = sumOf(pairs, ({ measured_m, predicted_m }) => (measured_m - value * predicted_m) ** 2);
  return estimate(value, Math.sqrt(left / (pairs.length - 1) / squares), pairs.length - 1);
}

/**
 * The same where near readings are alike: generalised least squares with a law and the gauge's noise, at most 400 of them.
 * @param measured placed values whose `value_m` are films, @param predicted the plan at the same places.
 */
export function correlatedRatio(measured: PlacedValues, predicted: PlacedValues, law: CovarianceLaw): Estimate {
  const [some, planned] = [thinned(measured, MOST_WHOLE), thinned(predicted, MOST_WHOLE)];
  const lower = covariancesOf(some, law);
  const plan = forward(lower, planned.value_m);
  const squares = dot(plan, plan);
  return estimate(dot(plan, forward(lower, some.value_m)) / squares, Math.sqrt(1 / squares), some.value_m.length - 1);
}

/** Ratio of two means, for readings without places: the plan's mean taken as exact. */
export function meanRatio(measured_m: readonly number[], planned_m: number): Estimate | null {
  return planned_m > 0 ? planRatio(measured_m.map((film_m) => ({ measured_m: film_m, predicted_m: planned_m }))) : null;
}

/** Standard deviation of measured over planned about a ratio, as a share of it. */
export function spreadAbout(pairs: readonly FilmPair[], ratio: number): number | null {
  if (pairs.length < 2 || !(ratio > 0)) return null;
  const mean_m = sumOf(pairs, ({ predicted_m }) => predicted_m) / pairs.length;
  return Math.sqrt(sumOf(pairs, ({ measured_m, predicted_m }) => (measured_m - ratio * predicted_m) ** 2) / (pairs.length - 1)) / (ratio * mean_m);
}

/**
 * Trends of film over plan: along x, along y, and with the order of the strokes, each alone beside the common ratio, by least
 * squares; intervals at 95 % for the three together (Bonferroni). Empty below eight readings.
 */
export function trendsOf(readings: readonly ComparedReading[], size_m: readonly [width: number, height: number]): Trend[] {
  if (readings.length < LEAST_FOR_TREND) return [];
  const sides: readonly (readonly [TrendKind, (reading: ComparedReading) => number])[] = [
    ['across', ({ at_m }) => at_m[0] / size_m[0] - 0.5],
    ['up', ({ at_m }) => at_m[1] / size_m[1] - 0.5],
    ['order', ({ order }) => order - 0.5],
  ];
  const upper = 1 - (1 - UPPER) / sides.length;
  return sides.flatMap(([kind, place]) => {
    const change = changeAlong(readings, place, upper);
    return change === null ? [] : [{ kind, change, isSeen: change.low > 0 || change.high < 0 }];
  });
}

/** b/a of measured = a plan + b plan place. */
function changeAlong(readings: readonly ComparedReading[], place: (reading: ComparedReading) => number, upper: number): Estimate | null {
  const both = (of: (reading: ComparedReading) => number) => sumOf(readings, of);
  const [pp, pq, qq] = [both((r) => r.predicted_m ** 2), both((r) => r.predicted_m ** 2 * place(r)), both((r) => (r.predicted_m * place(r)) ** 2)];
  const [pm, qm] = [both((r) => r.predicted_m * r.measured_m), both((r) => r.predicted_m * place(r) * r.measured_m)];
  const determinant = pp * qq - pq * pq;
  // All readings at one place of this side: nothing to see.
  if (!(determinant > 1e-9 * pp * qq) || !(qq > 1e-6 * pp)) return null;
  const a = (qq * pm - pq * qm) / determinant;
  const b = (pp * qm - pq * pm) / determinant;
  if (!(a > 0)) return null;
  const freedom = readings.length - 2;
  const left = both((r) => (r.measured_m - r.predicted_m * (a + b * place(r))) ** 2);
  return estimate(b / a, Math.sqrt((left / freedom) * (pp / determinant)) / a, freedom, upper);
}

function estimate(value: number, error: number, freedom: number, upper = UPPER): Estimate {
  if (freedom < 1) return { value, low: NaN, high: NaN };
  const half = studentQuantile(upper, Math.min(MOST_FREEDOM, freedom)) * error;
  return { value, low: value - half, high: value + half };
}

function sumOf<T>(list: readonly T[], of: (each: T) => number): number {
  return list.reduce((sum, each) => sum + of(each), 0);
}
