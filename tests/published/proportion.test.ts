import { describe, expect, it } from 'vitest';
import { proportion } from '../../sim/base/proportion.ts';

/**
 * 95 % intervals of a share by E.B. Wilson's score, as tabled in R.G. Newcombe, Two-sided confidence intervals for the single
 * proportion, Statistics in Medicine 17, 857-872, 1998, table I, method 3 (from memory): four digits.
 */
const ROWS = [
  { hits: 81, count: 263, low: 0.2553, high: 0.3662 },
  { hits: 15, count: 148, low: 0.0624, high: 0.1605 },
  { hits: 0, count: 20, low: 0, high: 0.1611 },
  { hits: 1, count: 29, low: 0.0061, high: 0.1718 },
];

describe('interval of a share', () => {
  it.each(ROWS)('$hits of $count', ({ hits, count, low, high }) => {
    const ours = proportion(hits, count);
    console.log(`${hits}/${count}: ours ${ours.low.toFixed(4)} to ${ours.high.toFixed(4)}, table ${low} to ${high}`);
    expect(Math.abs(ours.low - low)).toBeLessThan(0.00005001);
    expect(Math.abs(ours.high - high)).toBeLessThan(0.00005001);
  });

  it('has the standard error of counting', () => {
    expect(proportion(50, 200).error).toBeCloseTo(Math.sqrt((0.25 * 0.75) / 200), 12);
  });
});
