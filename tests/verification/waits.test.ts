import { describe, expect, it } from 'vitest';
import { driedAt, dryingBetween, paceAt, paceOf, type Pace } from '../../sim/scheme/pace.ts';
import { ruleDryingRatio } from '../../sim/air/dryingFactor.ts';

const kelvin = (fahrenheit: number): number => (fahrenheit - 32) / 1.8 + 273.15;
/** The rule's pace at times, h, and temperatures, °F. */
function rulePace(times_h: readonly number[], temperatures_F: readonly number[]): Pace {
  return paceOf(times_h.map((h) => h * 60), temperatures_F.map((f) => 1 / ruleDryingRatio(kelvin(f))));
}

describe('a wait through a changing day', () => {
  it('follows a step of the temperature exactly: 60 °F for 3 h, then 80 °F', () => {
    // A jump is two times a billionth of a minute apart. 3 h at a half are 1.5 h; the other 2.5 h at twice take 1.25 h.
    const pace = paceOf([0, 180, 180 + 1e-9, 600], [0.5, 0.5, 2, 2]);
    expect(driedAt(pace, 0, 240)).toBeCloseTo(180 + 75, 6);
    expect(dryingBetween(pace, 0, 255)).toBeCloseTo(240, 6);
  });

  it('follows an even rise exactly: ∫ 2^((T - 70)/10) dt from 60 to 80 °F in 8 h', () => {
    const pace = rulePace([0, 8], [60, 80]);
    // T = 60 + 2.5 t: ∫ 2^((2.5 t - 10)/10) dt = 4/ln 2 · (2^((2.5 t - 10)/10) - 2^-1), t in h.
    const closed_h = (t: number): number => (4 / Math.LN2) * (2 ** ((2.5 * t - 10) / 10) - 0.5);
    for (const t of [0.5, 1, 3.7, 8]) expect(dryingBetween(pace, 0, t * 60) / 60).toBeCloseTo(closed_h(t), 10);
    // A wait of 2 h is over where the closed form says 2: t = 4 + 4 log2(2 ln 2 / 4 + 1/2).
    expect(driedAt(pace, 0, 120) / 60).toBeCloseTo(4 + 4 * Math.log2((2 * Math.LN2) / 4 + 0.5), 10);
  });

  it('takes the wait back to the drying that it was asked for, over many hours and outside them', () => {
    const pace = rulePace([6, 9, 12, 15, 18, 21, 30], [52, 61, 70, 78, 74, 60, 49]);
    for (const from of [0, 300, 400, 777, 2000]) {
      for (const need of [1, 50, 333, 2880]) expect(dryingBetween(pace, from, driedAt(pace, from, need))).toBeCloseTo(need, 7);
    }
  });

  it('is what small steps come to, with the second order of the trapezium rule', () => {
    const pace = rulePace([6, 9, 12, 15, 18, 21, 30], [52, 61, 70, 78, 74, 60, 49]);
    const exact = dryingBetween(pace, 360, 1800);
    const errors = [60, 30, 15].map((step) => {
      let sum = 0;
      for (let at = 360; at < 1800; at += step) sum += (step * (paceAt(pace, at) + paceAt(pace, at + step))) / 2;
      return Math.abs(sum - exact);
    });
    console.log('trapezium rule less the closed form, min, at steps of 60, 30, 15 min:', errors);
    expect(Math.log2(errors[0]! / errors[1]!)).toBeGreaterThan(1.9);
    expect(Math.log2(errors[1]! / errors[2]!)).toBeGreaterThan(1.9);
  });
});
