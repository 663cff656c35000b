import { describe, expect, it } from 'vitest';
import { changedStrokes } from '../../../sim/run/changedStrokes.ts';
import { judgeCoat } from '../../../sim/run/judge.ts';
import { layCoat } from '../../../sim/run/lay.ts';
import type { CoatResult } from '../../../sim/run/result.ts';
import { strokesOf } from '../../../sim/run/strokes.ts';
import type { Fault, FaultKind } from '../../../sim/verdict/verdict.ts';
import { type HandEdit, session } from './session.ts';
import { type JobParts, testSetting } from './testJob.ts';

/** Five strokes on y = 0, 125 … 500 mm; every second one runs right to left. */
function sprayed(edits: Readonly<Record<number, HandEdit>>, parts: JobParts = {}): CoatResult {
  const setting = testSetting(parts);
  const strokes = strokesOf(setting, { path: session(setting, edits), warnings: [] });
  expect(strokes.strokes).toHaveLength(5);
  return judgeCoat(setting, strokes, layCoat(setting, strokes));
}

function faultOf(result: CoatResult, kind: FaultKind): Fault {
  const fault = result.verdict.faults.find((one) => one.kind === kind);
  expect(fault, `a ${kind} among ${result.verdict.faults.map((f) => `${f.kind}: ${f.cause.kind}`).join(', ')}`).toBeDefined();
  return fault as Fault;
}

function areaOf(result: CoatResult, kind: FaultKind): number {
  return result.verdict.faults.filter((f) => f.kind === kind).reduce((sum, f) => sum + f.area_m2, 0);
}

/** The cure laid again by itself gives the cure's own figures. */
function expectCureRepeats(result: CoatResult, fault: Fault): void {
  const { setting, strokes } = result;
  const { cure } = fault;
  expect(cure).not.toBeNull();
  if (cure === null || cure.change.kind === 'add-strokes' || !('strokes' in cure.change)) throw new Error('not a change of strokes that were laid');
  const again = layCoat(setting, changedStrokes(setting, strokes, cure.change));
  const rejudged = judgeCoat(setting, strokes, again, { cures: false });
  expect(cure.areaBefore_m2).toBeCloseTo(areaOf(result, fault.kind), 12);
  expect(cure.areaAfter_m2).toBeCloseTo(areaOf(rejudged, fault.kind), 12);
  expect(cure.inTargetAfter).toBeCloseTo(rejudged.verdict.inTargetFraction, 12);
  expect(cure.inTargetAfter).toBeGreaterThan(cure.inTargetBefore);
}

describe('a coat by a hand without faults', () => {
  it('has none', () => {
    const result = sprayed({});
    expect(result.verdict.faults).toEqual([]);
    expect(result.verdict.inTargetFraction).toBe(1);
  });
});

describe('causes in the hand', () => {
  it('a stop: how long, in which stroke, and what the film is without it', () => {
    const result = sprayed({ 2: { stop: { at: 0.5, duration_s: 0.7 } } });
    const fault = faultOf(result, 'heavy-spot');
    expect(result.verdict.faults).toHaveLength(1);
    expect(fault.cause.kind).toBe('stop');
    expect(fault.cause.strokes).toEqual([2]);
    // Places are smoothed over 0.1 s, so a stop's ends are known to about that.
    expect(Math.abs(fault.cause.found - 0.7)).toBeLessThan(0.1);
    // The middle of a stroke of 820 mm from x = -60 mm, on y = 250 mm, to a cell or two.
    expect(Math.hypot((fault.zones[0]?.at_m[0] ?? NaN) - 0.35, (fault.zones[0]?.at_m[1] ?? NaN) - 0.25)).toBeLessThan(0.012);
    expect(fault.cure?.change).toEqual({ kind: 'no-stops', strokes: [2] });
    expect(fault.cure?.areaAfter_m2).toBe(0);
    expectCureRepeats(result, fault);
  });

  it('a slow stroke: its speed against the meant one', () => {
    const result = sprayed({ 2: { speedFactor: () => 0.55 } });
    const fault = faultOf(result, 'heavy-spot');
    expect(fault.cause.kind).toBe('speed');
    expect(fault.cause.strokes).toEqual([2]);
    // Film goes as 1/v; the local speed follows from films good to the stamps' 0.1 %, and smoothing's 2 %.
    expect(Math.abs(fault.cause.found / (0.3 * 0.55) - 1)).toBeLessThan(0.03);
    expect(fault.cause.meant).toBe(0.3);
    expect(fault.cure?.change).toEqual({ kind: 'even-speed', strokes: [2], speed_m_s: 0.3 });
    expect(fault.cure?.areaAfter_m2).toBe(0);
    expectCureRepeats(result, fault);
  });

  it('a fast end of a stroke, which is thin', () => {
    const result = sprayed({ 2: { speedFactor: (s) => (s > 0.6 ? 2.5 : 1) } });
    const fault = faultOf(result, 'thin-lap');
    expect(fault.cause.kind).toBe('speed');
    expect(fault.cause.strokes).toEqual([2]);
    expect(Math.abs(fault.cause.found / 0.75 - 1)).toBeLessThan(0.1);
    expect(fault.cure?.change.kind).toBe('even-speed');
    expectCureRepeats(result, fault);
  });

  it('a gun held too far in one stroke', () => {
    const result = sprayed({ 2: { distance_m: () => 0.34 } });
    const fault = faultOf(result, 'thin-lap');
    expect(fault.cause.kind).toBe('distance');
    expect(fault.cause.strokes).toEqual([2]);
    expect(fault.cause.found).toBeCloseTo(0.34, 3);
    expect(fault.cause.meant).toBe(0.2);
    expect(fault.cure?.change).toEqual({ kind: 'even-distance', strokes: [2], distance_m: 0.2 });
    expectCureRepeats(result, fault);
  });

  it('an arced wrist: the angle at the thin end', () => {
    const result = sprayed({ 2: { arcRadius_m: 0.35 } });
    const fault = faultOf(result, 'thin-lap');
    expect(fault.cause.kind).toBe('angle');
    expect(fault.cause.strokes).toEqual([2]);
    // The zone lies between the swing's start of thinning and the end of the board (350 mm off the middle: 32.5°).
    expect(fault.cause.found).toBeGreaterThan((20 * Math.PI) / 180);
    expect(fault.cause.found).toBeLessThan((38 * Math.PI) / 180);
    expect(fault.cause.meant).toBe(0);
    expect(fault.cure?.change).toEqual({ kind: 'square-gun', strokes: [2] });
    expect(fault.cure?.areaAfter_m2).toBe(0);
    expectCureRepeats(result, fault);
  });

  it('a wide lap: the overlap laid against the one meant', () => {
    const result = sprayed({ 2: { shift_m: 0.045 } });
    const fault = faultOf(result, 'thin-lap');
    expect(fault.cause.kind).toBe('overlap');
    expect(fault.cause.strokes).toEqual([2]);
    // 125 mm pitch + 45 mm of a 250 mm fan: 32 %.
    expect(Math.abs(fault.cause.found - 0.32)).toBeLessThan(0.01);
    expect(fault.cause.meant).toBe(0.5);
    expect(fault.cure?.change).toEqual({ kind: 'move-strokes', strokes: [2], overlapFraction: 0.5 });
    expect(fault.cure?.areaAfter_m2).toBe(0);
    expectCureRepeats(result, fault);
    const heavy = faultOf(result, 'heavy-spot');
    expect(heavy.cause.kind).toBe('overlap');
    expect(heavy.cause.strokes).toEqual([3]);
    expect(Math.abs(heavy.cause.found - 0.68)).toBeLessThan(0.01);
  });

  it('a wide lap that all later strokes followed is cured by moving them all', () => {
    const result = sprayed({ 2: { shift_m: 0.06 }, 3: { shift_m: 0.06 }, 4: { shift_m: 0.06 } });
    const fault = faultOf(result, 'thin-lap');
    expect(fault.cause.kind).toBe('overlap');
    expect(fault.cause.strokes).toEqual([2]);
    expect(fault.cure?.change).toEqual({ kind: 'move-strokes', strokes: [2, 3, 4], overlapFraction: 0.5 });
    expectCureRepeats(result, fault);
  });

  it('a stroke too far off at one end and too near at the other: the overlap at each fault', () => {
    // Stroke 3 runs from 55 mm high (right) to 70 mm low (left): farthest from what was meant where it is too near.
    const result = sprayed({ 2: { shift_m: (s) => 0.055 - 0.125 * s } });
    const thin = result.verdict.faults.filter(({ kind, cause }) => kind === 'thin-lap' && cause.kind === 'overlap' && cause.strokes[0] === 2);
    const heavy = result.verdict.faults.filter(({ kind, cause }) => kind === 'heavy-spot' && cause.kind === 'overlap' && cause.strokes[0] === 2);
    expect(thin.length).toBeGreaterThan(0);
    expect(heavy.length).toBeGreaterThan(0);
    for (const { cause, zones } of [...thin, ...heavy]) {
      const s = ((zones[0]?.at_m[0] ?? NaN) + 0.06) / 0.82;
      // Pitch 125 mm and the shift there, of a 250 mm fan; the nearest place of a line 8.7° off lies up to 20 mm along.
      expect(Math.abs(cause.found - (0.5 - (0.055 - 0.125 * s) / 0.25))).toBeLessThan(0.02);
      expect(cause.meant).toBe(0.5);
    }
    expect(thin[0]?.cause.found).toBeLessThan(0.5);
    expect(heavy[0]?.cause.found).toBeGreaterThan(0.5);
  });

  it('a late trigger: how far inside the edge', () => {
    const result = sprayed({ 2: { opensLate_m: 0.16 } });
    const fault = faultOf(result, 'thin-lap');
    expect(fault.cause.kind).toBe('trigger');
    expect(fault.cause.strokes).toEqual([2]);
    // Planned 60 mm outside, 160 mm late: 100 mm inside, to one row of travel (3 mm) and the smoothing.
    expect(Math.abs(fault.cause.found + 0.1)).toBeLessThan(0.006);
    expect(fault.cause.meant).toBe(0.06);
    expect(fault.cure?.change).toEqual({ kind: 'trigger-past-edge', strokes: [2], lead_m: 0.06 });
    expect(fault.cure?.areaAfter_m2).toBe(0);
    expectCureRepeats(result, fault);
  });

  it('a first stroke inside the edge, the rest following it', () => {
    const shift = { shift_m: 0.07 };
    const result = sprayed({ 0: shift, 1: shift, 2: shift, 3: shift, 4: shift });
    const fault = faultOf(result, 'thin-lap');
    expect(fault.cause.kind).toBe('edge');
    expect(fault.cause.strokes).toEqual([0]);
    expect(Math.abs(fault.cause.found - 0.07)).toBeLessThan(0.003);
    expect(fault.cause.meant).toBe(0);
    expect(fault.cure?.change).toMatchObject({ kind: 'move-strokes', anchored: [0] });
    expectCureRepeats(result, fault);
  });

  it('dry spray from one far stroke', () => {
    const result = sprayed(
      { 2: { distance_m: () => 0.36 } },
      { setUp: { drops: { meanDiameter_um: 22, spread: 1.8, solventSpeed: 3, atViscosity_mPa_s: 50 } }, target: { thickness_um: 48, min_percent: 40 } },
    );
    const fault = faultOf(result, 'dry-spray');
    expect(fault.cause.kind).toBe('distance');
    expect(fault.cause.strokes).toEqual([2]);
    expect(fault.cause.found).toBeCloseTo(0.36, 3);
    expectCureRepeats(result, fault);
  });

  it('no hand is blamed for a plan that laps too little', () => {
    const result = sprayed({}, { plan: { overlap_percent: 30, speed_m_s: 0.3 / 1.4 }, size_mm: [700, 700] });
    expect(faultOf(result, 'thin-lap').cause.kind).toBe('plan-overlap');
  });
});
