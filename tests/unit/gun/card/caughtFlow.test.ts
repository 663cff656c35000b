import { describe, expect, it } from 'vitest';
import { caughtFlow } from '../../../../sim/gun/card/caughtFlow.ts';

const cup = { volume_mL: 90, seconds: 30, volumeWithin_mL: 1.8, secondsWithin_s: 0.45 };

describe('fluid rate by a catch cup', () => {
  it('is volume over time, in quadrature', () => {
    const { value, within } = caughtFlow(cup);
    expect(value * 60e6).toBeCloseTo(180, 9);
    // 2 % and 1.5 % make 2.5 %.
    expect(within / value).toBeCloseTo(0.025, 12);
  });

  it('is exact where both are', () => {
    expect(caughtFlow({ ...cup, volumeWithin_mL: 0, secondsWithin_s: 0 }).within).toBe(0);
  });

  it.each([
    ['a volume no better than itself', { volumeWithin_mL: 90 }, /volume_mL = 90 mL is known within 90 mL only/],
    ['a time no better than itself', { secondsWithin_s: 31 }, /seconds = 30 s is known within 31 s only/],
    ['a volume that is no number', { volume_mL: NaN }, /volume_mL = NaN/],
    ['an interval that is no number', { secondsWithin_s: NaN }, /seconds = 30/],
  ])('refuses %s', (_, put, message) => {
    expect(() => caughtFlow({ ...cup, ...put })).toThrow(message);
  });
});
