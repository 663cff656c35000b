import type { Grid } from '../base/grid.ts';
import { gunAxes, type GunAxes } from '../base/gunAxes.ts';
import type { FanTables } from './fanTables.ts';
import type { GunPose } from './fluidSlices.ts';

/** Below this lean the gun counts as square: the film differs by less than 1e-8. */
const SQUARE_RAD = 1e-9;
/** A slant longer than this is past the end of every arrival table. */
const LONGEST_SLANT_M = 100;

/**
 * The panel seen from the gun. Each of u, s, z is linear in the place on the panel:
 * `u = u0 + ux x + uy y` is the long-axis place over halfLength/distance, `s` likewise along the
 * short axis, `z` the axial distance; a ray passes the footprint at (u/z, s/z).
 */
export interface GunView {
  readonly axes: GunAxes;
  readonly footY_m: number;
  readonly square: boolean;
  readonly height_m: number;
  /** Nozzle to panel along the spray's axis. */
  readonly slant_m: number;
  readonly u0: number;
  readonly ux: number;
  readonly uy: number;
  readonly s0: number;
  readonly sx: number;
  readonly sy: number;
  readonly z0: number;
  readonly zx: number;
  readonly zy: number;
  /** Multiplies flux · 1/z³: distance² · height. */
  readonly weight: number;
}

/** The panel as seen from a pose. */
export function gunView(pose: GunPose, tables: FanTables): GunView {
  const axes = gunAxes(pose.fan_rad, pose.pitch_rad, pose.yaw_rad);
  const { long, short, spray } = axes;
  const perLength = tables.distance_m / tables.halfLength_m;
  const perDepth = tables.distance_m / tables.halfDepth_m;
  const { x_m, y_m, z_m } = pose;
  const cosTilt = -spray[2];
  return {
    axes,
    footY_m: y_m,
    square: Math.abs(pose.pitch_rad) < SQUARE_RAD && Math.abs(pose.yaw_rad) < SQUARE_RAD,
    height_m: z_m,
    slant_m: cosTilt > z_m / LONGEST_SLANT_M ? z_m / cosTilt : LONGEST_SLANT_M,
    u0: -perLength * (long[0] * x_m + long[1] * y_m + long[2] * z_m),
    ux: perLength * long[0],
    uy: perLength * long[1],
    s0: -perDepth * (short[0] * x_m + short[1] * y_m + short[2] * z_m),
    sx: perDepth * short[0],
    sy: perDepth * short[1],
    z0: -(spray[0] * x_m + spray[1] * y_m + spray[2] * z_m),
    zx: spray[0],
    zy: spray[1],
    weight: tables.distance_m * tables.distance_m * z_m,
  };
}

/**
 * Rows `[low, high)` that the rectangle of half extents (in halfLength and halfDepth) can reach;
 * all rows where a corner ray never meets the panel.
 */
export function rowsReached(view: GunView, grid: Grid, tables: FanTables, halfU: number, halfS: number): readonly [number, number] {
  const { long, short, spray } = view.axes;
  const reachU = (halfU * tables.halfLength_m) / tables.distance_m;
  const reachS = (halfS * tables.halfDepth_m) / tables.distance_m;
  let low_m = Infinity;
  let high_m = -Infinity;
  for (let corner = 0; corner < 4; corner++) {
    const u = corner & 1 ? reachU : -reachU;
    const s = corner & 2 ? reachS : -reachS;
    const down = -(spray[2] + u * long[2] + s * short[2]);
    if (!(down > 1e-6)) return [0, grid.rows];
    const y_m = view.footY_m + (view.height_m / down) * (spray[1] + u * long[1] + s * short[1]);
    low_m = Math.min(low_m, y_m);
    high_m = Math.max(high_m, y_m);
  }
  const low = Math.max(0, Math.ceil(low_m / grid.cellSize_m - 0.5));
  const high = Math.min(grid.rows, Math.floor(high_m / grid.cellSize_m - 0.5) + 1);
  return [low, high];
}
