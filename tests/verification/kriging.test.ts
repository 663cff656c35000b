import { describe, expect, it } from 'vitest';
import { conditionalDraws } from '../../sim/survey/kriging/conditionalDraws.ts';
import { covariance_m2, type CovarianceLaw } from '../../sim/survey/kriging/covariance.ts';
import { fitCovariance } from '../../sim/survey/kriging/fitCovariance.ts';
import { krigeAt, makeKriging } from '../../sim/survey/kriging/kriging.ts';
import { krigePlaces, MOST_WHOLE } from '../../sim/survey/kriging/krigePlaces.ts';
import { restrictedLogLikelihood } from '../../sim/survey/kriging/likelihood.ts';
import { placedValues, type PlacedValues } from '../../sim/survey/kriging/placedValues.ts';
import { normalNoise } from '../../sim/base/normalNoise.ts';

const law: CovarianceLaw = { sill_m2: 0.7, range_m: 0.25 };

function values(rows: readonly (readonly [x: number, y: number, value: number])[], noise: number): PlacedValues {
  return placedValues(rows.map(([x, y, value_m]) => ({ at_m: [x, y], value_m, noise_m: noise })));
}

describe('kriging with a closed form', () => {
  it('of one reading is that reading everywhere; the error grows from its noise to √(2 sill + noise²)', () => {
    const kriging = makeKriging(values([[0.2, 0.3, 5]], 0.4), law);
    for (const away of [0, 0.1, 0.5, 20]) {
      const { value_m, error_m } = krigeAt(kriging, 0.2 + away, 0.3);
      expect(value_m).toBeCloseTo(5, 12);
      // Var(z(x) - z(a) - e) = 2 (sill - c) + noise².
      expect(error_m ** 2).toBeCloseTo(2 * (law.sill_m2 - covariance_m2(law, away)) + 0.16, 12);
    }
  });

  it('of two readings weighs them by ½ ± (c1 - c2) / (2 (sill + noise² - c12))', () => {
    const kriging = makeKriging(values([[0, 0, 2], [0.3, 0, 4]], 0.4), law);
    for (const x of [-0.2, 0, 0.1, 0.15, 0.29, 0.7]) {
      const [c1, c2, c12] = [covariance_m2(law, Math.abs(x)), covariance_m2(law, Math.abs(x - 0.3)), covariance_m2(law, 0.3)];
      const whole = law.sill_m2 + 0.16;
      const w = 0.5 + (c1 - c2) / (2 * (whole - c12));
      const { value_m, error_m } = krigeAt(kriging, x, 0);
      expect(value_m).toBeCloseTo(w * 2 + (1 - w) * 4, 12);
      expect(error_m ** 2).toBeCloseTo(law.sill_m2 + whole * (w * w + (1 - w) ** 2) + 2 * w * (1 - w) * c12 - 2 * (w * c1 + (1 - w) * c2), 12);
    }
  });
});

describe('kriging at and away from its readings', () => {
  const rows: readonly (readonly [number, number, number])[] = [[0.1, 0.1, 3], [0.5, 0.2, 4], [0.3, 0.7, 2], [0.2, 1.0, 6]];

  it('is exact where the gauge has no noise, and tends there as the noise goes to 0, order 2', () => {
    const exact = makeKriging(values(rows, 0), law);
    for (const [x, y, value] of rows) {
      expect(krigeAt(exact, x, y).value_m).toBeCloseTo(value, 10);
      expect(krigeAt(exact, x, y).error_m).toBeLessThan(1e-7);
    }
    const off = [0.2, 0.1, 0.05].map((noise) => Math.abs(krigeAt(makeKriging(values(rows, noise), law), 0.2, 1.0).value_m - 6));
    expect(Math.log2((off[0] as number) / (off[1] as number))).toBeGreaterThan(1.7);
    expect(Math.log2((off[1] as number) / (off[2] as number))).toBeGreaterThan(1.9);
  });

  it('is the mean far away, with the whole deviation and the mean’s own error', () => {
    const kriging = makeKriging(values(rows, 0.3), law);
    const { value_m, error_m } = krigeAt(kriging, 50, 50);
    expect(value_m).toBeCloseTo(kriging.mean_m, 12);
    expect(error_m).toBeCloseTo(Math.sqrt(law.sill_m2 + kriging.meanError_m ** 2), 12);
  });

  it('takes readings at one place as one, without changing the answer', () => {
    const twice = makeKriging(values([...rows, [0.1, 0.1, 5]], 0.3), law);
    expect(twice.values.value_m.length).toBe(4);
    expect(twice.values.value_m[0]).toBeCloseTo(4, 12);
    expect(twice.values.noise_m[0]).toBeCloseTo(0.3 / Math.SQRT2, 12);
  });

  it('refuses exact readings that lie too near each other', () => {
    expect(() => makeKriging(values([[0, 0, 1], [2e-6, 0, 2], [4e-6, 0, 1], [6e-6, 0, 1]], 0), { sill_m2: 1, range_m: 1e4 })).toThrow(/too near/);
  });
});

describe('many readings', () => {
  it('answered by their nearest 64 agree with the whole within a tenth of the standard error', () => {
    const rows = Array.from({ length: MOST_WHOLE + 41 }, (_, i): readonly [number, number, number] => {
      const [x, y] = [0.05 * (i % 21), 0.05 * Math.floor(i / 21)];
      return [x, y, Math.sin(6 * x) + Math.cos(5 * y) + 0.2 * normalNoise(4, 0, i)];
    });
    const all = values(rows, 0.2);
    const whole = makeKriging(all, law);
    const places = Float64Array.from([0.03, 0.02, 0.51, 0.52, 0.26, 0.9, 1.0, 0.33]);
    const near = krigePlaces(all, law, places);
    for (let i = 0; i < 4; i++) {
      const { value_m, error_m } = krigeAt(whole, places[2 * i] as number, places[2 * i + 1] as number);
      expect(Math.abs((near.value_m[i] as number) - value_m)).toBeLessThan(0.1 * error_m);
      expect(Math.abs((near.error_m[i] as number) / error_m - 1)).toBeLessThan(0.05);
    }
  });
});

/** 40 values drawn from a law on scattered places, with noise. */
function drawn(sill_m2: number, range_m: number, noise: number, seed: number): PlacedValues {
  const places = Float64Array.from({ length: 80 }, (_, i) => Math.abs(normalNoise(99, seed, i) % 1) * (i % 2 === 0 ? 0.6 : 1.2));
  const start = makeKriging(values([[50, 50, 0]], 0.001), { sill_m2, range_m });
  const field = conditionalDraws(start, places, seed).draw(0);
  return placedValues(Array.from(field, (value, i) => ({ at_m: [places[2 * i] as number, places[2 * i + 1] as number] as const, value_m: value + noise * normalNoise(7, seed, i), noise_m: noise })));
}

const assumed = { range_m: 0.2, leastSill_m2: 0.01, usualSill_m2: 0.1 };

describe('a law fitted', { timeout: 240_000 }, () => {
  it('is the one that the readings were drawn from, on the whole of 15 surveys', () => {
    const fits = Array.from({ length: 15 }, (_, seed) => fitCovariance(drawn(0.8, 0.25, 0.2, seed), assumed)).filter(({ origin }) => origin === 'fitted');
    expect(fits.length).toBeGreaterThanOrEqual(14);
    const middle = (of: (fit: (typeof fits)[number]) => number) => fits.map(of).sort((a, b) => a - b)[fits.length >> 1] as number;
    console.log('sill and range of 0.8 and 0.25 m, median of the fits:', middle(({ law: { sill_m2 } }) => sill_m2), middle(({ law: { range_m } }) => range_m));
    // One fit spreads by some 35 %; the median of 15 is then good to an eighth or so: about three times that.
    expect(Math.abs(middle(({ law: { range_m } }) => range_m) / 0.25 - 1)).toBeLessThan(0.35);
    expect(Math.abs(middle(({ law: { sill_m2 } }) => sill_m2) / 0.8 - 1)).toBeLessThan(0.35);
  });

  it('has its likelihood at a top: neither range nor sill moved makes it likelier', () => {
    const all = drawn(0.8, 0.25, 0.2, 3);
    const { law: best, logLikelihood } = fitCovariance(all, assumed);
    for (const [sill, range] of [[1.2, 1], [0.8, 1], [1, 1.2], [1, 0.8]] as const) {
      expect(restrictedLogLikelihood(all, { sill_m2: best.sill_m2 * sill, range_m: best.range_m * range })).toBeLessThan(logLikelihood as number);
    }
  });

  it('has no range of its own below eight readings, nor where they show no pattern', () => {
    const few = fitCovariance(values([[0, 0, 1], [0.2, 0, 2], [0.4, 0, 3], [0.1, 0.4, 2], [0.3, 0.4, 1]], 0.3), assumed);
    expect([few.origin, few.law.range_m]).toEqual(['few', 0.2]);
    const noise = Array.from({ length: 10 }, (_, seed) => fitCovariance(drawn(1e-8, 0.2, 0.3, seed), assumed).origin);
    expect(noise.filter((origin) => origin === 'no-pattern').length).toBeGreaterThanOrEqual(9);
  });
});

describe('draws given the readings', () => {
  it('have the kriged mean and standard error, and one draw never changes', () => {
    const kriging = makeKriging(values([[0.1, 0.1, 3], [0.5, 0.2, 4], [0.3, 0.7, 2]], 0.2), law);
    const places = Float64Array.from([0.1, 0.12, 0.4, 0.4, 0.2, 1.1]);
    const { draw, value_m, error_m } = conditionalDraws(kriging, places, 11);
    const count = 4000;
    const all = Array.from({ length: count }, (_, i) => draw(i));
    for (let i = 0; i < 3; i++) {
      const mean = all.reduce((sum, one) => sum + (one[i] as number), 0) / count;
      const deviation = Math.sqrt(all.reduce((sum, one) => sum + ((one[i] as number) - mean) ** 2, 0) / (count - 1));
      // Four standard errors of a mean and of a deviation of 4000 draws.
      expect(Math.abs(mean - (value_m[i] as number))).toBeLessThan((4 * (error_m[i] as number)) / Math.sqrt(count));
      expect(Math.abs(deviation / (error_m[i] as number) - 1)).toBeLessThan(4 / Math.sqrt(2 * count));
      const at = krigeAt(kriging, places[2 * i] as number, places[2 * i + 1] as number);
      expect(value_m[i]).toBeCloseTo(at.value_m, 12);
      expect(error_m[i]).toBeCloseTo(at.error_m, 12);
    }
    expect(draw(17)).toEqual(all[17]);
  });
});
