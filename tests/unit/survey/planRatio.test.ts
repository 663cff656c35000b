import { describe, expect, it } from 'vitest';
import { gaugeNoise } from '../../../sim/survey/gaugeNoise.ts';
import { filmReadings } from '../../../sim/survey/filmReadings.ts';
import { leastFilm_m } from '../../../sim/survey/leastFilm.ts';
import { correlatedRatio, planRatio, spreadAbout } from '../../../sim/survey/planRatio.ts';
import type { ReadingSpec } from '../../../sim/job/schema.ts';

describe('measured over planned', () => {
  it('is least squares through the origin with Student’s interval, by hand', () => {
    const pairs = [[9, 10], [17, 20], [28, 30]].map(([measured_m, predicted_m]) => ({ measured_m: measured_m!, predicted_m: predicted_m! }));
    const { value, low, high } = planRatio(pairs)!;
    // Σmp/Σp² = (90 + 340 + 840)/1400; squares left over 2; t(0.975, 2) = 4.302653 (printed tables).
    expect(value).toBeCloseTo(1270 / 1400, 12);
    const left = [9 - 10 * value, 17 - 20 * value, 28 - 30 * value].reduce((sum, off) => sum + off * off, 0);
    expect(high - value).toBeCloseTo(4.302653 * Math.sqrt(left / 2 / 1400), 6);
    expect(value - low).toBeCloseTo(high - value, 12);
    expect(planRatio([])).toBeNull();
    expect(spreadAbout(pairs, value)).toBeCloseTo(Math.sqrt(left / 2) / (value * 20), 12);
  });

  it('with a law of independent readings weighs each by its own variance', () => {
    const placed = (value: number[]) => ({ x_m: Float64Array.from([0, 50, 100]), y_m: new Float64Array(3), value_m: Float64Array.from(value), noise_m: Float64Array.from([0, 0, 2]) });
    const { value } = correlatedRatio(placed([9, 17, 28]), placed([10, 20, 30]), { sill_m2: 1, range_m: 0.1 });
    expect(value).toBeCloseTo((90 + 340 + 840 / 5) / (100 + 400 + 900 / 5), 9);
  });
});

describe('the gauge’s noise', () => {
  const metal = (dry_um: number, spot?: string): ReadingSpec => ({ kind: 'metal', dry_um, ...(spot === undefined ? {} : { spot }) });
  const noiseOf = (specs: ReadingSpec[], stated: number | null = null) => gaugeNoise(filmReadings(specs, { dryDensity_kg_m3: 1200, solidsFraction: 0.1 }), specs, 1200, stated);

  it('is as stated, else pooled from spots with five repeats, else assumed by kind', () => {
    expect(noiseOf([metal(10)], 2e-6).noise).toMatchObject({ origin: 'stated', typical_m: 2e-6 });
    const spots = noiseOf(['a', 'b', 'c'].flatMap((spot) => [9, 10, 11].map((um) => metal(um, spot))));
    expect(spots.noise.origin).toBe('spots');
    // Three spots of 9, 10, 11: squares 6 over 6 repeats.
    expect(spots.noise.typical_m).toBeCloseTo(1e-6, 12);
    const assumed = noiseOf([metal(50), { kind: 'coupon', before_g: 10, after_g: 10.12, area_cm2: 100 }]);
    expect(assumed.noise.origin).toBe('assumed');
    expect(assumed.of[0]).toBeCloseTo(1e-6, 12);
    expect(assumed.of[1]).toBeCloseTo((5e-6 * Math.SQRT2) / (0.01 * 1200), 12);
  });
});

describe('the least film of a rule', () => {
  it('is that of a reading, or of a spot at its level; the shop may have none', () => {
    expect(leastFilm_m({ kind: 'mean-80', nominal_um: 100, low_percent: 80, share_percent: 20, boundary: 'strict', correction_um: 0 })).toBeCloseTo(80e-6, 12);
    expect(leastFilm_m({ kind: 'spots-areas', min_um: 100, level: 3 })).toBeCloseTo(80e-6, 12);
    expect(leastFilm_m({ kind: 'spots-areas', min_um: 100, level: 2 })).toBeCloseTo(100e-6, 12);
    expect(leastFilm_m({ kind: 'shop', name: 'x' })).toBeNull();
  });
});
