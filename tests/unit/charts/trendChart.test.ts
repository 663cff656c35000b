import { describe, expect, it } from 'vitest';
import { isInBand, trendDomain, trendPath, type TrendPoint } from '../../../src/charts/trendChart.ts';

const points = (...values: (number | null)[]): TrendPoint[] => values.map((value, i) => ({ label: String(i), value }));
const atMost = (to: number) => ({ from: -Infinity, to });

describe('trendDomain', () => {
  it('holds zero, every value and the limit, with room above', () => {
    expect(trendDomain(points(2, 5, null), atMost(10))).toEqual([0, 10.8]);
    expect(trendDomain(points(20), atMost(10))).toEqual([0, 21.6]);
    expect(trendDomain(points(-10, 90), { from: 98, to: Infinity })).toEqual([-10, 98 + 108 * 0.08]);
  });
  it('is never empty', () => {
    expect(trendDomain(points(), null)).toEqual([0, 1]);
    expect(trendDomain(points(0, null, NaN), atMost(0))).toEqual([0, 1]);
  });
});

describe('isInBand', () => {
  it('counts the limit itself, also where rounding lifts a value over it', () => {
    expect(isInBand(0.1 + 0.2, atMost(0.3))).toBe(true);
    expect(isInBand(0.30001, atMost(0.3))).toBe(false);
    expect(isInBand(0.98, { from: 0.98, to: Infinity })).toBe(true);
    expect(isInBand(0.97, { from: 0.98, to: Infinity })).toBe(false);
  });
});

describe('trendPath', () => {
  it('breaks where nothing was measured', () => {
    expect(trendPath(points(1, 2, null, 3, 4), (i) => i * 10, (value) => value)).toBe('M0.0,1.0L10.0,2.0M30.0,3.0L40.0,4.0');
  });
});
