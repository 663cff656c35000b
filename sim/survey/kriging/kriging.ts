import { CrosscoatError } from '../../base/errors.ts';
import { backward, choleskyOf, dot, forward, type Lower } from './cholesky.ts';
import { covariance_m2, type CovarianceLaw } from './covariance.ts';
import type { PlacedValues } from './placedValues.ts';

/** Values and their law, made ready to answer for any place. */
export interface Kriging {
  readonly values: PlacedValues;
  readonly law: CovarianceLaw;
  /** Best mean of the whole, m: 1ᵀK⁻¹r / 1ᵀK⁻¹1. */
  readonly mean_m: number;
  /** Standard error of that mean, m. */
  readonly meanError_m: number;
  /** K = L Lᵀ, covariances of the values with their noise. */
  readonly lower: Lower;
  /** K⁻¹(r - mean) and K⁻¹1. */
  readonly pulls: Float64Array;
  readonly ones: Float64Array;
}

/** What is believed of one place, m. */
export interface KrigedValue {
  readonly value_m: number;
  /** Standard error of the film itself there, without the noise of a gauge that would read it, m. */
  readonly error_m: number;
}

/**
 * Ordinary kriging: the mean is not known but the same everywhere, the noise of each value is (N. Cressie, Statistics for
 * Spatial Data, 1993, section 3.2, from memory; tests/published holds it to two general-purpose packages, and one and two
 * readings to their closed form).
 * @throws CrosscoatError `range` for no values, or for exact ones too near each other.
 */
export function makeKriging(values: PlacedValues, law: CovarianceLaw): Kriging {
  const count = values.value_m.length;
  if (count === 0) throw new CrosscoatError('range', 'kriging: there are no readings with a place; tap the places in, or add x and y');
  const lower = covariancesOf(values, law);
  const ones = backward(lower, forward(lower, new Float64Array(count).fill(1)));
  const whole = ones.reduce((sum, one) => sum + one, 0);
  const mean_m = dot(ones, values.value_m) / whole;
  const pulls = backward(lower, forward(lower, values.value_m.map((value) => value - mean_m)));
  return { values, law, mean_m, meanError_m: Math.sqrt(1 / whole), lower, pulls, ones };
}

/** The triangle of the values' covariances, noise on the diagonal. */
export function covariancesOf({ x_m, y_m, noise_m }: PlacedValues, law: CovarianceLaw): Lower {
  return choleskyOf(x_m.length, (i, j) => {
    const apart = Math.hypot((x_m[i] as number) - (x_m[j] as number), (y_m[i] as number) - (y_m[j] as number));
    return covariance_m2(law, apart) + (i === j ? (noise_m[i] as number) ** 2 : 0);
  });
}

/** Covariances of a place with every value. */
export function covariancesTo({ values: { x_m, y_m }, law }: Pick<Kriging, 'values' | 'law'>, x: number, y: number): Float64Array {
  return x_m.map((one, i) => covariance_m2(law, Math.hypot(one - x, (y_m[i] as number) - y)));
}

/**
 * The value at a place and its standard error. At a value without noise it is that value and the error is 0; far from all
 * values the mean, with the whole standard deviation and the mean's own error.
 */
export function krigeAt(kriging: Kriging, x: number, y: number): KrigedValue {
  const { law, lower, mean_m, meanError_m, pulls, ones } = kriging;
  const to = covariancesTo(kriging, x, y);
  const known = forward(lower, to);
  const lack = 1 - dot(to, ones);
  const variance = law.sill_m2 - dot(known, known) + (lack * meanError_m) ** 2;
  return { value_m: mean_m + dot(to, pulls), error_m: Math.sqrt(Math.max(0, variance)) };
}

/** How much each value counts at a place; they sum to 1. */
export function krigingWeights(kriging: Kriging, x: number, y: number): Float64Array {
  const { lower, ones, meanError_m } = kriging;
  const to = covariancesTo(kriging, x, y);
  const share = (1 - dot(to, ones)) * meanError_m ** 2;
  return backward(lower, forward(lower, to)).map((weight, i) => weight + (ones[i] as number) * share);
}
