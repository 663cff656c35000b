import { assertThat, CrosscoatError } from '../base/errors.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import type { Spray } from '../gun/spray.ts';
import type { Path } from '../stroke/path.ts';
import type { Stroke } from '../stroke/stroke.ts';
import { layBands } from './bands.ts';
import { coveredVolume_m3 } from './coveredVolume.ts';
import type { Deposit, PaintAccount } from './deposit.ts';
import { fluidSlices } from './fluidSlices.ts';
import { laySlice, startRun } from './laySlice.ts';
import { makeLayer, type LayMethod } from './pieces.ts';
import { countPasses } from './passes.ts';

/** What is laid, by what spray, on what. */
export interface DepositOptions {
  /** Changed in place: what is laid is added. Same grid as `panelGrid`. */
  readonly deposit: Deposit;
  readonly panelGrid: PanelGrid;
  readonly path: Path;
  /** Which rows belong to which stroke; fluid outside them is laid all the same. */
  readonly strokes: readonly Stroke[];
  readonly spray: Spray;
  /** Time of the path at which to stop, in mid-stroke if need be; the whole path if left out. */
  readonly until_s?: number;
  /** `auto` unless comparing: closed form where it holds and pays, stamps elsewhere. */
  readonly method?: LayMethod;
  /** Multiplies the stamps' step, for convergence tests; 1 if left out. */
  readonly stepScale?: number;
  /** Asked about every 4096 pieces; true stops with a `cancelled` error. */
  readonly shouldStop?: () => boolean;
}

/**
 * Lays every piece of a path that has fluid on, adding to `deposit`, and says where the liquid went.
 *
 * The footprint is integrated along the path. A straight even stretch (constant speed, distance
 * and fan angle, gun square) is laid in closed form, exact to the footprint's sampling (1e-5 of the
 * peak); any other is laid as stamps at most a sixth of the fan's half depth apart, each at the
 * middle of its time, the projection law giving the film of a tilted gun. Each cell holds the film
 * at its centre, also outside the outline and in holes; the account weighs cells by their cover.
 *
 * Efficiency and solvent loss are taken at the distance along the spray's axis, the same for the
 * whole fan. Left out: the reach of the shaping air, bounce, edges drawing spray to their backs.
 *
 * @throws CrosscoatError `range` for a gun at or behind the panel (z_m <= 0) or a column that is
 *   not a number; `cancelled` when `shouldStop` says so (the deposit is then half laid).
 */
export function layPath(options: DepositOptions): PaintAccount {
  const { deposit, panelGrid, path, strokes, spray, until_s = Infinity } = options;
  assertThat(deposit.grid.columns === panelGrid.grid.columns && deposit.grid.rows === panelGrid.grid.rows, 'layPath: deposit and panel have different grids');
  checkPath(path);
  const before_m3 = coveredVolume_m3(deposit.wet_m, panelGrid);
  const layer = makeLayer(spray, options.method ?? 'auto', options.stepScale);
  const run = startRun(layer, deposit);
  for (const slice of fluidSlices(path, strokes, spray, until_s)) {
    laySlice(run, slice, options.shouldStop);
  }
  layBands(deposit, run.bands);
  countPasses(deposit.passes, deposit.grid, layer.tables, run.reaches);
  const landed_m3 = coveredVolume_m3(deposit.wet_m, panelGrid) - before_m3;
  const { sprayed_m3, fog_m3, flight_m3 } = run;
  return { sprayed_m3, landed_m3, fog_m3, flight_m3, missed_m3: sprayed_m3 - fog_m3 - flight_m3 - landed_m3 };
}

/** NaN and infinities fail here, once, so that the kernels need not look. */
export function checkPath(path: Path): void {
  const columns = [path.t_s, path.x_m, path.y_m, path.z_m, path.fan_rad, path.pitch_rad, path.yaw_rad];
  for (let row = 0; row < path.count; row++) {
    const z_m = path.z_m[row] as number;
    if (!(z_m > 0)) {
      throw new CrosscoatError('range', `layPath: z_m = ${z_m} m at row ${row} is not above 0 (the gun is at or behind the panel); give the nozzle's distance from the panel`);
    }
    for (const column of columns) {
      if (!Number.isFinite(column[row])) {
        throw new CrosscoatError('range', `layPath: row ${row} holds ${column[row]} (not a finite number); give finite times, places and angles`);
      }
    }
  }
}
