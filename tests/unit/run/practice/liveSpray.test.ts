import { describe, expect, it } from 'vitest';
import { demoJob, DEMO_PLANNED_COAT } from '../../../../sim/job/demo.ts';
import { runLife } from '../../../../sim/run/coatLife.ts';
import { LiveSpray } from '../../../../sim/run/practice/liveSpray.ts';
import { emptyShownFilm, writeShown } from '../../../../sim/run/practice/liveView.ts';
import type { CoatSetting } from '../../../../sim/run/result.ts';
import { settleCoat } from '../../../../sim/run/settle.ts';
import { strokesOf } from '../../../../sim/run/strokes.ts';
import { poseAt, type Path } from '../../../../sim/stroke/path.ts';
import { PathBuilder } from '../../../../sim/stroke/pathBuilder.ts';

/** The planned path up to a time, as a device would give it: a row every `step_s`. */
function sampled(path: Path, until_s: number, step_s: number): Path {
  const rows = new PathBuilder();
  for (let t_s = path.t_s[0] as number; t_s < until_s; t_s += step_s) rows.add(poseAt(path, t_s));
  return rows.build();
}

/** Sprays a path pose by pose, sixty frames a second; the film works for as long as `pieces` allows in each. */
function sprayLive(setting: CoatSetting, path: Path, pieces: number): LiveSpray {
  const live = new LiveSpray(setting, null, () => undefined);
  let row = 0;
  const end_s = path.t_s[path.count - 1] as number;
  for (let frame_s = path.t_s[0] as number; frame_s <= end_s + 1 / 60; frame_s += 1 / 60) {
    for (; row < path.count && (path.t_s[row] as number) <= frame_s; row++) live.add(poseAt(path, path.t_s[row] as number));
    live.lay();
    let left = pieces;
    live.work(() => left-- > 0);
  }
  return live;
}

const setting = settleCoat(demoJob(), DEMO_PLANNED_COAT, { cell_mm: 5 });
const planned = strokesOf(setting);
/** The first three strokes. */
const UNTIL_S = planned.path.t_s[planned.strokes[2]?.lastRow ?? 0] as number;

describe('LiveSpray', () => {
  it.each([60, 250, 1000])('lays the film of the same path sprayed whole, from %i samples a second', (rate) => {
    const path = sampled(planned.path, UNTIL_S, 1 / rate);
    const live = sprayLive(setting, path, Infinity);
    live.work(() => true);
    const until_s = live.film.time_s;
    const whole = runLife(setting, { path, strokes: [] }, { until_s });
    const shown = emptyShownFilm(live.film.inside.length);
    writeShown(live, { lowColumn: 0, highColumn: live.film.grid.columns, lowRow: 0, highRow: live.film.grid.rows }, 'wet-now', setting.target, shown);
    const pending = live.pendingOn({ lowColumn: 0, highColumn: live.film.grid.columns, lowRow: 0, highRow: live.film.grid.rows }).reduce((sum, { wet_m }) => sum + wet_m.reduce((a, b, cell) => a + b * (live.film.inside[cell] as number), 0), 0);
    let most = 0;
    let worst = 0;
    let sum = pending;
    live.film.solids_m.forEach((solids, cell) => {
      const { fast_m, slow_m, beneathSolids_m, beneathFast_m, beneathSlow_m } = live.film;
      const all = [fast_m, slow_m, beneathSolids_m, beneathFast_m, beneathSlow_m].reduce((sum, amount) => sum + (amount[cell] as number), solids);
      worst = Math.max(worst, Math.abs(all - (whole.end.wet_m[cell] as number)));
      most = Math.max(most, all);
      sum += all;
    });
    // Travel that is cut at frames is laid as stamps, right to about 0.1 %, where the whole path has closed forms; two or three strokes reach a place.
    expect(worst / most).toBeLessThan(0.003);
    // Single precision of the picture.
    expect(shown.value.reduce((a, b) => a + b, 0) / sum - 1).toBeLessThan(1e-6);
    expect(1 - shown.value.reduce((a, b) => a + b, 0) / sum).toBeLessThan(1e-6);
  });

  it('gives the same film however the work is cut into frames', () => {
    const path = sampled(planned.path, UNTIL_S, 1 / 125);
    const atOnce = sprayLive(setting, path, Infinity);
    const inPieces = sprayLive(setting, path, 1);
    expect(inPieces.lag_s).toBeGreaterThan(atOnce.lag_s);
    inPieces.work(() => true);
    atOnce.work(() => true);
    expect(inPieces.film.time_s).toBe(atOnce.film.time_s);
    expect(inPieces.film.solids_m).toEqual(atOnce.film.solids_m);
    expect(inPieces.film.slow_m).toEqual(atOnce.film.slow_m);
  });

  it('shows what landed before the film has taken it, and counts nothing twice', () => {
    const path = sampled(planned.path, UNTIL_S / 3, 1 / 125);
    const whole = { lowColumn: 0, highColumn: setting.panelGrid.grid.columns, lowRow: 0, highRow: setting.panelGrid.grid.rows };
    const total = (live: LiveSpray): number => {
      const shown = emptyShownFilm(live.film.inside.length);
      writeShown(live, whole, 'wet-now', setting.target, shown);
      return shown.value.reduce((sum, wet) => sum + wet, 0);
    };
    const idle = sprayLive(setting, path, 0);
    const landed = total(idle);
    expect(idle.film.landed_m.every((wet) => wet === 0)).toBe(true);
    expect(landed).toBeGreaterThan(0);
    let seen = 0;
    while (idle.isBehind) {
      let once = 1;
      idle.work(() => once-- > 0);
      const now = total(idle);
      // Only drying takes film away; a landing counted twice would add a tenth and more.
      expect(now).toBeLessThan(landed * 1.001);
      seen++;
    }
    expect(seen).toBeGreaterThan(10);
  });

  it('tells every block that it changes', () => {
    const path = sampled(planned.path, UNTIL_S / 3, 1 / 125);
    const touched = new Uint8Array(setting.panelGrid.grid.columns * setting.panelGrid.grid.rows);
    const live = new LiveSpray(setting, null, (block) => {
      for (let row = block.lowRow; row < block.highRow; row++) touched.fill(1, row * setting.panelGrid.grid.columns + block.lowColumn, row * setting.panelGrid.grid.columns + block.highColumn);
    });
    for (let row = 0; row < path.count; row++) live.add(poseAt(path, path.t_s[row] as number));
    live.lay();
    live.work(() => true);
    live.film.landed_m.forEach((wet, cell) => {
      if (wet > 0) expect(touched[cell]).toBe(1);
    });
    expect(touched.reduce((sum, one) => sum + one, 0)).toBeGreaterThan(100);
  });
});
