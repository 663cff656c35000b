import { checkRange } from './check.ts';
import { normalShare } from './special.ts';

/** Most degrees of freedom: beyond it the law is the normal one to four figures. */
export const MOST_FREEDOM = 10_000;
/** Beyond so many degrees of freedom the sum gives way to the expansion, whose cost does not grow with them. */
const EXPANDED_FROM = 200;
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
  if (freedom > EXPANDED_FROM) return expanded(normalQuantile(share), freedom);
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

/** Eq. 26.7.5 of the same book, from memory, in falling powers of the degrees of freedom: at 200 the first term left out is below 1e-10. */
function expanded(x: number, freedom: number): number {
  const z = x * x;
  const g1 = (x * (z + 1)) / 4;
  const g2 = (x * ((5 * z + 16) * z + 3)) / 96;
  const g3 = (x * (((3 * z + 19) * z + 17) * z - 15)) / 384;
  const g4 = (x * ((((79 * z + 776) * z + 1482) * z - 1920) * z - 945)) / 92160;
  return x + (g1 + (g2 + (g3 + g4 / freedom) / freedom) / freedom) / freedom;
}

/** Halved down likewise; the law beyond ±6 deviations is outside the shares allowed. */
function normalQuantile(share: number): number {
  let [low, high] = [-6, 6];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (normalShare(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
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
