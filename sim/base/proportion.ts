import { SIGMAS_95 } from './special.ts';

/** A share of trials with its 95 % interval. */
export interface Proportion {
  readonly share: number;
  readonly low: number;
  readonly high: number;
  /** Standard error of the share by the binomial law, √(p (1 - p)/n). */
  readonly error: number;
}

/**
 * Share of `hits` among `count` trials and its 95 % interval after E.B. Wilson, J. Am. Stat. Assoc. 22, 209, 1927 (from
 * memory): `(p + z²/2n ± z √(p(1-p)/n + z²/4n²)) / (1 + z²/n)`. It stays within 0 to 1, and does not vanish at either.
 * @param count 1 or more.
 */
export function proportion(hits: number, count: number): Proportion {
  const share = hits / count;
  const spread = SIGMAS_95 ** 2 / count;
  const middle = (share + spread / 2) / (1 + spread);
  const half = (SIGMAS_95 * Math.sqrt((share * (1 - share)) / count + spread / (4 * count))) / (1 + spread);
  return { share, low: Math.max(0, middle - half), high: Math.min(1, middle + half), error: Math.sqrt((share * (1 - share)) / count) };
}
