import { describe, expect, it } from 'vitest';
import { handSample, pooledHand, triggerWander, type HandSample, type Wander } from '../../../sim/stroke/handStatistics.ts';
import { measureStrokes } from '../../../sim/stroke/measure.ts';
import { segmentPath } from '../../../sim/stroke/segment.ts';
import { strokeTraces } from '../../../sim/stroke/traces.ts';
import { makeSession } from '../../helpers/session.ts';
import { distanceTrace, distanceWander, laidPlan, MEANT, sampleOf, strokesLike } from './handTraces.ts';

describe('handSample', () => {
  it('finds nothing in a plan laid exactly', () => {
    const session = laidPlan(1, 0.5, null, 0);
    const { sample, trigger } = sampleOf(session);
    const samples = strokeTraces(session).reduce((sum, { x_m }) => sum + x_m.length, 0);
    for (const key of ['distance_m', 'across_m', 'speed', 'tilt_rad'] as const) {
      expect(Math.abs(sample[key].mean), key).toBeLessThan(1e-9);
      expect(sample[key].deviation, key).toBeLessThan(1e-9);
      expect(sample[key].correlation_s, key).toBeNaN();
      expect(sample[key].count, key).toBe(samples);
    }
    expect(Math.abs(sample.overlap.mean)).toBeLessThan(1e-9);
    // Every stroke but the first has an overlap, and every one two ends.
    expect(sample.overlap.count).toBe(session.strokes.length - 1);
    expect(trigger.count).toBe(2 * session.strokes.length);
    expect(Math.abs(trigger.mean) + trigger.deviation).toBeLessThan(1e-9);
  });

  it('measures each error against what its own stroke was meant to be', () => {
    const [first, second] = strokesLike(2);
    const traces = [distanceTrace(0, [0.01, 0.01, 0.01]), distanceTrace(1, [0.01, 0.01, 0.01])];
    const faster = { ...traces[1]!, speed_m_s: Float64Array.of(0.33, 0.33, 0.33), tilt_rad: Float64Array.of(0.1, 0.2, 0.3) };
    const sample = handSample([traces[0]!, faster], [first!, { ...second!, meant: { ...MEANT, distance_m: 0.21 } }], []);
    // +10 mm on three samples, none on three.
    expect(sample.distance_m).toMatchObject({ mean: expect.closeTo(0.005, 12) as number, deviation: expect.closeTo(0.005, 12) as number, count: 6 });
    expect(sample.speed.mean).toBeCloseTo(0.05, 12);
    expect(sample.tilt_rad.mean).toBeCloseTo(0.1, 12);
    expect(sample.overlap).toEqual({ mean: NaN, deviation: NaN, correlation_s: NaN, count: 0 });
  });

  it('takes the aim off the line that the stroke itself runs along, slanted and backward too', () => {
    const zigzag = [0.002, -0.002, -0.002, 0.002, 0.002, -0.002, -0.002, 0.002];
    const angle_rad = 2.5;
    const straight = distanceTrace(0, zigzag);
    const x_m = zigzag.map((across, i) => i * 0.1 * Math.cos(angle_rad) - across * Math.sin(angle_rad));
    const y_m = zigzag.map((across, i) => i * 0.1 * Math.sin(angle_rad) + across * Math.cos(angle_rad) + 7);
    const { across_m } = handSample([{ ...straight, x_m: Float64Array.from(x_m), y_m: Float64Array.from(y_m) }], strokesLike(1), []);
    // The zigzag has no mean and no slope, so the line stays where it was.
    expect(across_m.mean).toBeCloseTo(0, 12);
    expect(across_m.deviation).toBeCloseTo(0.002, 12);
  });

  it('never pairs samples across strokes', () => {
    // Each stroke holds its error, so that nothing is forgotten within one; across them all would be.
    const { mean, deviation, correlation_s } = distanceWander([Array<number>(9).fill(0.01), Array<number>(9).fill(-0.01)]);
    expect(mean).toBeCloseTo(0, 12);
    expect(deviation).toBeCloseTo(0.01, 12);
    expect(correlation_s).toBeNaN();
  });

  it('goes straight between lags', () => {
    // Lag 1: (1 - 1 + 1) / 3 of the variance; from 1 at lag 0 to 1/3, 1/e is passed here:
    const share = (1 - 1 / Math.E) / (1 - 1 / 3);
    expect(distanceWander([[0.01, 0.01, -0.01, -0.01]], 0.01).correlation_s).toBeCloseTo(share * 0.01, 12);
  });

  it('says nothing of a correlation that the record does not hold three times', () => {
    // Of 10 - lag pairs in a stroke one differs: (8 - lag) / (10 - lag) is 1/e at 6.8 samples.
    const held = [...Array<number>(9).fill(0.01), -0.01];
    const turned = held.map((error) => -error);
    expect(distanceWander([held, turned]).correlation_s).toBeNaN();
    const lag = (8 - 10 / Math.E) / (1 - 1 / Math.E);
    const [below, above] = [2 / 4, 1 / 3];
    const chord = 6 + (below - 1 / Math.E) / (below - above);
    expect(Math.abs(chord - lag)).toBeLessThan(0.1);
    expect(distanceWander([held, turned, held, turned]).correlation_s).toBeCloseTo(0.01 * chord, 12);
  });

  it('reads a sensor\'s noise as 0.06 s, which is the smoothing', () => {
    const session = laidPlan(4, 2, null, 0);
    const noise_m = 0.001;
    const rate_Hz = 500;
    const path = makeSession({ planned: { ...session, warnings: [] }, seed: 5, rate_Hz, noise_m, noise_rad: 0 });
    const strokes = segmentPath(path).strokes;
    const { deviation, correlation_s, count } = handSample(strokeTraces({ ...session, path, strokes }), strokes, []).distance_m;
    const windows = (count * 0.01) / 0.1;
    // A window's mean: a triangle of 0.1 s, at 1/e after 0.0632 s. Four standard errors.
    expect(Math.abs(correlation_s - 0.1 * (1 - 1 / Math.E))).toBeLessThan((4 * 0.1) / Math.sqrt(windows));
    expect(Math.abs(deviation / (noise_m / Math.sqrt(0.1 * rate_Hz)) - 1)).toBeLessThan(4 / Math.sqrt(2 * windows));
  });
});

describe('triggerWander', () => {
  it('is the way along the stroke at the speed meant, late being positive at both ends', () => {
    const session = laidPlan(1, 0.5, null, 0);
    const late_m = 0.03;
    const measures = measureStrokes(session).map((each) => {
      const [dx, dy] = [late_m * Math.cos(each.direction_rad), late_m * Math.sin(each.direction_rad)];
      return { ...each, start_m: [each.start_m[0] + dx, each.start_m[1] + dy] as const };
    });
    const { mean, deviation } = triggerWander(session.strokes, measures);
    // 30 mm at 0.3 m/s is 0.1 s, at one end of two.
    expect(mean).toBeCloseTo(0.05, 9);
    expect(deviation).toBeCloseTo(0.05, 9);
  });

  it('knows nothing where only medians say what was meant', () => {
    const session = laidPlan(1, 0.5, null, 0);
    const strokes = session.strokes.map((stroke) => ({ ...stroke, meant: { ...stroke.meant, start_m: [NaN, NaN] as const, end_m: [NaN, NaN] as const } }));
    expect(triggerWander(strokes, measureStrokes(session)).count).toBe(0);
  });
});

describe('pooledHand', () => {
  const none: Wander = { mean: NaN, deviation: NaN, correlation_s: NaN, count: 0 };
  const sampleWith = (distance_m: Wander): HandSample => ({ distance_m, across_m: none, speed: none, tilt_rad: none, overlap: none });

  it('combines means and variances, and weighs the correlations that are known', () => {
    const pooled = pooledHand([
      sampleWith({ mean: 1, deviation: 2, correlation_s: 0.3, count: 100 }),
      sampleWith({ mean: 4, deviation: 1, correlation_s: 0.6, count: 200 }),
      sampleWith({ mean: 4, deviation: 1, correlation_s: NaN, count: 100 }),
      sampleWith(none),
    ]).distance_m;
    // Mean (100 + 800 + 400) / 400; mean square (500 + 3400 + 1700) / 400.
    expect(pooled.mean).toBeCloseTo(3.25, 12);
    expect(pooled.deviation).toBeCloseTo(Math.sqrt(14 - 3.25 ** 2), 12);
    expect(pooled.correlation_s).toBeCloseTo(0.5, 12);
    expect(pooled.count).toBe(400);
  });

  it('of nothing is nothing', () => {
    expect(pooledHand([])).toEqual(sampleWith(none));
    expect(pooledHand([sampleWith(none)])).toEqual(sampleWith(none));
  });
});
