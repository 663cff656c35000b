import { describe, expect, it } from 'vitest';
import { courseOf } from '../../../sim/stroke/course.ts';
import { handNow } from '../../../sim/stroke/handNow.ts';
import type { Lateral } from '../../../sim/stroke/lateral.ts';
import { pathFrom, type Path, type Pose } from '../../../sim/stroke/path.ts';

const RATIO = 1.25;
const DEGREE = Math.PI / 180;
const WINDOW_S = 0.12;

/** A row every 10 ms up to `end_s`. */
function moving(end_s: number, poseAt: (t_s: number) => Partial<Pose>): Path {
  const count = Math.round(end_s / 0.01) + 1;
  return pathFrom(Array.from({ length: count }, (_, i) => {
    const t_s = i * 0.01;
    return { t_s, x_m: 0, y_m: 0, z_m: 0.2, fan_rad: Math.PI / 2, pitch_rad: 0, yaw_rad: 0, trigger: 1, ...poseAt(t_s) };
  }));
}

/** A stroke already laid, along x from 0 to 0.6 m. */
function laidAt(y_m: number, z_m = 0.2): Lateral {
  const path = moving(2, (t_s) => ({ x_m: 0.3 * t_s, y_m, z_m }));
  return courseOf(path, { firstRow: 0, lastRow: path.count - 1 }, 0).lateral;
}

/** The hand over x = 0.3 m, at a height above the stroke on y = 0. */
function overlapOver(gap_m: number, laid: readonly Lateral[], z_m = 0.2): number {
  return handNow(moving(1, (t_s) => ({ x_m: 0.3 * t_s, y_m: gap_m, z_m })), laid, RATIO).overlapFraction;
}

describe('the hand now', () => {
  it('moves at the speed of its aim: along both axes, exactly', () => {
    const now = handNow(moving(0.5, (t_s) => ({ x_m: 0.3 * t_s, y_m: -0.4 * t_s })), [], RATIO);
    expect(now.speed_m_s).toBeCloseTo(0.5, 12);
    expect([now.x_m, now.y_m]).toEqual([expect.closeTo(0.15, 12), expect.closeTo(-0.2, 12)]);
  });

  it('turns: the speed is the chord of 0.12 s, 2 r sin(ω T / 2) / T', () => {
    const [radius_m, turn_rad_s] = [0.2, 2];
    const now = handNow(moving(0.5, (t_s) => ({ x_m: radius_m * Math.cos(turn_rad_s * t_s), y_m: radius_m * Math.sin(turn_rad_s * t_s) })), [], RATIO);
    expect(now.speed_m_s).toBeCloseTo((2 * radius_m * Math.sin((turn_rad_s * WINDOW_S) / 2)) / WINDOW_S, 12);
  });

  it('swings in place: its aim moves by z tan θ, its distance is z / cos θ, its tilt θ', () => {
    const swing = (t_s: number) => (t_s - 0.5) * 60 * DEGREE;
    const now = handNow(moving(0.8, (t_s) => ({ pitch_rad: swing(t_s) })), [], RATIO);
    // The fan stands upright, so a positive pitch swings the aim toward -x.
    expect(now.x_m).toBeCloseTo(-0.2 * Math.tan(swing(0.8)), 12);
    expect(now.speed_m_s).toBeCloseTo((0.2 * (Math.tan(swing(0.8)) - Math.tan(swing(0.68)))) / WINDOW_S, 12);
    expect(now.distance_m).toBeCloseTo(0.2 / Math.cos(18 * DEGREE), 12);
    expect(now.tilt_rad).toBeCloseTo(18 * DEGREE, 12);
  });

  it('tilts by pitch and yaw together: cos θ = cos p cos y', () => {
    const { tilt_rad, distance_m } = handNow(moving(0.2, () => ({ pitch_rad: 0.2, yaw_rad: -0.3 })), [], RATIO);
    expect(tilt_rad).toBeCloseTo(Math.acos(Math.cos(0.2) * Math.cos(0.3)), 12);
    expect(distance_m).toBeCloseTo(0.2 / (Math.cos(0.2) * Math.cos(0.3)), 12);
  });

  it('has moved for less than the window: the speed is of the time there is; one row has none', () => {
    expect(handNow(moving(0.05, (t_s) => ({ x_m: 0.3 * t_s })), [], RATIO).speed_m_s).toBeCloseTo(0.3, 12);
    expect(handNow(moving(0, () => ({})), [], RATIO).speed_m_s).toBe(0);
  });

  it('stands still for longer than the window: no speed, whatever went before', () => {
    expect(handNow(moving(1, (t_s) => ({ x_m: 0.3 * Math.min(t_s, 0.85) })), [], RATIO).speed_m_s).toBeCloseTo(0, 12);
  });

  it('holds the trigger as its last row does', () => {
    expect(handNow(moving(0.5, (t_s) => ({ trigger: t_s < 0.3 ? 1 : 0.5 })), [], RATIO).trigger).toBe(0.5);
  });
});

describe('the overlap now', () => {
  /** Full width 0.25 m at 0.2 m: overlap = 1 - gap / 0.25. */
  it.each([[0.05, 0.8], [0.125, 0.5], [0.175, 0.3], [0.25, 0], [0.3, -0.2]])('%f m beside one stroke: %f', (gap_m, fraction) => {
    expect(overlapOver(gap_m, [laidAt(0)])).toBeCloseTo(fraction, 9);
    expect(overlapOver(-gap_m, [laidAt(0)])).toBeCloseTo(fraction, 9);
  });

  it('takes the width at the mean of both distances', () => {
    expect(overlapOver(0.125, [laidAt(0, 0.2)], 0.24)).toBeCloseTo(1 - 0.125 / (RATIO * 0.22), 9);
  });

  it('is with the nearest stroke beside, in whatever order they were laid', () => {
    const strokes = [laidAt(0), laidAt(0.125), laidAt(0.25)];
    expect(overlapOver(0.35, strokes)).toBeCloseTo(0.6, 9);
    expect(overlapOver(0.35, [...strokes].reverse())).toBeCloseTo(0.6, 9);
  });

  it('leaves out the same stroke gone over again: it is with the one beside', () => {
    expect(overlapOver(0.135, [laidAt(0), laidAt(0.125)])).toBeCloseTo(1 - 0.135 / 0.25, 9);
    expect(overlapOver(0.01, [laidAt(0)])).toBeNaN();
  });

  it('cannot be told: nothing laid, more than half a width bare between, beyond the other’s ends', () => {
    expect(overlapOver(0.125, [])).toBeNaN();
    expect(overlapOver(0.38, [laidAt(0)])).toBeNaN();
    expect(handNow(moving(1, (t_s) => ({ x_m: 0.65 + 0.3 * t_s, y_m: 0.125 })), [laidAt(0)], RATIO).overlapFraction).toBeNaN();
  });
});
