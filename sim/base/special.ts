/** Standard deviations in half of a 95 % interval, normal distribution. */
export const SIGMAS_95 = 1.959963984540054;

/** Lanczos coefficients for g = 7, n = 9 (P. Godfrey 2001, "A note on the computation of the convergent Lanczos complex Gamma approximation"). From memory; the tests hold the result to published values. */
const LANCZOS_G = 7;
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313,
  -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
  1.5056327351493116e-7,
] as const;

/**
 * Natural logarithm of the gamma function.
 * @param x above 0. Relative error below 1e-13 for 0.5 <= x <= 100 (measured in the tests).
 */
export function logGamma(x: number): number {
  if (!(x > 0)) return NaN;
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const z = x - 1;
  let sum: number = LANCZOS[0];
  for (let i = 1; i < LANCZOS.length; i++) sum += (LANCZOS[i] as number) / (z + i);
  const t = z + LANCZOS_G + 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Euler's beta function B(a, b) = Γ(a)Γ(b)/Γ(a+b), a and b above 0. */
export function beta(a: number, b: number): number {
  return Math.exp(logGamma(a) + logGamma(b) - logGamma(a + b));
}

/** Below this the series of the error function is used, above it the continued fraction. */
const ERF_SWITCH = 2.5;

/**
 * Error function. Series for |x| < 2.5 and continued fraction of erfc beyond.
 * Absolute error below 1e-14 (measured in the tests). erf(±∞) = ±1; NaN for NaN.
 * Source: M. Abramowitz & I.A. Stegun, Handbook of Mathematical Functions, 1964, eq. 7.1.6 and 7.1.14.
 */
export function erf(x: number): number {
  if (Number.isNaN(x)) return NaN;
  const size = Math.abs(x);
  if (size > 6) return Math.sign(x);
  return Math.sign(x) * (size < ERF_SWITCH ? erfSeries(size) : 1 - erfcFraction(size));
}

/** Eq. 7.1.6: all terms positive, so nothing cancels. */
function erfSeries(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; term > sum * 1e-17; n++) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}

/** Eq. 7.1.14, evaluated from the tail; 60 terms are ample from x = 2.5. */
function erfcFraction(x: number): number {
  let tail = x;
  for (let n = 60; n >= 1; n--) tail = x + n / 2 / tail;
  return Math.exp(-x * x) / (Math.sqrt(Math.PI) * tail);
}

/** Share of a standard normal distribution below `x`. */
export function normalShare(x: number): number {
  return 0.5 * (1 + erf(x / Math.SQRT2));
}
