import type { PanelGrid } from '../../panel/panelGrid.ts';
import { JUDGED_COVER } from '../../verdict/judged.ts';
import { peelOf, runLife } from '../coatLife.ts';
import type { Travel } from '../lay.ts';
import type { CoatSetting, LaidCoat } from '../result.ts';

/** A small square of a panel, and the travel over it, moved so that its corner is the origin. */
export interface Patch {
  readonly setting: CoatSetting;
  readonly travel: Travel;
}

/** What the film in the middle of a patch went through. */
export interface PatchLife {
  /** Wet film as landed. */
  readonly film_m: number;
  readonly run_m: number;
  readonly peel_m: number;
  readonly margin_K: number;
  /** NaN where it has not set. */
  readonly setAt_s: number;
}

/** Cells of a patch along each side. Assumed: its middle is four cells of 8 mm from its edge, more than a run of 3 mm draws film from. */
const SIDE = 8;
const MIDDLE = (SIDE / 2) * SIDE + SIDE / 2;

/**
 * A patch about the place whose film comes nearest the mean, of those where the whole patch lies on
 * the panel if there are any.
 * @param setting on coarse cells. @param laid the coat on those cells. @param mean_m of its wet film.
 */
export function typicalPatch(setting: CoatSetting, travel: Travel, { film }: LaidCoat, mean_m: number): Patch {
  const { grid, cover } = setting.panelGrid;
  let best = -1;
  let least = Infinity;
  for (let cell = 0; cell < cover.length; cell++) {
    if ((cover[cell] as number) < JUDGED_COVER) continue;
    const whole = isWhole(setting.panelGrid, cell);
    const off = Math.abs((film.wet_m[cell] as number) - mean_m) + (whole ? 0 : mean_m);
    if (off >= least) continue;
    best = cell;
    least = off;
  }
  return patchAt(setting, travel, best % grid.columns, Math.floor(best / grid.columns));
}

/** Whether the corners of a patch about a cell lie on the panel. */
function isWhole({ grid, cover }: PanelGrid, cell: number): boolean {
  const half = SIDE / 2;
  const column = cell % grid.columns;
  const row = Math.floor(cell / grid.columns);
  if (column < half || row < half || column + half > grid.columns || row + half > grid.rows) return false;
  return [row - half, row + half - 1].every((y) => [column - half, column + half - 1].every((x) => (cover[y * grid.columns + x] as number) >= JUDGED_COVER));
}

function patchAt(setting: CoatSetting, travel: Travel, column: number, row: number): Patch {
  const { grid, cover } = setting.panelGrid;
  const [left, low] = [column - SIDE / 2, row - SIDE / 2];
  const own = new Float32Array(SIDE * SIDE).map((_, cell) => {
    const [x, y] = [left + (cell % SIDE), low + Math.floor(cell / SIDE)];
    return x < 0 || y < 0 || x >= grid.columns || y >= grid.rows ? 0 : (cover[y * grid.columns + x] as number);
  });
  const cell_m = grid.cellSize_m;
  const panelGrid = { grid: { columns: SIDE, rows: SIDE, cellSize_m: cell_m }, cover: own, covered_m2: own.reduce((sum, share) => sum + share, 0) * cell_m ** 2 };
  const { path, strokes } = travel;
  const moved = { ...path, x_m: path.x_m.map((x_m) => x_m - left * cell_m), y_m: path.y_m.map((y_m) => y_m - low * cell_m) };
  return { setting: { ...setting, coat: { ...setting.coat, over: undefined }, panelGrid }, travel: { path: moved, strokes } };
}

/**
 * The film in the middle of a patch, on a bare panel, sprayed with the strokes' own times and pauses
 * and with `ratio` times the liquid, the drops unchanged. @throws CrosscoatError `cancelled`.
 */
export function livePatch({ setting, travel }: Patch, ratio: number, shouldStop?: () => boolean): PatchLife {
  const { spray } = setting;
  const richer = { ...setting, spray: { ...spray, fluidRate_m3_s: spray.fluidRate_m3_s * ratio } };
  const { end } = runLife(richer, travel, shouldStop === undefined ? {} : { shouldStop });
  const { film } = end;
  return {
    film_m: film.landed_m[MIDDLE] as number,
    run_m: film.run_m[MIDDLE] as number,
    peel_m: peelOf(richer, end)[MIDDLE] as number,
    margin_K: film.margin_K[MIDDLE] as number,
    setAt_s: film.setAt_s[MIDDLE] as number,
  };
}
