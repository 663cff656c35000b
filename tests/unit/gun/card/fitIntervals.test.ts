import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../sim/base/noise.ts';
import { fitFan } from '../../../../sim/gun/card/fitFan.ts';
import { fitIntervals } from '../../../../sim/gun/card/fitIntervals.ts';
import { quantile } from '../../../../sim/base/quantile.ts';
import { betaProfile, FAN, PROFILES, readCard } from '../../../helpers/fanCards.ts';

const card = (noise: number, count = 41) => readCard({ ...FAN, profile: betaProfile(2.7), imbalance: 0.2 }, count, noise, seededRandom(2));

describe('intervals of a fit', () => {
  it('hold the fitted number, and come out the same for the same seed only', () => {
    const readings = card(0.02);
    const fit = fitFan(readings).fits.find(({ family }) => family === 'double-beta')!;
    const { width, beta1, taper, offset, imbalance, fog } = fitIntervals(readings, 'double-beta', 3);
    for (const [interval, value] of [[width, fit.width_m], [beta1, fit.beta1!], [offset, fit.offset_m], [imbalance, fit.imbalance], [fog, fit.fog]] as const) {
      expect(interval!.low).toBeLessThan(value);
      expect(interval!.high).toBeGreaterThan(value);
    }
    expect(taper).toBeNull();
    expect(fitIntervals(readings, 'double-beta', 3).width).toEqual(width);
    expect(fitIntervals(readings, 'double-beta', 4).width).not.toEqual(width);
  });

  it('close up as the noise goes, to a point without any', () => {
    const length = (noise: number) => {
      const { width } = fitIntervals(card(noise), 'double-beta', 1);
      return width!.high - width!.low;
    };
    // The same noise made ten times less: a straight fit's intervals are ten times shorter, and bent ones come near.
    expect(length(0.001) / length(0.01)).toBeGreaterThan(0.08);
    expect(length(0.001) / length(0.01)).toBeLessThan(0.12);
    expect(length(0)).toBeLessThan(1e-9);
  });

  it('are given for the numbers that a family has', () => {
    const flat = fitIntervals(readCard({ ...FAN, profile: PROFILES['flat-top']! }, 41, 0.01), 'flat-top', 1);
    expect(flat.beta1).toBeNull();
    expect(flat.taper!.low).toBeLessThan(0.4 * 0.105);
    expect(flat.taper!.high).toBeGreaterThan(0.4 * 0.105);
    const gaussian = fitIntervals(card(0.01), 'gaussian', 1);
    expect(gaussian.imbalance).toBeNull();
    expect(gaussian.beta1).toBeNull();
    const few = fitIntervals(card(0.01, 9), 'parabola', 1);
    expect(few.fog).toBeNull();
    expect(few.width).not.toBeNull();
  });
});

describe('a quantile of sorted draws', () => {
  it('lies at its rank, linear between ranks, the ends held', () => {
    const draws = Float64Array.from({ length: 199 }, (_, i) => i + 1);
    expect(quantile(draws, 0.025)).toBeCloseTo(5, 12);
    expect(quantile(draws, 0.5)).toBeCloseTo(100, 12);
    expect(quantile(draws, 0.0275)).toBeCloseTo(5.5, 12);
    expect(quantile(draws, 0)).toBe(1);
    expect(quantile(draws, 1)).toBe(199);
    expect(quantile([7], 0.3)).toBe(7);
  });
});
