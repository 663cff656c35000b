/** How alike the differences at two places are. */
export interface CovarianceLaw {
  /** Variance of the differences beside their mean, without the gauge's noise, m²; above 0. */
  readonly sill_m2: number;
  /** Distance at which two places are still alike by about half (0.483 of the sill), m; above 0. */
  readonly range_m: number;
}

/**
 * Covariance of two places so far apart, m²: Matérn's law of smoothness 3/2,
 * `sill (1 + √3 h/range) exp(-√3 h/range)` (C.E. Rasmussen and C.K.I. Williams, Gaussian Processes for Machine Learning,
 * 2006, eq. 4.17, from memory; held to two general-purpose packages in tests/published).
 *
 * Why this one: what a hand and a fan do wrong is smeared by the fan over its width, so that the film has no corners, as
 * the exponential law would give it at each reading; the Gaussian law is smoother than any hand and goes to rounding.
 */
export function covariance_m2({ sill_m2, range_m }: CovarianceLaw, distance_m: number): number {
  const reach = (Math.sqrt(3) * distance_m) / range_m;
  return sill_m2 * (1 + reach) * Math.exp(-reach);
}
