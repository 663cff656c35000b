import { describe, expect, it } from 'vitest';
import type { MeasuredSession } from '../../../sim/stroke/measure.ts';
import { pathFrom, type Pose } from '../../../sim/stroke/path.ts';
import type { Stroke } from '../../../sim/stroke/stroke.ts';
import { strokeTraces, type StrokeTrace } from '../../../sim/stroke/traces.ts';
import { laidPlan, MEANT } from './handTraces.ts';

const RATIO = 1.25;
const SQUARE: Omit<Pose, 't_s' | 'x_m'> = { y_m: 0, z_m: 0.2, fan_rad: Math.PI / 2, pitch_rad: 0, yaw_rad: 0, trigger: 1 };

/** One stroke as a row every 5 ms from -0.5 to `open_s` + 0.5, the trigger open from 0 to `open_s`. */
function oneStroke(open_s: number, poseAt: (t_s: number) => Partial<Pose>, triggerLag_s = 0): StrokeTrace {
  const rows = Array.from({ length: Math.round((open_s + 1) / 0.005) + 1 }, (_, i) => {
    const t_s = i * 0.005 - 0.5;
    return { t_s, x_m: 0.3 * t_s, ...SQUARE, trigger: t_s >= -1e-9 && t_s < open_s - 1e-9 ? 1 : 0, ...poseAt(t_s) };
  });
  const path = pathFrom(rows);
  const firstRow = rows.findIndex(({ trigger }) => trigger > 0);
  const lastRow = firstRow + rows.filter(({ trigger }) => trigger > 0).length;
  const stroke: Stroke = { index: 3, pass: 1, firstRow, lastRow, meant: MEANT };
  const [trace] = strokeTraces({ path, strokes: [stroke], fanWidthPerDistance: RATIO, triggerLag_s });
  if (trace === undefined) throw new Error('no trace');
  return trace;
}

function all(values: Float64Array, expected: (k: number) => number, digits: number): void {
  values.forEach((value, k) => expect(value, `sample ${k}`).toBeCloseTo(expected(k), digits));
}

describe('the trace of a stroke', () => {
  it('is one sample every 10 ms from fluid on to fluid off, all columns of one length', () => {
    const trace = oneStroke(1.5, () => ({}));
    expect(trace).toMatchObject({ stroke: 3, pass: 1 });
    expect(trace.step_s).toBeCloseTo(0.01, 12);
    expect(trace.t_s).toHaveLength(151);
    expect([trace.t_s[0], trace.t_s[150]]).toEqual([expect.closeTo(0, 9), expect.closeTo(1.5, 9)]);
    for (const column of [trace.x_m, trace.y_m, trace.speed_m_s, trace.distance_m, trace.tilt_rad, trace.overlapFraction]) expect(column).toHaveLength(151);
  });

  it('is later than the trigger by the lag', () => {
    const { t_s } = oneStroke(1.5, () => ({}), 0.08);
    expect([t_s[0], t_s.at(-1)]).toEqual([expect.closeTo(0.08, 9), expect.closeTo(1.58, 9)]);
  });

  it('is exact for even travel', () => {
    const { t_s, x_m, speed_m_s, distance_m, tilt_rad } = oneStroke(1.5, (t_s) => ({ y_m: 0.1 * t_s, z_m: 0.2 + 0.02 * t_s }));
    all(x_m, (k) => 0.3 * (t_s[k] as number), 9);
    all(speed_m_s, () => Math.hypot(0.3, 0.1), 9);
    all(distance_m, (k) => 0.2 + 0.02 * (t_s[k] as number), 9);
    all(tilt_rad, () => 0, 9);
  });

  it('speeds up: an even acceleration is seen as it is, also at the ends', () => {
    const { t_s, speed_m_s } = oneStroke(1.5, (t_s) => ({ x_m: 0.3 * t_s + 0.05 * t_s * t_s }));
    // Rows are joined by straight lines, which leaves a parabola out by a (5 ms)²/8: nothing here.
    all(speed_m_s, (k) => 0.3 + 0.1 * (t_s[k] as number), 6);
  });

  it('of a swing about the nozzle: tilt θ, distance z / cos θ', () => {
    const { t_s, tilt_rad, distance_m } = oneStroke(1, (t_s) => ({ pitch_rad: 0.3 * (t_s - 0.5) }));
    // A window of 0.1 s holds a mean: |θ| at its corner by ω T / 4, 1 / cos by z ω² T² / 24 · (1 + …).
    tilt_rad.forEach((tilt, k) => expect(Math.abs(tilt - Math.abs(0.3 * ((t_s[k] as number) - 0.5)))).toBeLessThan((0.3 * 0.1) / 4));
    distance_m.forEach((distance, k) => expect(Math.abs(distance - 0.2 / Math.cos(0.3 * ((t_s[k] as number) - 0.5)))).toBeLessThan(0.2 * 0.3 ** 2 * 0.1 ** 2 / 20));
  });

  it('has no overlap with nothing beside it', () => {
    expect(oneStroke(1, () => ({})).overlapFraction.every(Number.isNaN)).toBe(true);
  });
});

describe('the traces of a session', () => {
  const session: MeasuredSession = laidPlan(0.6, 0.5, null, 1);
  const traces = strokeTraces(session);

  it('are one a stroke, in time', () => {
    expect(traces.map(({ stroke }) => stroke)).toEqual([0, 1, 2, 3, 4]);
    traces.slice(1).forEach(({ t_s }, i) => expect(t_s[0]).toBeGreaterThan(traces[i]!.t_s.at(-1)!));
  });

  it('of a plan are as planned: the fluid from 50 mm outside to 50 mm outside, lapped by half', () => {
    for (const { x_m, y_m, speed_m_s, distance_m, overlapFraction, stroke } of traces) {
      const ends = [x_m[0], x_m.at(-1)].sort((a, b) => a! - b!);
      expect(ends).toEqual([expect.closeTo(-0.05, 6), expect.closeTo(0.65, 6)]);
      // The last window ends where the turn begins, to the rounding of its clock.
      all(y_m, () => 0.125 * stroke, 6);
      all(speed_m_s, () => 0.3, 6);
      all(distance_m, () => 0.2, 6);
      if (stroke === 0) expect(overlapFraction.every(Number.isNaN)).toBe(true);
      // The last bin of the other stroke ends where that does; rounding decides about the sample on it.
      else all(overlapFraction.slice(1, -1), () => 0.5, 6);
    }
  });
});
