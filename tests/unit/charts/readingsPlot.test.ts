import { describe, expect, it } from 'vitest';
import { binned, isDrawn, plotDomain } from '../../../src/charts/readingsPlot.ts';

const limit = (value: number) => ({ value, letter: 'A', words: '' });

describe('plotDomain', () => {
  it('holds all readings and the limits that lie near', () => {
    const domain = plotDomain([[50, 50], [60, 60], [40, Infinity]], [limit(35), limit(300)]);
    expect(domain[0]).toBeLessThan(35);
    expect(domain[1]).toBeGreaterThan(60);
    expect(domain[1]).toBeLessThan(100);
    expect([isDrawn(limit(35), domain), isDrawn(limit(300), domain)]).toEqual([true, false]);
  });

  it('is never empty', () => {
    for (const readings of [[], [[50, 50]], [[0, 0]]] as const) {
      const [low, high] = plotDomain(readings, []);
      expect(high).toBeGreaterThan(low);
    }
  });
});

describe('binned', () => {
  it('counts every value once, edges upward, the last edge in the last bin', () => {
    expect(binned([0, 1, 1.5, 2, 4], [0, 4], 4)).toEqual([1, 2, 1, 1]);
  });
});
