import { describe, expect, it } from 'vitest';
import type { CellBlock } from '../../../../sim/base/grid.ts';
import { drillById } from '../../../../sim/run/drills/drills.ts';
import { layCoat } from '../../../../sim/run/lay.ts';
import { LiveSpray } from '../../../../sim/run/practice/liveSpray.ts';
import { emptyShownFilm, RUNNING, writeShown, type LiveValue, type ShownFilm } from '../../../../sim/run/practice/liveView.ts';
import { settleCoat } from '../../../../sim/run/settle.ts';
import { planOf } from '../../../../sim/run/strokes.ts';
import { poseAt } from '../../../../sim/stroke/path.ts';
import type { Target } from '../../../../sim/verdict/target.ts';

const drill = drillById('around-a-hole');
const setting = settleCoat(drill.job(), drill.coat, { cell_mm: 8 });
const { grid } = setting.panelGrid;
const planned = planOf(setting, setting.plan);
const WHOLE: CellBlock = { lowColumn: 0, highColumn: grid.columns, lowRow: 0, highRow: grid.rows };

const END_S = planned.path.t_s[planned.strokes[1]!.lastRow]!;

/** The first two strokes sprayed, all of them in the film or none. */
function sprayed(isTaken: boolean): LiveSpray {
  const live = new LiveSpray(setting, null, () => undefined);
  for (let t_s = planned.path.t_s[0]!; t_s < END_S; t_s += 0.02) live.add(poseAt(planned.path, t_s));
  live.add(poseAt(planned.path, END_S));
  live.lay();
  live.work(() => isTaken);
  return live;
}

function shownOf(live: LiveSpray, kind: LiveValue = 'target', target: Target = setting.target, block = WHOLE): ShownFilm {
  const shown = emptyShownFilm(live.film.inside.length);
  writeShown(live, block, kind, target, shown);
  return shown;
}

/** The cell with most film. */
function wettest({ value }: ShownFilm): number {
  return value.reduce((best, one, cell) => (one > value[best]! ? cell : best), 0);
}

describe('the film under the hand, shown', () => {
  it('is empty at first', () => {
    const { value, look } = shownOf(new LiveSpray(setting, null, () => undefined));
    expect([value.every((one) => one === 0), look.every((one) => one === 0)]).toEqual([true, true]);
  });

  it('is what landed as a share of the target, before the film has taken it and after', () => {
    const before = sprayed(false);
    const after = sprayed(true);
    expect(before.pendingOn(WHOLE).length).toBeGreaterThan(after.pendingOn(WHOLE).length);
    const whole = layCoat(setting, planned, { until_s: END_S }).film;
    const most = whole.wet_m.reduce((a, b) => Math.max(a, b), 0);
    for (const live of [before, after]) {
      const { value } = shownOf(live);
      let worst = 0;
      value.forEach((share, cell) => {
        if (live.film.inside[cell] === 1) worst = Math.max(worst, Math.abs(share * setting.target.thickness_m - whole.wet_m[cell]!));
      });
      // Travel that is cut into rows is laid as stamps, right to about 0.1 %; two strokes reach a place.
      expect(worst).toBeLessThan(0.003 * most);
      const sum = value.reduce((a, b) => a + b, 0) * setting.target.thickness_m;
      const laid = whole.wet_m.reduce((a, wet, cell) => a + wet * live.film.inside[cell]!, 0);
      expect(Math.abs(sum / laid - 1)).toBeLessThan(0.003);
    }
  });

  it('is the dry film’s share where the target is dry', () => {
    const live = sprayed(true);
    const dry: Target = { ...setting.target, film: 'dry', thickness_m: 10e-6 };
    const cell = wettest(shownOf(live));
    expect(live.pendingOn(WHOLE).every(({ wet_m }) => wet_m[cell] === 0)).toBe(true);
    expect(shownOf(live, 'target', dry).value[cell]).toBeCloseTo(live.film.laid_m[cell]! / 10e-6, 5);
  });

  it('keeps to its target share while it dries, where the film now grows thinner', () => {
    const live = sprayed(true);
    const cell = wettest(shownOf(live));
    const { film } = live;
    // The picture is in single precision: 50 µm to 3e-12 m.
    const before = [shownOf(live).value[cell]!, shownOf(live, 'wet-now').value[cell]!];
    expect(before[1]).toBeCloseTo(film.solids_m[cell]! + film.fast_m[cell]! + film.slow_m[cell]!, 11);
    film.fast_m[cell] = 0;
    film.beneathSolids_m[cell] = 3e-6;
    expect(shownOf(live).value[cell]).toBe(before[0]);
    expect(shownOf(live, 'wet-now').value[cell]).toBeCloseTo(film.solids_m[cell]! + film.slow_m[cell]! + 3e-6, 11);
  });

  it('leaves alone what lies outside the block, or outside the panel', () => {
    const live = sprayed(true);
    const shown = emptyShownFilm(live.film.inside.length);
    shown.value.fill(-7);
    const block = { lowColumn: 3, highColumn: 20, lowRow: 2, highRow: 9 };
    writeShown(live, block, 'target', setting.target, shown);
    shown.value.forEach((value, cell) => {
      const column = cell % grid.columns;
      const row = Math.floor(cell / grid.columns);
      const isIn = column >= 3 && column < 20 && row >= 2 && row < 9 && live.film.inside[cell] === 1;
      expect(value === -7, `column ${column}, row ${row}`).toBe(!isIn);
    });
    expect(live.film.inside.some((one) => one === 0)).toBe(true);
  });
});

describe('how the film looks', () => {
  const live = sprayed(true);
  const cell = wettest(shownOf(live));
  const { film, law } = live;
  film.landed_m[cell] = 50e-6;
  film.arrivedDry_m[cell] = 0;
  film.run_m[cell] = 0;

  function lookOf(solids: number, solvent: number): number {
    film.solids_m[cell] = solids;
    film.fast_m[cell] = solvent / 2;
    film.slow_m[cell] = solvent / 2;
    return shownOf(live).look[cell]!;
  }

  it('is the wetter the farther its solids are from setting: 1 - φ / φ set', () => {
    expect(lookOf(10e-6, 40e-6)).toBeCloseTo(1 - 0.2 / law.setFraction, 6);
    expect(lookOf(1e-6, 99e-6)).toBeCloseTo(1 - 0.01 / law.setFraction, 6);
  });

  it('is nought once it has set', () => {
    expect(lookOf(10e-6, (10e-6 * (1 - law.setFraction)) / law.setFraction)).toBeCloseTo(0, 6);
    expect(lookOf(10e-6, 0)).toBe(0);
  });

  it('is marked where it runs by more than a millimetre, for as long as it is wet', () => {
    film.run_m[cell] = 0.9e-3;
    expect(lookOf(10e-6, 40e-6)).toBeLessThan(1);
    film.run_m[cell] = 1.1e-3;
    expect(lookOf(10e-6, 40e-6)).toBeCloseTo(RUNNING + 1 - 0.2 / law.setFraction, 6);
    expect(lookOf(10e-6, 0)).toBe(0);
    film.run_m[cell] = 0;
  });

  it('is below nought where more of it arrived as dust than the target allows', () => {
    film.arrivedDry_m[cell] = 0.99 * setting.target.dryFraction * 50e-6;
    expect(lookOf(10e-6, 40e-6)).toBeGreaterThan(0);
    film.arrivedDry_m[cell] = 20e-6;
    expect(lookOf(10e-6, 40e-6)).toBeCloseTo(-0.4, 6);
  });
});
