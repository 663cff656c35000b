import { checkRange } from './check.ts';

/** Most degrees of freedom: beyond it the law is the normal one to four figures. */
export const MOST_FREEDOM = 10_000;
/** Halvings of the bracket: enough for the last digit. */
const HALVINGS = 80;

/**
 * Quantile of Student's t. The law is a finite sum for a whole number of degrees of freedom (M. Abramowitz and I.A. Stegun,
 * Handbook of Mathematical Functions, 1964, eq. 26.7.3 and 26.7.4, from memory; the tests hold it to printed tables),
 * halved down to its last digit.
 * @param share from 1e-6 to 1 - 1e-6. @param freedom whole degrees of freedom, 1 to 10 000.
 * @throws CrosscoatError `range`.
 */
export function studentQuantile(share: number, freedom: number): number {
  checkRange({ name: 'studentQuantile: share', value: share, low: 1e-6, high: 1 - 1e-6, advice: 'give a share inside' });
  checkRange({ name: 'studentQuantile: degrees of freedom', value: Math.round(freedom) === freedom ? freedom : NaN, low: 1, high: MOST_FREEDOM, advice: 'give a whole number of them' });
  const within = Math.abs(2 * share - 1);
  let [low, high] = [0, Math.PI / 2];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, freedom) < within) low = middle;
    else high = middle;
  }
  return Math.sign(share - 0.5) * Math.sqrt(freedom) * Math.tan((low + high) / 2);
}

/**
 * Share of Student's t below a value, by the same finite sum.
 * @param t any number; ±Infinity gives 1 and 0. @param freedom whole degrees of freedom, 1 to 10 000.
 * @throws CrosscoatError `range`.
 */
export function studentShare(t: number, freedom: number): number {
  checkRange({ name: 'studentShare: degrees of freedom', value: Math.round(freedom) === freedom ? freedom : NaN, low: 1, high: MOST_FREEDOM, advice: 'give a whole number of them' });
  if (Number.isNaN(t)) return NaN;
  const within = shareWithin(Math.atan(Math.abs(t) / Math.sqrt(freedom)), freedom);
  return t < 0 ? (1 - within) / 2 : (1 + within) / 2;
}

/** Share of the law within ±t, by θ = atan(t/√freedom). */
function shareWithin(angle_rad: number, freedom: number): number {
  const cos = Math.cos(angle_rad);
  const isOdd = freedom % 2 === 1;
  let term = isOdd ? cos : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let k = isOdd ? 3 : 2; k <= freedom - 2; k += 2) {
    term *= ((k - 1) / k) * cos * cos;
    sum += term;
  }
  const series = Math.sin(angle_rad) * sum;
  return isOdd ? (2 / Math.PI) * (angle_rad + series) : series;
}
