import { backward, dot, forward, logDeterminant } from './cholesky.ts';
import type { CovarianceLaw } from './covariance.ts';
import { covariancesOf } from './kriging.ts';
import type { PlacedValues } from './placedValues.ts';

/**
 * Logarithm of the restricted likelihood of a law, the unknown mean integrated out:
 * `-½ ((n - 1) log 2π + log|K| + log(1ᵀK⁻¹1) + rᵀPr)` (D.A. Harville, "Bayesian inference for variance components using only
 * error contrasts", Biometrika 61, 383-385, 1974, from memory, less its constant ½ log n; tests/published).
 * @param values at least 2.
 */
export function restrictedLogLikelihood(values: PlacedValues, law: CovarianceLaw): number {
  const lower = covariancesOf(values, law);
  const { value_m } = values;
  const count = value_m.length;
  const one = forward(lower, new Float64Array(count).fill(1));
  const whole = dot(one, one);
  const mean_m = dot(backward(lower, one), value_m) / whole;
  const off = forward(lower, value_m.map((value) => value - mean_m));
  return -0.5 * ((count - 1) * Math.log(2 * Math.PI) + logDeterminant(lower) + Math.log(whole) + dot(off, off));
}
