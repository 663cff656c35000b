import { checkRange } from '../base/check.ts';
import type { Sourced } from '../materials/sourced.ts';

/** A number with the least and the most that it may be. */
export type Between = Pick<Sourced, 'value' | 'low' | 'high'>;

/**
 * Product of powers (1 or -1) of numbers above 0, with the widest ends that theirs allow.
 * @throws CrosscoatError `range` for a least that is not above 0.
 */
export function productOf(factors: readonly (readonly [factor: Between, power: 1 | -1])[]): Between {
  const product = { value: 1, low: 1, high: 1 };
  for (const [{ value, low, high }, power] of factors) {
    checkRange({ name: 'productOf: least of a factor', value: low, low: Number.MIN_VALUE, high: Number.MAX_VALUE, advice: 'give a number above 0' });
    product.value *= value ** power;
    product.low *= power === 1 ? low : 1 / high;
    product.high *= power === 1 ? high : 1 / low;
  }
  return product;
}
