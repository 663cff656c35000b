import { describe, expect, it } from 'vitest';
import { judgeCoat } from '../../../sim/run/judge.ts';
import { layCoat } from '../../../sim/run/lay.ts';
import type { CoatResult } from '../../../sim/run/result.ts';
import { strokesOf } from '../../../sim/run/strokes.ts';
import type { Path } from '../../../sim/stroke/path.ts';
import { session } from './session.ts';
import { testSetting } from './testJob.ts';

/** Five strokes on y = 0, 125 … 500 mm, of which some are travelled with the trigger off. */
function sprayedWithout(left: readonly number[]): CoatResult {
  const setting = testSetting({});
  const whole = session(setting, {});
  const { strokes } = strokesOf(setting, { path: whole, warnings: [] });
  const trigger = whole.trigger.slice();
  for (const index of left) trigger.fill(0, strokes[index]!.firstRow, strokes[index]!.lastRow + 1);
  const path: Path = { ...whole, trigger };
  const laid = strokesOf(setting, { path, warnings: [] });
  return judgeCoat(setting, laid, layCoat(setting, laid));
}

describe('a stroke of the plan that nobody sprayed', () => {
  it.each([[[2]], [[4]], [[1, 2]]])('is named: %j', (left) => {
    const { verdict } = sprayedWithout(left);
    const [worst] = verdict.faults;
    expect(worst?.cause.kind).toBe('missing-stroke');
    expect([...(worst?.cause.strokes ?? [])].sort()).toEqual(left);
    expect(worst?.cause).toMatchObject({ found: 0, meant: 1, unit: 'fraction' });
    expect(worst?.cure?.change.kind).toBe('add-strokes');
  });

  it('laid too, brings the coat inside its limits', () => {
    const { verdict } = sprayedWithout([2]);
    for (const fault of verdict.faults) {
      expect(fault.cause).toMatchObject({ kind: 'missing-stroke', strokes: [2] });
      expect(fault.cure).toMatchObject({ change: { kind: 'add-strokes', strokes: [2] }, areaAfter_m2: 0, inTargetAfter: 1, worsens: [] });
    }
    expect(verdict.faults.length).toBeGreaterThan(0);
  });

  it('is not blamed where every stroke was sprayed', () => {
    const { verdict } = sprayedWithout([]);
    expect(verdict.faults).toEqual([]);
  });
});

describe('a stroke of the plan that broke off and went on', () => {
  /** Stroke 3 (right to left is the second) with the fluid off from `from` to `to` of its rows. */
  function brokenOff(from: number, to: number): CoatResult {
    const setting = testSetting({});
    const whole = session(setting, {});
    const { firstRow, lastRow } = strokesOf(setting, { path: whole, warnings: [] }).strokes[2]!;
    const row = (share: number) => Math.round(firstRow + share * (lastRow - firstRow));
    const path: Path = { ...whole, trigger: whole.trigger.slice().fill(0, row(from), row(to)) };
    const strokes = strokesOf(setting, { path, warnings: [] });
    expect(strokes.strokes).toHaveLength(6);
    return judgeCoat(setting, strokes, layCoat(setting, strokes));
  }

  it('is named for the bare stretch, with the share that was sprayed', () => {
    const { verdict } = brokenOff(0.3, 0.65);
    expect(verdict.faults.length).toBeGreaterThan(0);
    for (const { cause, cure } of verdict.faults) {
      expect(cause).toMatchObject({ kind: 'missing-stroke', strokes: [2] });
      // 35 % of 820 mm, ends known to a row of travel (3 mm) each and to the smoothing over 0.1 s (30 mm).
      expect(Math.abs(cause.found - 0.65)).toBeLessThan(0.04);
      expect(cure).toMatchObject({ change: { kind: 'add-strokes', strokes: [2] }, inTargetAfter: 1, areaAfter_m2: 0, worsens: [] });
    }
  });
});

describe('faults, worst first', () => {
  it('put a bare place before a thin one of its size', () => {
    const { verdict } = sprayedWithout([3, 4]);
    expect(verdict.faults[0]?.kind).toBe('holiday');
  });
});
