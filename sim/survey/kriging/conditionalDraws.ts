import { normalNoise } from '../../base/normalNoise.ts';
import { choleskyOf, dot, forward } from './cholesky.ts';
import { covariance_m2 } from './covariance.ts';
import { covariancesTo, type Kriging } from './kriging.ts';

/** Draws of what may lie at some places, given the values. */
export interface ConditionalDraws {
  /** Kriged value at each place, m. */
  readonly value_m: Float64Array;
  /** Its standard error, m. */
  readonly error_m: Float64Array;
  /** One draw of all places together, m, fixed by its number and the seed. */
  readonly draw: (index: number) => Float64Array;
}

/** Share of the sill on the diagonal, so that a place at an exact value has a triangle too. */
const JITTER = 1e-9;

/**
 * Draws from the joint normal law of some places given the values, the unknown mean's error with it: kriged value plus the
 * Cholesky triangle of the kriged covariances times independent normal noise. Exact for the law as fitted; that sill and
 * range are themselves not known is left out.
 * @param places_m x0, y0, x1, y1, …; some hundreds at most, since the cost grows with their cube.
 */
export function conditionalDraws(kriging: Kriging, places_m: Float64Array, seed: number): ConditionalDraws {
  const { law, lower, mean_m, meanError_m, pulls, ones } = kriging;
  const count = places_m.length / 2;
  const to = Array.from({ length: count }, (_, i) => covariancesTo(kriging, places_m[2 * i] as number, places_m[2 * i + 1] as number));
  const known = to.map((one) => forward(lower, one));
  const lack = to.map((one) => (1 - dot(one, ones)) * meanError_m);
  const covariance = (i: number, j: number): number => {
    const apart = Math.hypot((places_m[2 * i] as number) - (places_m[2 * j] as number), (places_m[2 * i + 1] as number) - (places_m[2 * j + 1] as number));
    return covariance_m2(law, apart) - dot(known[i] as Float64Array, known[j] as Float64Array) + (lack[i] as number) * (lack[j] as number);
  };
  const value_m = Float64Array.from(to, (one) => mean_m + dot(one, pulls));
  const triangle = choleskyOf(count, (i, j) => covariance(i, j) + (i === j ? JITTER * law.sill_m2 : 0));
  const draw = (index: number): Float64Array => {
    const noise = Float64Array.from({ length: count }, (_, place) => normalNoise(seed, index, place));
    return value_m.map((value, i) => value + dot(triangle.of.subarray(i * count, i * count + i + 1), noise.subarray(0, i + 1)));
  };
  return { value_m, error_m: Float64Array.from(value_m, (_, i) => Math.sqrt(Math.max(0, covariance(i, i)))), draw };
}
