import type { CovarianceLaw } from './covariance.ts';
import { restrictedLogLikelihood } from './likelihood.ts';
import { thinned, type PlacedValues } from './placedValues.ts';

/**
 * Where a law's range comes from: fitted to the values; assumed, since there are too few of them; assumed, since they show
 * no pattern of their own.
 */
export type RangeOrigin = 'fitted' | 'few' | 'no-pattern';

/** A law and where it comes from. */
export interface FittedCovariance {
  readonly law: CovarianceLaw;
  readonly origin: RangeOrigin;
  /** Logarithm of the restricted likelihood; null where there are fewer than 2 values. */
  readonly logLikelihood: number | null;
  /** How far that is above the best that independent differences reach; 0 where no range was tried. */
  readonly gain: number;
  /** Values that the fit looked at. */
  readonly used: number;
}

/** What is taken where the values cannot say. */
export interface AssumedCovariance {
  readonly range_m: number;
  /** Least sill, m²: no hand lays a coat more evenly. */
  readonly leastSill_m2: number;
  /** Sill where there are fewer than three values, m². */
  readonly usualSill_m2: number;
}

/** Fewer values than this say nothing of a range. Assumed: seven pairs of neighbours are the least that a spread is read from. */
export const LEAST_FITTED = 8;
/** A fit looks at so many at most, every so-manieth: more change the range little and cost their cube. */
export const MOST_FITTED = 80;
/** Gain in log likelihood that a pattern must show: half the 95 % quantile of χ² with two degrees of freedom, since the range is looked for. */
const LEAST_GAIN = 3;
/** No two readings are so near: their differences are independent. */
const NO_RANGE_M = 1e-9;
const RANGE_STEPS = 8;
/** Golden sections of range and sill while a range is looked for, and of the sill at the end. */
const ROUGH_STEPS = 9;
const FINE_STEPS = 16;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** Sills are looked for within these shares of the values' variance. */
const SILL_SHARES: readonly [number, number] = [1e-4, 20];

/**
 * A law for values with known noise: sill and range by restricted maximum likelihood, the sill for each range by golden
 * section, the range over a ladder from half the nearest pair to the farthest pair and then by golden section.
 *
 * With fewer than 8 values, or where no range does better than independent differences by 3 in log likelihood, the range
 * is the assumed one, and the sill that of the best likelihood there, but never below the least.
 */
export function fitCovariance(all: PlacedValues, assumed: AssumedCovariance): FittedCovariance {
  const values = thinned(all, MOST_FITTED);
  const used = values.value_m.length;
  if (used < 3) {
    const law = { range_m: assumed.range_m, sill_m2: assumed.usualSill_m2 };
    return { law, origin: 'few', logLikelihood: used < 2 ? null : restrictedLogLikelihood(values, law), gain: 0, used };
  }
  const best = used < LEAST_FITTED ? null : bestRange(values);
  const gain = best === null ? 0 : best.logLikelihood - atRange(values, NO_RANGE_M, FINE_STEPS).logLikelihood;
  if (best !== null && gain >= LEAST_GAIN) return { ...best, origin: 'fitted', gain, used };
  const there = atRange(values, assumed.range_m, FINE_STEPS);
  const law = { range_m: assumed.range_m, sill_m2: Math.max(assumed.leastSill_m2, there.law.sill_m2) };
  return { law, origin: best === null ? 'few' : 'no-pattern', logLikelihood: restrictedLogLikelihood(values, law), gain, used };
}

type Tried = Pick<FittedCovariance, 'law'> & { readonly logLikelihood: number };

function bestRange(values: PlacedValues): Tried {
  const [near, far] = spacings(values);
  const [low, high] = [Math.log(near / 2), Math.log(far)];
  const at = (place: number) => atRange(values, Math.exp(place), ROUGH_STEPS);
  const step = (high - low) / RANGE_STEPS;
  const ladder = Array.from({ length: RANGE_STEPS + 1 }, (_, i) => low + i * step);
  const tried = ladder.map(at);
  const top = tried.reduce((best, one, i) => (one.logLikelihood > (tried[best] as Tried).logLikelihood ? i : best), 0);
  const middle = ladder[top] as number;
  const { law } = goldenBest(at, Math.max(low, middle - step), Math.min(high, middle + step), ROUGH_STEPS);
  return atRange(values, law.range_m, FINE_STEPS);
}

/** The best sill for a range. */
function atRange(values: PlacedValues, range_m: number, steps: number): Tried {
  const scale_m2 = varianceOf(values);
  const at = (place: number): Tried => {
    const law = { range_m, sill_m2: scale_m2 * Math.exp(place) };
    return { law, logLikelihood: restrictedLogLikelihood(values, law) };
  };
  return goldenBest(at, Math.log(SILL_SHARES[0]), Math.log(SILL_SHARES[1]), steps);
}

/** The best place between two by golden section (J. Kiefer 1953); the curve has one top there. */
function goldenBest(at: (place: number) => Tried, from: number, to: number, steps: number): Tried {
  let [low, high] = [from, to];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [at(left), at(right)];
  for (let i = 0; i < steps; i++) {
    if (atLeft.logLikelihood >= atRight.logLikelihood) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = at(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = at(right);
    }
  }
  return atLeft.logLikelihood >= atRight.logLikelihood ? atLeft : atRight;
}

/** Distance of the nearest pair and of the farthest, m. */
function spacings({ x_m, y_m }: PlacedValues): readonly [number, number] {
  let [near, far] = [Infinity, 0];
  for (let i = 0; i < x_m.length; i++) {
    for (let j = 0; j < i; j++) {
      const apart = Math.hypot((x_m[i] as number) - (x_m[j] as number), (y_m[i] as number) - (y_m[j] as number));
      near = Math.min(near, apart);
      far = Math.max(far, apart);
    }
  }
  return [near, far];
}

/** Variance about the mean with the noise in it, m²; above 0, so that all the same values have a scale too. */
function varianceOf({ value_m, noise_m }: PlacedValues): number {
  const mean_m = value_m.reduce((sum, value) => sum + value, 0) / value_m.length;
  const squares = value_m.reduce((sum, value, i) => sum + (value - mean_m) ** 2 + (noise_m[i] as number) ** 2, 0);
  return Math.max(1e-20, squares / value_m.length);
}
