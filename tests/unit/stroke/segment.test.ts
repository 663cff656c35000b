import { describe, expect, it } from 'vitest';
import { type Path, pathFrom, type Pose } from '../../../sim/stroke/path.ts';
import { planStrokes } from '../../../sim/stroke/planStrokes.ts';
import { segmentPath } from '../../../sim/stroke/segment.ts';
import { makeSession, normalNoise } from '../../helpers/session.ts';
import { rectangle } from './panels.ts';

const FAN_M = 0.25;
const plan = { overlapFraction: 0.5, speed_m_s: 0.3, distance_m: 0.2, direction_rad: 0, order: 'serpentine', lead_m: 0.05, lag_m: 0.05, firstStroke_m: 0, cross: true } as const;
const planned = planStrokes(rectangle(1, 0.75), plan, FAN_M, 0.05);

/** A noisy path at `rate` Hz through corners at a speed; fluid on where `on` says. */
function walk(corners: [number, number][], rate: number, noise_m: number, on: (t_s: number) => boolean, speed = 0.4): Path {
  const normal = normalNoise(7);
  const rows: Pose[] = [];
  const lengths = corners.slice(1).map(([x, y], i) => Math.hypot(x - corners[i]![0], y - corners[i]![1]));
  const total = lengths.reduce((sum, length) => sum + length, 0);
  for (let i = 0; i / rate <= total / speed; i++) {
    let s = (i / rate) * speed;
    let leg = 0;
    while (leg < lengths.length - 1 && s > lengths[leg]!) s -= lengths[leg++]!;
    const share = s / lengths[leg]!;
    const [x0, y0] = corners[leg]!;
    const [x1, y1] = corners[leg + 1]!;
    rows.push({ t_s: i / rate, x_m: x0 + share * (x1 - x0) + noise_m * normal(), y_m: y0 + share * (y1 - y0) + noise_m * normal(), z_m: 0.2, fan_rad: Math.PI / 2, pitch_rad: 0, yaw_rad: 0, trigger: on(i / rate) ? 1 : 0 });
  }
  return pathFrom(rows);
}

describe('segmentPath', () => {
  it('finds the strokes and passes of a plan from its corner rows alone', () => {
    const { strokes, warnings } = segmentPath(planned.path, { fanWidthPerDistance: FAN_M / 0.2 });
    expect(warnings).toEqual([]);
    expect(strokes.map(({ firstRow, lastRow, pass }) => [firstRow, lastRow, pass])).toEqual(planned.strokes.map(({ firstRow, lastRow, pass }) => [firstRow, lastRow, pass]));
    for (const { meant } of strokes) {
      expect(meant.source).toBe('median');
      expect(meant.distance_m).toBeCloseTo(0.2, 9);
      expect(meant.speed_m_s).toBeCloseTo(0.3, 9);
      if (!Number.isNaN(meant.overlapFraction)) expect(meant.overlapFraction).toBeCloseTo(0.5, 9);
    }
    expect(strokes[0]!.meant.overlapFraction).toBeNaN();
    expect(strokes[1]!.meant.overlapFraction).not.toBeNaN();
  });

  it.each([50, 100, 1000])('finds them at %i Hz under 2 mm of noise, a stop and chatter', (rate_Hz) => {
    const path = makeSession({ planned, seed: 3, rate_Hz, noise_m: 0.002, faults: { stop: { stroke: 2, share: 0.4, duration_s: 0.7 }, chatterStroke: 4 } });
    const { strokes, warnings } = segmentPath(path);
    expect(strokes.length).toBe(planned.strokes.length);
    expect(strokes.map(({ pass }) => pass)).toEqual(planned.strokes.map(({ pass }) => pass));
    expect(warnings.map(({ code }) => code)).toEqual(['trigger-chatter']);
  });

  it.each([100, 1000])('cuts a trigger held through the turns at the turns, %i Hz', (rate) => {
    const corners: [number, number][] = [[0, 0], [1, 0], [1, 0.12], [0, 0.12], [0, 0.24], [1, 0.24]];
    const path = walk(corners, rate, 0.002, () => true);
    const { strokes } = segmentPath(path);
    expect(strokes.length).toBe(3);
    // The turns' middles: 1.06 m and 2.18 m along the way; each is 0.12 m long.
    expect(Math.abs(path.t_s[strokes[0]!.lastRow]! * 0.4 - 1.06)).toBeLessThan(0.06);
    expect(Math.abs(path.t_s[strokes[1]!.lastRow]! * 0.4 - 2.18)).toBeLessThan(0.06);
    expect(strokes.map(({ pass }) => pass)).toEqual([0, 0, 0]);
    expect(strokes[1]!.firstRow).toBe(strokes[0]!.lastRow);
  });

  it('cuts a held trigger that goes straight back over its own line', () => {
    const { strokes } = segmentPath(walk([[0, 0], [1, 0], [0, 0]], 100, 0.002, () => true));
    expect(strokes.length).toBe(2);
  });

  it('cuts a held trigger at a corner, not on a gentle bend', () => {
    expect(segmentPath(walk([[0, 0], [1, 0], [1, 1]], 100, 0.002, () => true)).strokes.length).toBe(2);
    expect(segmentPath(walk([[0, 0], [0.5, 0.06], [1, 0]], 100, 0.002, () => true)).strokes.length).toBe(1);
  });

  it('bridges a release of 40 ms and parts one of 100 ms', () => {
    const off = (length_s: number) => segmentPath(walk([[0, 0], [1, 0]], 100, 0, (t) => !(t > 1 && t <= 1 + length_s))).strokes.length;
    expect(off(0.04)).toBe(1);
    expect(off(0.1)).toBe(2);
  });

  it('leaves out a bounce of the trigger that goes nowhere, and keeps a pause as one stroke', () => {
    const still = walk([[0, 0], [0.05, 0]], 1000, 0, (t) => t > 0.5 && t < 0.53, 0.05);
    const result = segmentPath(still);
    expect(result.strokes).toEqual([]);
    expect(result.warnings.map(({ code }) => code)).toEqual(['trigger-chatter', 'no-strokes']);
    const paused = makeSession({ planned, seed: 5, rate_Hz: 100, faults: { stop: { stroke: 1, share: 0.5, duration_s: 3 } } });
    expect(segmentPath(paused).strokes.length).toBe(planned.strokes.length);
  });

  it('starts a pass when a second coat goes over the first the same way', () => {
    const lines = [0, 0.12, 0.24, 0.36, 0, 0.12, 0.24, 0.36];
    const corners = lines.flatMap((y): [number, number][] => [[0, y], [1, y]]);
    const starts: number[] = [];
    let travelled = 0;
    corners.forEach(([x, y], i) => {
      if (i > 0) travelled += Math.hypot(x - corners[i - 1]![0], y - corners[i - 1]![1]);
      if (i % 2 === 0) starts.push(travelled / 0.4);
    });
    const path = walk(corners, 100, 0.001, (t) => starts.some((start) => t >= start && t < start + 2.5));
    expect(segmentPath(path).strokes.map(({ pass }) => pass)).toEqual([0, 0, 0, 0, 1, 1, 1, 1]);
  });
});
