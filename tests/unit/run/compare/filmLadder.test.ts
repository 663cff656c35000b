import { describe, expect, it } from 'vitest';
import { filmLadder, ladderAt } from '../../../../sim/run/compare/filmLadder.ts';
import { livePatch, typicalPatch, type Patch } from '../../../../sim/run/compare/patch.ts';
import { laidValues } from '../../../../sim/run/compare/laidValues.ts';
import { layCoat } from '../../../../sim/run/lay.ts';
import { settleCoat } from '../../../../sim/run/settle.ts';
import { strokesOf } from '../../../../sim/run/strokes.ts';
import { testJob, type JobParts } from '../testJob.ts';

const RUN_M = 3e-3;

function patchOf(parts: JobParts, tilt_deg = 90): { readonly patch: Patch; readonly mean_m: number } {
  const job = testJob(parts);
  const [board] = job.part.panels;
  const tilted = { ...job, part: { ...job.part, panels: board === undefined ? [] : [{ ...board, attitude: { tilt_deg, down_deg: -90 } }] } };
  const setting = settleCoat(tilted, 'coat', { cell_mm: 8 });
  const strokes = strokesOf(setting);
  const laid = layCoat(setting, strokes);
  const { wet_m } = laidValues(setting, laid);
  return { patch: typicalPatch(setting, strokes, laid, wet_m), mean_m: wet_m };
}

describe('a ladder of films', () => {
  const { patch, mean_m } = patchOf({});
  const ladder = filmLadder(patch, RUN_M);
  const own = livePatch(patch, 1);

  it('stands where the film is the mean', () => {
    // The patch's middle is one of the 5000 cells, whose films lie within a hundredth of the mean of each other.
    expect(Math.abs(own.film_m / mean_m - 1)).toBeLessThan(0.01);
  });

  it('finds the film that just holds: 5 % less of it holds, 5 % more runs', () => {
    expect(ladder.holdUp_m).toBeGreaterThan(own.film_m);
    expect(livePatch(patch, (0.95 * ladder.holdUp_m) / own.film_m).run_m).toBeLessThan(RUN_M);
    expect(livePatch(patch, (1.05 * ladder.holdUp_m) / own.film_m).run_m).toBeGreaterThan(RUN_M);
  });

  it('rises from rung to rung, from half the film, and moves farther the heavier the film', () => {
    const { rungs } = ladder;
    expect(rungs[0]?.film_m).toBeCloseTo(own.film_m / 2, 9);
    for (let i = 1; i < rungs.length; i++) {
      expect(rungs[i]?.film_m).toBeGreaterThan(rungs[i - 1]?.film_m as number);
      expect(rungs[i]?.run_m).toBeGreaterThanOrEqual(rungs[i - 1]?.run_m as number);
    }
  });

  it('is read on straight lines between rungs, and held beyond its ends', () => {
    const [low, next] = ladder.rungs;
    expect(ladderAt(ladder, own.film_m, ({ peel_m }) => peel_m)).toBeCloseTo(own.peel_m, 12);
    const between = ladderAt(ladder, ((low?.film_m ?? NaN) + (next?.film_m ?? NaN)) / 2, ({ peel_m }) => peel_m);
    expect(between).toBeCloseTo(((low?.peel_m ?? NaN) + (next?.peel_m ?? NaN)) / 2, 12);
    expect(ladderAt(ladder, 0, ({ film_m }) => film_m)).toBe(low?.film_m);
    expect(ladderAt(ladder, 1, ({ film_m }) => film_m)).toBe(ladder.rungs.at(-1)?.film_m);
  });

  it('goes down until a film holds where even half of the planned one runs', () => {
    const heavy = patchOf({ plan: { speed_m_s: 0.05 } });
    const low = filmLadder(heavy.patch, RUN_M);
    const film_m = livePatch(heavy.patch, 1).film_m;
    expect(low.holdUp_m).toBeLessThan(film_m / 2);
    expect(livePatch(heavy.patch, (0.95 * low.holdUp_m) / film_m).run_m).toBeLessThan(RUN_M);
    expect(livePatch(heavy.patch, (1.05 * low.holdUp_m) / film_m).run_m).toBeGreaterThan(RUN_M);
  });

  it('has no film that runs on a level panel', () => {
    expect(filmLadder(patchOf({}, 0).patch, RUN_M).holdUp_m).toBe(Infinity);
  });
});
