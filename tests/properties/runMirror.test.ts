import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeCoat } from '../../sim/run/judge.ts';
import { layCoat } from '../../sim/run/lay.ts';
import { strokesOf } from '../../sim/run/strokes.ts';
import type { CoatResult } from '../../sim/run/result.ts';
import type { Path } from '../../sim/stroke/path.ts';
import { type HandEdit, session } from '../unit/run/session.ts';
import { testSetting } from '../unit/run/testJob.ts';

const WIDTH_m = 0.704;
const CELL_m = 0.008;
const setting = testSetting({ cell_mm: CELL_m * 1000, size_mm: [WIDTH_m * 1000, 504] });

/** The path in a mirror at the panel's middle: L keeps its sense in the mirror, S turns, and pitch with it. */
function mirrored(path: Path): Path {
  return {
    ...path,
    x_m: path.x_m.map((x) => WIDTH_m - x),
    fan_rad: path.fan_rad.map((fan) => Math.PI - fan),
    pitch_rad: path.pitch_rad.map((pitch) => -pitch),
  };
}

function judged(path: Path): CoatResult {
  const strokes = strokesOf(setting, { path, warnings: [] });
  return judgeCoat(setting, strokes, layCoat(setting, strokes), { cures: false });
}

const edit: fc.Arbitrary<HandEdit> = fc.oneof(
  fc.record({ at: fc.double({ min: 0.2, max: 0.8, noNaN: true }), duration_s: fc.constantFrom(0.5, 0.9) }).map((stop) => ({ stop })),
  fc.constantFrom(0.5, 0.6, 2).map((factor) => ({ speedFactor: () => factor })),
  fc.constantFrom(0.14, 0.3).map((distance_m) => ({ distance_m: () => distance_m })),
  fc.constantFrom(0.3, 0.4).map((arcRadius_m) => ({ arcRadius_m })),
  fc.constantFrom(0.04, -0.05).map((shift_m) => ({ shift_m })),
);

describe('a mirrored session', () => {
  it('has the mirrored verdict: kinds, causes, strokes, areas and figures', () => {
    fc.assert(
      fc.property(fc.constantFrom(1, 2, 3), edit, (stroke, habit) => {
        const path = session(setting, { [stroke]: habit });
        const here = judged(path).verdict;
        const there = judged(mirrored(path)).verdict;
        const words = (verdict: typeof here) => verdict.faults.map((f) => `${f.kind} ${f.cause.kind} ${f.cause.strokes.join()}`).sort();
        expect(words(there)).toEqual(words(here));
        // Rounding of mirrored places moves the single-precision film by parts in a million; a cell
        // that stands on its limit may then change sides: allow two.
        const twoCells = (2 * CELL_m * CELL_m) / setting.panelGrid.covered_m2;
        expect(Math.abs(there.inTargetFraction - here.inTargetFraction)).toBeLessThanOrEqual(twoCells);
        expect(Math.abs(there.wet.mean_m / here.wet.mean_m - 1)).toBeLessThan(1e-5);
        expect(Math.abs(there.wet.cv - here.wet.cv)).toBeLessThan(1e-4);
        for (const fault of here.faults) expect(fault.area_m2).toBeLessThanOrEqual(setting.panelGrid.covered_m2 * (1 + 1e-9));
      }),
      { numRuns: 12, seed: 4 },
    );
  });
});
