import { describe, expect, it } from 'vitest';
import { changedStrokes } from '../../../sim/run/changedStrokes.ts';
import { judgeCoat } from '../../../sim/run/judge.ts';
import { layCoat } from '../../../sim/run/lay.ts';
import type { CoatResult } from '../../../sim/run/result.ts';
import { strokesOf } from '../../../sim/run/strokes.ts';
import type { Fault } from '../../../sim/verdict/verdict.ts';
import { type JobParts, MEAN_um, testSetting } from './testJob.ts';

function judged(parts: JobParts): CoatResult {
  const setting = testSetting(parts);
  const strokes = strokesOf(setting);
  return judgeCoat(setting, strokes, layCoat(setting, strokes));
}

/** The worst fault, with its cure run again by itself. */
function worstFault(result: CoatResult): Fault {
  const fault = result.verdict.faults[0] as Fault;
  expect(fault).toBeDefined();
  return fault;
}

function expectCureRepeats(result: CoatResult, fault: Fault): void {
  const { cure } = fault;
  if (cure === null || cure.change.kind !== 'plan') throw new Error('not a change of plan');
  const again = layCoat(result.setting, changedStrokes(result.setting, result.strokes, cure.change));
  const rejudged = judgeCoat(result.setting, result.strokes, again, { cures: false }).verdict;
  const area = rejudged.faults.filter((f) => f.kind === fault.kind).reduce((sum, f) => sum + f.area_m2, 0);
  expect(cure.areaAfter_m2).toBeCloseTo(area, 12);
  expect(cure.inTargetAfter).toBeCloseTo(rejudged.inTargetFraction, 12);
}

describe('a coat as planned', () => {
  it('that suits its fan has no faults, no causes and no doubts', () => {
    const result = judged({});
    expect(result.verdict.faults).toEqual([]);
    expect(result.verdict.inTargetFraction).toBe(1);
    expect(result.verdict.warnings).toEqual([]);
    expect(result.setting.warnings.map((w) => w.code)).toEqual([]);
    // The closed form of the mean; the rows beyond the edge strokes take part of the edge rows’ film.
    expect(result.verdict.wet.mean_m * 1e6).toBeGreaterThan(MEAN_um * 0.98);
    expect(result.verdict.wet.mean_m * 1e6).toBeLessThan(MEAN_um * 1.03);
    expect(result.verdict.dry.mean_m / result.verdict.wet.mean_m).toBeCloseTo(0.15, 6);
  });

  it('at 30 % overlap has thin laps, and is cured by the overlap of its fan', () => {
    const result = judged({ plan: { overlap_percent: 30, speed_m_s: 0.3 / 1.4 } });
    const fault = result.verdict.faults.find((f) => f.kind === 'thin-lap') as Fault;
    expect(fault.cause.kind).toBe('plan-overlap');
    expect(fault.cause.found).toBeCloseTo(0.3, 12);
    expect(Math.abs(fault.cause.meant - 0.508)).toBeLessThan(0.003);
    expect(fault.cure?.change).toMatchObject({ kind: 'plan', overlapFraction: fault.cause.meant });
    // The flattest overlap has a CV of 0.2 %: all of the panel is inside ±20 %.
    expect(fault.cure?.inTargetAfter).toBe(1);
    expect(fault.cure?.worsens).toEqual([]);
    expectCureRepeats(result, fault);
  });

  it.each([
    ['light', 'thin-lap', 0.45],
    ['heavy', 'heavy-spot', 0.22],
  ] as const)('that is too %s is cured by its speed', (_, kind, speed_m_s) => {
    const result = judged({ plan: { speed_m_s } });
    const fault = worstFault(result);
    expect(result.verdict.faults).toHaveLength(1);
    expect(fault.kind).toBe(kind);
    expect(fault.cause.kind).toBe('plan-film');
    expect(fault.cause.found * 1e6).toBeCloseTo((MEAN_um * 0.3) / speed_m_s, 4);
    expect(fault.cause.meant * 1e6).toBeCloseTo(MEAN_um, 6);
    expect(fault.cure?.change).toEqual({ kind: 'plan', speed_m_s: 0.3 });
    expect(fault.cure?.inTargetAfter).toBe(1);
    expectCureRepeats(result, fault);
  });

  it('from too far is light, and is cured by the distance of its fan', () => {
    const result = judged({ plan: { distance_mm: 300 }, size_mm: [700, 750] });
    const fault = worstFault(result);
    expect(fault.kind).toBe('thin-lap');
    expect(fault.cause).toMatchObject({ kind: 'plan-distance', found: 0.3, meant: 0.2, unit: 'm' });
    expect(fault.cure?.change).toEqual({ kind: 'plan', distance_m: 0.2 });
    expect(fault.cure?.inTargetAfter).toBe(1);
    expectCureRepeats(result, fault);
  });

  it('with a fast thinner from too far arrives dry, and is cured from nearer', () => {
    const result = judged({
      plan: { distance_mm: 350 },
      setUp: { drops: { meanDiameter_um: 35, spread: 1.8, solventSpeed: 6, atViscosity_mPa_s: 50 } },
      size_mm: [700, 875],
    });
    const fault = result.verdict.faults.find((f) => f.kind === 'dry-spray') as Fault;
    expect(fault.cause.kind).toBe('plan-distance');
    expect(fault.cause.found).toBeCloseTo(0.35, 12);
    expect(fault.cause.meant).toBeLessThan(0.35);
    expect(fault.cure?.areaAfter_m2).toBe(0);
    expect(fault.cure?.worst).toBeLessThan(0.1);
    expectCureRepeats(result, fault);
  });

  it('arriving dry from the nearest believed distance is the set-up’s fault, without a cure', () => {
    const result = judged({ setUp: { drops: { meanDiameter_um: 12, spread: 1.8, solventSpeed: 5, atViscosity_mPa_s: 50 }, distanceRange_mm: [150, 300] } });
    const fault = result.verdict.faults.find((f) => f.kind === 'dry-spray') as Fault;
    expect(fault.cause.kind).toBe('set-up');
    expect(fault.cure).toBeNull();
  });

  it('whose first stroke lies inside the edge leaves it thin, and is cured by starting on the edge', () => {
    const result = judged({ plan: { firstStroke_mm: 90 } });
    const fault = worstFault(result);
    expect(['thin-lap', 'holiday']).toContain(fault.kind);
    expect(fault.cause.kind).toBe('plan-edge');
    expect(fault.cause).toMatchObject({ meant: 0, unit: 'm' });
    expect(fault.cause.found).toBeCloseTo(0.09, 12);
    expect(fault.cure?.change).toEqual({ kind: 'plan', firstStroke_m: 0 });
    expect(fault.cure?.inTargetAfter).toBe(1);
    expectCureRepeats(result, fault);
  });

  it('that opens the fluid on the edge leaves the ends thin, and is cured by a lead', () => {
    const result = judged({ plan: { lead_mm: 0, lag_mm: 0 } });
    const fault = result.verdict.faults.find(({ cause }) => cause.kind === 'plan-lead') as Fault;
    expect(fault.cause).toMatchObject({ found: 0, unit: 'm' });
    expect(fault.cure?.worsens).toEqual([]);
    expect(fault.cure?.areaAfter_m2).toBeLessThan(fault.cure?.areaBefore_m2 as number);
    expectCureRepeats(result, fault);
  });
});
