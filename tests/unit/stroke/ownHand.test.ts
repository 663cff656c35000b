import { describe, expect, it } from 'vitest';
import { wanderNoise } from '../../../sim/base/noise.ts';
import { demoJob } from '../../../sim/job/demo.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import { FORGOTTEN_SHARE, HAND_PRESETS, handOf, LARGEST_DEVIATIONS, type HandWander } from '../../../sim/stroke/hand.ts';
import { pooledHand, type HandSample, type Wander } from '../../../sim/stroke/handStatistics.ts';
import { ownHand, ownHandSpec } from '../../../sim/stroke/ownHand.ts';
import { distanceWander, laidPlan, sampleOf } from './handTraces.ts';

/** Integral of the noise's squared autocorrelation over all lags, in its units (measured as the constants in hand.ts were): one stretch that counts for a variance. */
const STRETCH_UNITS = 0.38;
/** Fourth moment over squared variance of the noise: 2 (a sine has 1.5, a normal error 3). */
const KURTOSIS = 2;

/** Standard error of a deviation, as a share: half that of a mean square over `stretches`. */
const deviationError = (stretches: number): number => Math.sqrt((KURTOSIS - 1) / stretches) / 2;
/** Standard error of a 1/e time, as a share, at most: that of the autocorrelation there, over its fall per share of the time (2/e, as of a Gaussian). */
const timeError = (stretches: number): number => (1 / Math.sqrt(stretches)) * (Math.E / 2);
/** Standard errors that a fixed set of seeds may be off. */
const SLACK = 4;

describe('the noise of a hand', () => {
  it('has the spread and the 1/e time by which a measured hand is turned into it', () => {
    const seeds = 20;
    const units = 200;
    const runs = Array.from({ length: seeds }, (_, seed) => {
      const noise = wanderNoise(1000 + 7 * seed);
      return Array.from({ length: units * 100 }, (__, i) => noise(i / 100, seed % 5));
    });
    const { mean, deviation, correlation_s } = distanceWander(runs);
    const stretches = (seeds * units) / STRETCH_UNITS;
    expect(Math.abs(mean)).toBeLessThan(SLACK * (deviation / Math.sqrt(stretches)));
    expect(Math.abs(deviation * LARGEST_DEVIATIONS - 1)).toBeLessThan(SLACK * deviationError(stretches));
    expect(Math.abs(correlation_s / FORGOTTEN_SHARE - 1)).toBeLessThan(SLACK * timeError(stretches));
  });
});

describe('ownHand', () => {
  const level: HandWander = { ...HAND_PRESETS.practised, pitch_rad: 0.06, yaw_rad: 0.06, trigger_s: 0.06 };

  it.each([
    // Strokes of 13.7 s, then of 2.3 s: 33 and 5.7 correlation times.
    ['long strokes', 4, 2, 6],
    ['short strokes', 0.6, 1.2, 30],
  ] as const)('gives back the hand that laid a plan: %s', (_, width_m, height_m, sessions) => {
    const seen = Array.from({ length: sessions }, (__, i) => sampleOf(laidPlan(width_m, height_m, level, 100 + 31 * i)));
    const sample = pooledHand(seen.map((each) => each.sample));
    const found = ownHand(sample, seen[0]!.trigger);
    const stretches = (sample.distance_m.count * 0.01) / (STRETCH_UNITS * level.correlation_s);
    const spread = SLACK * deviationError(stretches);
    // Smoothing over 0.1 s takes 22 (0.1 / 1.5)² / 24 of a deviation (22: the noise's curvature at no lag), 0.2 s at speeds twice that.
    const smoothing = 0.01;
    // One session of short strokes spans so few stretches that its own mean takes some of the variance.
    const ownMean = sessions / stretches / 2;
    const slack = spread + smoothing + ownMean;
    const off = (key: keyof HandWander): number => Math.abs(found[key] / level[key] - 1);
    expect(off('distance_m')).toBeLessThan(slack);
    expect(off('speedFraction')).toBeLessThan(slack);
    expect(off('pitch_rad')).toBeLessThan(slack);
    expect(off('yaw_rad')).toBeLessThan(slack);
    // What the line took is given back to 5 %.
    expect(off('across_m')).toBeLessThan(slack + 0.05);
    expect(off('correlation_s')).toBeLessThan(SLACK * timeError(stretches) + 2 * smoothing);
    expect(off('trigger_s')).toBeLessThan(SLACK * deviationError(seen[0]!.trigger.count) + 0.05);
    // The slack can tell 2.27 deviations from 2.5, and a unit from its 1/e time.
    expect(slack).toBeLessThan(0.1);
  });

  it('knows only the root of both tilts together, and shares it evenly', () => {
    const tilted: HandWander = { ...level, pitch_rad: 0.12, yaw_rad: 0.03 };
    const { sample } = sampleOf(laidPlan(4, 2, tilted, 3));
    const { pitch_rad, yaw_rad } = ownHand(sample);
    expect(pitch_rad).toBe(yaw_rad);
    const stretches = (sample.tilt_rad.count * 0.01) / (STRETCH_UNITS * tilted.correlation_s);
    expect(Math.abs(pitch_rad / Math.hypot(0.12, 0.03) - Math.SQRT1_2)).toBeLessThan(SLACK * deviationError(stretches));
  });

  const plain = (deviation: number, correlation_s: number): Wander => ({ mean: 0, deviation, correlation_s, count: 1000 });
  const sampleWith = (all: Wander): HandSample => ({ distance_m: all, across_m: all, speed: all, tilt_rad: all, overlap: { ...all, count: 0 } });

  it('takes a practised hand\'s time where the record shows none, and an exact trigger where none was measured', () => {
    const { correlation_s, trigger_s } = ownHand(sampleWith(plain(0.01, NaN)));
    expect(correlation_s).toBeCloseTo(HAND_PRESETS.practised.correlation_s, 12);
    expect(trigger_s).toBe(0);
  });

  it('leaves a lasting habit out of distance and speed', () => {
    const habit = sampleWith({ ...plain(0.01, 0.4), mean: 0.03 });
    expect(ownHand(habit).distance_m).toBeCloseTo(0.01 * LARGEST_DEVIATIONS, 12);
  });

  it('refuses a sample of nothing', () => {
    expect(() => ownHand(sampleWith({ ...plain(NaN, NaN), count: 0 }))).toThrow('ownHand: samples of the hand = 0');
  });

  it.each([
    ['the wildest', plain(9, 900)],
    ['the quickest', plain(0.01, 0.001)],
    ['the steadiest', plain(0, NaN)],
  ])('stays within what a job file takes: %s', (_, all) => {
    const spec = ownHandSpec('Test hand', ownHand(sampleWith(all), all));
    const job = demoJob();
    const coats = job.coats.map((coat) => ({ ...coat, hand: spec }));
    expect(parseJob({ ...job, coats })).toEqual({ job: { ...job, coats }, warnings: [] });
  });

  it('is the same again from a job file, to its digits', () => {
    const hand = ownHand(sampleWith(plain(0.0123, 0.345)), plain(0.0123, NaN));
    const again = handOf(ownHandSpec('Test hand', hand));
    const half: HandWander = { distance_m: 5e-5, across_m: 5e-5, speedFraction: 5e-4, pitch_rad: 1e-3, yaw_rad: 1e-3, trigger_s: 5e-4, correlation_s: 5e-3 };
    for (const key of Object.keys(half) as (keyof HandWander)[]) expect(Math.abs(again[key] - hand[key]), key).toBeLessThanOrEqual(half[key] + 1e-12);
  });
});
