import { describe, expect, it } from 'vitest';
import { measureStrokes } from '../../../sim/stroke/measure.ts';
import { meantFromPlan } from '../../../sim/stroke/meantFromPlan.ts';
import { planStrokes } from '../../../sim/stroke/planStrokes.ts';
import { segmentPath } from '../../../sim/stroke/segment.ts';
import { type HandFaults, makeSession } from '../../helpers/session.ts';
import { panelOf, rectangle } from './panels.ts';

const FAN_M = 0.25;
const LAG_S = 0.05;
const panel = rectangle(1, 0.75);
const plan = { overlapFraction: 0.5, speed_m_s: 0.3, distance_m: 0.2, direction_rad: 0, order: 'serpentine', lead_m: 0.05, lag_m: 0.06, firstStroke_m: 0, cross: true } as const;
const planned = planStrokes(panel, plan, FAN_M, LAG_S);
const shared = { panel, fanWidthPerDistance: FAN_M / 0.2, triggerLag_s: LAG_S };

function measuredSession(faults: HandFaults) {
  const path = makeSession({ planned, seed: 11, rate_Hz: 100, faults });
  const { strokes } = segmentPath(path);
  return measureStrokes({ ...shared, path, strokes: meantFromPlan(path, strokes, planned.strokes) });
}

describe('measureStrokes of a plan', () => {
  const measures = measureStrokes({ ...shared, path: planned.path, strokes: planned.strokes });

  it('shows the plan: speed, distance, tilt, trigger points, overlap', () => {
    measures.forEach((measure, i) => {
      expect(measure.speed.mean_m_s).toBeCloseTo(0.3, 9);
      expect(measure.speed.cv).toBeLessThan(1e-9);
      expect(measure.distance.mean_m).toBeCloseTo(0.2, 12);
      expect(measure.tilt.worst_rad).toBeCloseTo(0, 7);
      expect(measure.triggerOn_m).toBeCloseTo(0.05, 9);
      expect(measure.triggerOff_m).toBeCloseTo(0.06, 9);
      expect(measure.stops).toEqual([]);
      const { start_m, end_m, overlapFraction } = planned.strokes[i]!.meant;
      expect(measure.start_m[0]).toBeCloseTo(start_m[0], 9);
      expect(measure.end_m[1]).toBeCloseTo(end_m[1], 9);
      expect(measure.length_m).toBeCloseTo(Math.hypot(end_m[0] - start_m[0], end_m[1] - start_m[1]), 9);
      if (Number.isNaN(overlapFraction)) expect(measure.overlap).toBeNull();
      else {
        expect(measure.overlap!.neighbour).toBe(i - 1);
        expect(measure.overlap!.meanFraction).toBeCloseTo(0.5, 9);
        expect(measure.overlap!.worst_m).toBeCloseTo(0.125, 9);
      }
    });
  });

  it('measures the trigger from the edge of the stroke\'s own share on a slanted panel, as planned', () => {
    const slanted = panelOf([[0, 0], [1, 0], [1.2, 0.8], [0.2, 0.8]]);
    const its = planStrokes(slanted, { ...plan, cross: false }, FAN_M, LAG_S);
    const found = measureStrokes({ ...shared, panel: slanted, path: its.path, strokes: its.strokes });
    for (const measure of found.slice(1, -1)) {
      expect(measure.triggerOn_m).toBeCloseTo(0.05, 6);
      expect(measure.triggerOff_m).toBeCloseTo(0.06, 6);
    }
  });
});

describe('measureStrokes of a recorded session', () => {
  it('finds a stop, its place and length', () => {
    const measures = measuredSession({ stop: { stroke: 2, share: 0.5, duration_s: 0.7 } });
    expect(measures.map(({ stops }) => stops.length)).toEqual(planned.strokes.map(({ index }) => (index === 2 ? 1 : 0)));
    const [stop] = measures[2]!.stops;
    // 1 mm of noise over 0.3 m/s is 3 ms at each end of its clock before smoothing: 2 % of 0.7 s is 14 ms.
    expect(Math.abs(stop!.duration_s - 0.7)).toBeLessThan(0.014);
    expect(Math.abs(stop!.at_m[0] - 0.5)).toBeLessThan(0.01 + 0.3 * LAG_S);
    expect(Math.abs(stop!.at_m[1] - 0.25)).toBeLessThan(0.002);
  });

  it('finds a wide lap and the narrow one after it', () => {
    const measures = measuredSession({ wideLap: { stroke: 2, shift_m: 0.045 } });
    expect(measures[2]!.overlap!.mean_m).toBeCloseTo(0.125 - 0.045, 2.5);
    expect(measures[3]!.overlap!.mean_m).toBeCloseTo(0.125 + 0.045, 2.5);
    expect(measures[1]!.overlap!.mean_m).toBeCloseTo(0.125, 2.5);
  });

  it('finds an arced wrist by its tilt and distance', () => {
    const swing_rad = 0.35;
    const measures = measuredSession({ arc: { strokes: [3], radius_m: 0.35, swing_rad } });
    const { tilt, distance } = measures[3]!;
    expect(Math.abs(tilt.worst_rad - swing_rad)).toBeLessThan(0.05 * swing_rad);
    const slant_m = (0.2 + 0.35 * (1 - Math.cos(swing_rad))) / Math.cos(swing_rad);
    expect(Math.abs(distance.high_m - slant_m)).toBeLessThan(0.02 * slant_m);
    expect(Math.abs(distance.low_m - 0.2)).toBeLessThan(0.004);
    expect(measures[1]!.tilt.mean_rad).toBeLessThan(0.02);
  });

  it('finds a late trigger and a drifting distance', () => {
    const measures = measuredSession({ late: { strokes: [1], delay_s: 0.4 }, drift_m: 0.06 });
    // 0.4 s at 0.3 m/s, give or take one sample of 10 ms.
    expect(Math.abs(measures[1]!.triggerOn_m! - (0.05 - 0.12))).toBeLessThan(0.0045);
    expect(measures.at(-1)!.distance.mean_m - measures[0]!.distance.mean_m).toBeGreaterThan(0.05);
  });

  it('gives no trigger point where a stroke joins another in mid-panel', () => {
    const half = segmentPath(planned.path).strokes[0]!;
    const narrow = rectangle(3, 0.75);
    const [measure] = measureStrokes({ ...shared, panel: narrow, path: planned.path, strokes: [half] });
    expect(measure!.triggerOn_m).toBeCloseTo(0.05, 9);
    expect(measure!.triggerOff_m).toBeNull();
  });

  it('gives each stroke the plan\'s figures whichever way round they were laid', () => {
    const path = makeSession({ planned, seed: 1 });
    const { strokes } = segmentPath(path);
    const meant = meantFromPlan(path, strokes, planned.strokes);
    meant.forEach((stroke, i) => { expect(stroke.meant).toEqual(planned.strokes[i]!.meant); });
    const upsideDown = { ...planned, strokes: planned.strokes.filter(({ pass }) => pass === 0).reverse().map((stroke, index) => ({ ...stroke, index })) };
    const again = meantFromPlan(path, strokes.filter(({ pass }) => pass === 0), upsideDown.strokes);
    again.forEach((stroke, i) => { expect(stroke.meant).toEqual(planned.strokes[i]!.meant); });
  });
});
