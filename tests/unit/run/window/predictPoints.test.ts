import { describe, expect, it } from 'vitest';
import { fanWidth_m } from '../../../../sim/run/fan.ts';
import { meanPlannedFilm_m } from '../../../../sim/run/planTrials.ts';
import { predictorFor, predictPoints } from '../../../../sim/run/window/predictPoints.ts';
import { withAxis, type PointFilm, type SprayPoint } from '../../../../sim/run/window/sprayPoint.ts';
import { pointOf, wall } from '../../../helpers/walls.ts';

const setting = wall({ coat: { plan: { cross: true }, target: { thickness_um: 100 } } });
const predictor = predictorFor(setting);
const film = (changed: Partial<SprayPoint> = {}): PointFilm => predictor([pointOf(setting, changed)])[0]!;

describe('predictPoints', () => {
  it('lays the mean film that the plan says', () => {
    expect(film().wetMean_m / meanPlannedFilm_m(setting, setting.plan)).toBeCloseTo(1, 5);
  });

  it('lays twice as much with two passes, as unevenly by a root of two', () => {
    const single = wall({ coat: { plan: { cross: false, overlap_percent: 40 } } });
    const one = predictPoints(single, [pointOf(single)])[0]!;
    const two = film({ overlapFraction: 0.4 });
    expect(two.wetMean_m / one.wetMean_m).toBeCloseTo(2, 12);
    expect(two.least_m / one.least_m).toBeCloseTo(2, 12);
    expect(one.cv / two.cv).toBeCloseTo(Math.SQRT2, 12);
  });

  it('judges the film that the target speaks of', () => {
    const dry = wall({ coat: { target: { film: 'dry', thickness_um: 8 } } });
    const one = predictPoints(dry, [pointOf(dry)])[0]!;
    expect(one.least_m).toBeLessThanOrEqual(one.dryMean_m);
    expect(one.most_m).toBeGreaterThanOrEqual(one.dryMean_m);
    expect(one.slack['thin-lap']).toBeCloseTo(one.least_m / (0.8 * 8e-6) - 1, 12);
  });

  it('answers the same whatever else is asked, and in whichever order', () => {
    const points = [0.15, 0.25, 0.35].map((distance_m) => pointOf(setting, { distance_m, thinnerRatio: distance_m }));
    const together = predictor(points);
    const alone = points.map((point) => predictPoints(setting, [point])[0]!);
    expect(together).toEqual(alone);
    expect(predictor([...points].reverse()).reverse()).toEqual(together);
  });

  it('slides nowhere on a level panel, and cures a run there with nothing else changed', () => {
    const level = wall({ tilt_deg: 0, coat: { plan: { cross: true } } });
    const slow = { speed_m_s: 0.17 };
    expect(film(slow).run_m).toBeGreaterThan(3e-3);
    expect(predictPoints(level, [pointOf(level, slow)])[0]!.run_m).toBe(0);
  });

  it('marks distances at which the set-up may not be believed', () => {
    const [near, far] = setting.setUp.distanceRange_m;
    expect([near, far, near - 1e-3, far + 1e-3].map((distance_m) => film({ distance_m }).distanceInRange)).toEqual([true, true, false, false]);
  });

  it('comes nearer the finer its steps, by order one', () => {
    const margin = (stepScale: number) => predictor([pointOf(setting)], { stepScale })[0]!.blushMargin_K;
    const [coarse, middle, fine] = [margin(1), margin(0.5), margin(0.25)];
    const order = Math.log2((coarse - middle) / (middle - fine));
    expect(order).toBeGreaterThan(0.7);
    expect(order).toBeLessThan(1.3);
    // What is left is the sum of the halvings to come.
    expect(coarse - fine + (middle - fine)).toBeLessThan(0.15);
  });

  it('stops when asked, and refuses points that cannot be sprayed', () => {
    expect(() => predictor([pointOf(setting)], { shouldStop: () => true })).toThrow(/stopped on request/);
    for (const bad of [{ distance_m: NaN }, { distance_m: 0 }, { speed_m_s: 0 }, { speed_m_s: NaN }, { overlapFraction: 1 }, { fluidRate_m3_s: -1 }, { thinnerRatio: -0.1 }, { humidityFraction: 1.2 }, { temperature_K: NaN }]) {
      expect(() => film(bad), JSON.stringify(bad)).toThrow(expect.objectContaining({ code: 'range' }) as Error);
    }
  });
});

/** Directions that finishers know: common practice. */
describe('what a change does', () => {
  const wet = { speed_m_s: 0.2 };
  const dusty = wall({ gun: { drops: { meanDiameter_um: 14, spread: 1.8, solventSpeed: 1.8, atViscosity_mPa_s: 50 } } });

  it.each([
    ['farther', { distance_m: 0.26 }],
    ['faster', { speed_m_s: 0.4 }],
    ['less fluid', { fluidRate_m3_s: 1.5e-6 }],
  ])('%s cures a run', (_, change) => {
    expect(film(wet).slack.run).toBeLessThan(0);
    expect(film({ ...wet, ...change }).slack.run).toBeGreaterThan(film(wet).slack.run + 0.5);
  });

  it('closer cures dust; slower leaves a wetter film that levels the mist better', () => {
    const dust = (changed: Partial<SprayPoint>) => predictPoints(dusty, [pointOf(dusty, changed)])[0]!;
    expect(dust({ distance_m: 0.3 }).slack['dry-spray']).toBeLessThan(0);
    expect(dust({ distance_m: 0.15 }).slack['dry-spray']).toBeGreaterThan(0);
    expect(dust({ speed_m_s: 0.2 }).peel_m).toBeLessThan(dust({ speed_m_s: 0.5 }).peel_m);
  });

  it('more fluid leads from thin to heavy', () => {
    const [thin, heavy] = [film({ fluidRate_m3_s: 2e-6 }), film({ fluidRate_m3_s: 4e-6 })];
    expect(thin.slack['thin-lap']).toBeLessThan(0);
    expect(thin.slack['heavy-spot']).toBeGreaterThan(0);
    expect(heavy.slack['thin-lap']).toBeGreaterThan(0);
    expect(heavy.slack['heavy-spot']).toBeLessThan(0);
  });

  it('damp air brings blush; a warmer room with the same water, or retarder, takes it away', () => {
    const damp = pointOf(setting, { humidityFraction: 0.62 });
    const [at, warmer] = predictor([damp, withAxis(damp, 'temperature', damp.temperature_K + 6)]);
    expect(at!.slack.blush).toBeLessThan(0);
    expect(warmer!.slack.blush).toBeGreaterThan(0);
    const retarded = wall({ mix: { retarder: { solvent: 'n-butanol', percent: 20 } }, coat: { plan: { cross: true } } });
    expect(predictPoints(retarded, [pointOf(retarded, damp)])[0]!.blushMargin_K).toBeGreaterThan(at!.blushMargin_K);
  });

  it('lays the same film whatever the width at which the fan is stated', () => {
    const twice = wall({ gun: { fan: { width_mm: 300, depth_mm: 45, atDistance_mm: 300, profile: { family: 'double-beta', beta1: 3, beta2: 3 } } }, coat: { plan: { cross: true } } });
    expect(fanWidth_m(twice.setUp, 0.2)).toBeCloseTo(0.2, 12);
    expect(predictPoints(twice, [pointOf(twice)])[0]!.wetMean_m).toBeCloseTo(film().wetMean_m, 12);
  });
});
