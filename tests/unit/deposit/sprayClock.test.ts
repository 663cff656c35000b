import type { CellBlock } from '../../../sim/base/grid.ts';
import { describe, expect, it } from 'vitest';
import { airSlices } from '../../../sim/deposit/airSlices.ts';
import { emptyDeposit } from '../../../sim/deposit/emptyDeposit.ts';
import { layPath } from '../../../sim/deposit/layPath.ts';
import { sprayUntil, startSprayClock } from '../../../sim/deposit/sprayClock.ts';
import { makeSpray } from '../../../sim/gun/makeSpray.ts';
import type { Path } from '../../../sim/stroke/path.ts';
import { pathOf, plainSetUp, strokeOf, wholeGrid } from '../../helpers/sprayCases.ts';

const panelGrid = wholeGrid(150, 100, 4e-3);
/** Fluid comes 0.1 s after the trigger. */
const spray = makeSpray(plainSetUp({ width_m: 0.16, depth_m: 0.06 }, { triggerLag_s: 0.1 }));

/** One straight stroke, a stop, a slanted one with the wrist turned; it begins at 5 s. */
const path = pathOf([
  { t: 5, x: 0.1, y: 0.15 },
  { t: 6, x: 0.4, y: 0.15 },
  { t: 6.4, x: 0.4, y: 0.15, trigger: 0 },
  { t: 7, x: 0.45, y: 0.25, fan: 1.2, pitch: 0.1 },
  { t: 8, x: 0.15, y: 0.3, fan: 1.8, pitch: -0.1, trigger: 0 },
]);
const strokes = [strokeOf(0, 0, 2), strokeOf(1, 3, 4)];

function whole(of: Path = path) {
  const deposit = emptyDeposit(panelGrid.grid);
  layPath({ deposit, panelGrid, path: of, strokes, spray });
  return deposit;
}

/** All that lands, in steps of `step_s`; `outside` sums what lay outside the block told. */
function littleByLittle(step_s: number) {
  const clock = startSprayClock({ panelGrid, path, strokes, spray });
  const cells = clock.landed.wet_m.length;
  const sums = { wet: new Float64Array(cells), solids: new Float64Array(cells), dry: new Float64Array(cells), outside: 0 };
  let block: CellBlock | null = null;
  for (let at_s = 5 + step_s; at_s < 9 + step_s; at_s += step_s) {
    block = sprayUntil(clock, block, at_s);
    clock.landed.wet_m.forEach((wet, cell) => {
      const [row, column] = [Math.floor(cell / 150), cell % 150];
      const isIn = block !== null && row >= block.lowRow && row < block.highRow && column >= block.lowColumn && column < block.highColumn;
      if (!isIn) sums.outside += wet;
      sums.wet[cell] = sums.wet[cell]! + wet;
      sums.solids[cell] = sums.solids[cell]! + clock.landed.solids_m[cell]!;
      sums.dry[cell] = sums.dry[cell]! + clock.landed.arrivedDry_m[cell]!;
    });
  }
  return sums;
}

const total = (values: ArrayLike<number>) => Array.from(values).reduce((sum, value) => sum + value, 0);

describe('a path sprayed little by little', () => {
  it.each([0.05, 0.25, 0.7, 10])('in steps of %f s lands what the whole path lands', (step_s) => {
    const all = whole();
    const sums = littleByLittle(step_s);
    // Cut elsewhere, a stretch has its stamps at other places: each cell is right to the stamps' own 0.1 %, the total to what 4 mm cells sum of them.
    const peak = all.wet_m.reduce((a, b) => Math.max(a, b), 0);
    for (let cell = 0; cell < sums.wet.length; cell++) expect(Math.abs(sums.wet[cell]! - all.wet_m[cell]!)).toBeLessThan(1e-3 * peak);
    expect(Math.abs(total(sums.wet) / total(all.wet_m) - 1)).toBeLessThan(1e-5);
    expect(Math.abs(total(sums.solids) / total(all.solids_m) - 1)).toBeLessThan(1e-5);
    expect(total(sums.dry)).toBeCloseTo(total(all.arrivedDry_m), 9);
  });

  it('leaves nothing outside the block that it tells, and clears what was there before', () => {
    expect(littleByLittle(0.25).outside).toBe(0);
    expect(littleByLittle(0.9).outside).toBe(0);
  });

  it('lands nothing before the fluid comes, in the gap, after the end, or when asked twice for one time', () => {
    const clock = startSprayClock({ panelGrid, path, strokes, spray });
    expect(sprayUntil(clock, null, 5.05)).toBeNull();
    const block = sprayUntil(clock, null, 5.5);
    expect(block).not.toBeNull();
    expect(sprayUntil(clock, block, 5.5)).toBeNull();
    expect(total(clock.landed.wet_m)).toBe(0);
    const rest = sprayUntil(clock, null, 6.55);
    expect(sprayUntil(clock, rest, 6.9)).toBeNull();
    const last = sprayUntil(clock, null, 20);
    expect(last).not.toBeNull();
    expect(sprayUntil(clock, last, 30)).toBeNull();
  });

  it('refuses a gun behind the panel', () => {
    const behind = pathOf([{ t: 0, x: 0.1, y: 0.1, z: -0.1 }, { t: 1, x: 0.2, y: 0.1 }]);
    expect(() => startSprayClock({ panelGrid, path: behind, strokes: [], spray })).toThrow(expect.objectContaining({ code: 'range' }) as Error);
  });
});

describe('air on a path', () => {
  it('comes with the trigger, without lag, also where no fluid does', () => {
    const half = pathOf([{ t: 0, x: 0.1, y: 0.1, trigger: 0.5 }, { t: 1, x: 0.2, y: 0.1, trigger: 0 }, { t: 2, x: 0.3, y: 0.1 }, { t: 3, x: 0.4, y: 0.1 }]);
    const slices = airSlices(half);
    expect(slices.map(({ start_s, duration_s }) => [start_s, duration_s])).toEqual([[0, 1], [2, 1]]);
    expect(slices[0]!.end.x_m).toBeCloseTo(0.2, 12);
    const deposit = whole(pathOf([{ t: 0, x: 0.1, y: 0.1, trigger: 0.5 }, { t: 1, x: 0.2, y: 0.1, trigger: 0 }]));
    expect(total(deposit.wet_m)).toBe(0);
  });
});
