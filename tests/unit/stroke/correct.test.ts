import { describe, expect, it } from 'vitest';
import { evenDistance, moveStrokes, squareGun } from '../../../sim/stroke/correctPose.ts';
import { evenSpeed, withoutStops } from '../../../sim/stroke/correctTiming.ts';
import { triggerPastEdge } from '../../../sim/stroke/correctTrigger.ts';
import { measureStrokes } from '../../../sim/stroke/measure.ts';
import { meantFromPlan } from '../../../sim/stroke/meantFromPlan.ts';
import type { LaidPath } from '../../../sim/stroke/pathDraft.ts';
import { planStrokes } from '../../../sim/stroke/planStrokes.ts';
import { segmentPath } from '../../../sim/stroke/segment.ts';
import { type HandFaults, makeSession } from '../../helpers/session.ts';
import { rectangle } from './panels.ts';

const FAN_M = 0.25;
const LAG_S = 0.05;
const PER_DISTANCE = FAN_M / 0.2;
const panel = rectangle(1, 0.6);
const planned = planStrokes(panel, { overlapFraction: 0.5, speed_m_s: 0.3, distance_m: 0.2, direction_rad: 0.2, order: 'serpentine', lead_m: 0.05, lag_m: 0.05, firstStroke_m: 0, cross: false }, FAN_M, LAG_S);
const setting = { panel, fanWidthPerDistance: PER_DISTANCE, triggerLag_s: LAG_S };

function recorded(faults: HandFaults): LaidPath {
  const path = makeSession({ planned, seed: 21, rate_Hz: 100, faults });
  return { path, strokes: meantFromPlan(path, segmentPath(path).strokes, planned.strokes) };
}
const measured = (laid: LaidPath) => measureStrokes({ ...laid, ...setting });

function expectRising(laid: LaidPath): void {
  for (let i = 1; i < laid.path.count; i++) expect(laid.path.t_s[i]!).toBeGreaterThan(laid.path.t_s[i - 1]!);
}

describe.each([
  ['a plan', { path: planned.path, strokes: planned.strokes }],
  ['a recording', recorded({ drift_m: 0.03 })],
])('corrections of %s', (_, laid) => {
  const before = measured(laid);

  it('evenSpeed gives the speed and leaves other strokes as they were', () => {
    const after = evenSpeed(laid, [2], 0.45);
    expectRising(after);
    const measures = measured(after);
    // The fluid's lag at the end still runs at the old pace: 0.05 of about 2 s.
    expect(Math.abs(measures[2]!.speed.mean_m_s / 0.45 - 1)).toBeLessThan(0.02);
    expect(measures[1]!.speed.mean_m_s).toBeCloseTo(before[1]!.speed.mean_m_s, 9);
    expect(measures[3]!.start_s).toBeLessThan(before[3]!.start_s);
  });

  it('evenDistance gives the distance with the aim kept', () => {
    const measures = measured(evenDistance(laid, [1, 3], 0.16));
    for (const i of [1, 3]) {
      expect(measures[i]!.distance.mean_m).toBeCloseTo(0.16, 4);
      expect(measures[i]!.distance.cv).toBeLessThan(1e-3);
      expect(measures[i]!.start_m[0]).toBeCloseTo(before[i]!.start_m[0], 4);
    }
    expect(measures[2]!.distance.mean_m).toBeCloseTo(before[2]!.distance.mean_m, 9);
  });

  it('moveStrokes gives the overlap with the neighbour', () => {
    const measures = measured(moveStrokes(laid, [2, 3], 0.66, PER_DISTANCE));
    for (const i of [2, 3]) expect(Math.abs(measures[i]!.overlap!.meanFraction - 0.66)).toBeLessThan(0.01);
    expect(measures[1]!.overlap!.meanFraction).toBeCloseTo(before[1]!.overlap!.meanFraction, 9);
  });

  it('triggerPastEdge gives the lead at both ends', () => {
    const after = triggerPastEdge(laid, [0, 1, 2], 0.11, setting);
    expectRising(after);
    const measures = measured(after);
    for (const i of [0, 1, 2]) {
      // Noise of 1 mm on the end rows and a lag of 0.05 s at a speed within 2 %.
      expect(Math.abs(measures[i]!.triggerOn_m! - Math.max(0.11, before[i]!.triggerOn_m!))).toBeLessThan(0.004);
      expect(Math.abs(measures[i]!.triggerOff_m! - Math.max(0.11, before[i]!.triggerOff_m!))).toBeLessThan(0.004);
      expect(measures[i]!.stops).toEqual([]);
    }
    expect(after.path.trigger[after.strokes[1]!.lastRow]).toBe(0);
  });
});

describe('corrections of faults', () => {
  it('withoutStops takes the stop out', () => {
    const laid = recorded({ stop: { stroke: 1, share: 0.3, duration_s: 0.7 } });
    expect(measured(laid)[1]!.stops.length).toBe(1);
    const after = withoutStops(laid, [1]);
    expectRising(after);
    const measures = measured(after);
    expect(measures[1]!.stops).toEqual([]);
    expect(Math.abs(measures[1]!.speed.mean_m_s / 0.3 - 1)).toBeLessThan(0.02);
    expect(Math.abs(measures[1]!.duration_s - (measured(laid)[1]!.duration_s - 0.7))).toBeLessThan(0.03);
  });

  it('evenSpeed takes a stop out too', () => {
    const after = evenSpeed(recorded({ stop: { stroke: 1, share: 0.3, duration_s: 0.7 } }), [1], 0.3);
    expectRising(after);
    expect(measured(after)[1]!.stops).toEqual([]);
    expect(Math.abs(measured(after)[1]!.speed.mean_m_s / 0.3 - 1)).toBeLessThan(0.02);
  });

  it('squareGun takes an arc out and keeps the aim', () => {
    const laid = recorded({ arc: { strokes: [2], radius_m: 0.35, swing_rad: 0.35 } });
    const after = measured(squareGun(laid, [2]))[2]!;
    expect(after.tilt.worst_rad).toBeLessThan(1e-6);
    const before = measured(laid)[2]!;
    expect(after.start_m[0]).toBeCloseTo(before.start_m[0], 3);
    expect(after.length_m).toBeCloseTo(before.length_m, 2);
  });

  it('triggerPastEdge mends a late trigger', () => {
    const laid = recorded({ late: { strokes: [2], delay_s: 0.4 } });
    expect(measured(laid)[2]!.triggerOn_m!).toBeLessThan(-0.03);
    const [after] = [measured(triggerPastEdge(laid, [2], 0.05, setting))[2]!];
    expect(Math.abs(after.triggerOn_m! - 0.05)).toBeLessThan(0.004);
  });

  it('moveStrokes mends a wide lap', () => {
    const laid = recorded({ wideLap: { stroke: 2, shift_m: 0.045 } });
    const measures = measured(moveStrokes(laid, [2], 0.5, PER_DISTANCE));
    expect(Math.abs(measures[2]!.overlap!.meanFraction - 0.5)).toBeLessThan(0.01);
    expect(Math.abs(measures[3]!.overlap!.meanFraction - 0.5)).toBeLessThan(0.01);
  });

  it('refuses what it cannot do', () => {
    const laid = { path: planned.path, strokes: planned.strokes };
    expect(() => evenSpeed(laid, [0], 0)).toThrow('evenSpeed: speed = 0 m/s');
    expect(() => evenDistance(laid, [0], NaN)).toThrow('evenDistance: distance');
    expect(() => moveStrokes(laid, [1], 1, PER_DISTANCE)).toThrow('moveStrokes: overlap');
    expect(() => triggerPastEdge(laid, [1], -1, setting)).toThrow('triggerPastEdge: lead');
  });
});
