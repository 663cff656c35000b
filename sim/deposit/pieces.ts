import type { Spray } from '../gun/spray.ts';
import { amountsAt } from './amounts.ts';
import { fanTables, type FanTables } from './fanTables.ts';
import { isStraight, type FluidSlice, type GunPose } from './fluidSlices.ts';
import { gunView } from './gunView.ts';
import { stampAt, type Stamp } from './stamp.ts';
import type { Sweep } from './sweep.ts';
import { sweepTable, type SweepTable } from './sweepTable.ts';

/** How a path is laid: closed form where one holds, stamps everywhere, or closed form wherever it can be. */
export type LayMethod = 'auto' | 'stamp' | 'closed';

/**
 * Travel between stamps, as a share of the fan's half depth. At a sixth the film's lowest and
 * highest places are right to about 0.1 %, at a third only to several tenths; the error falls as
 * (step/halfDepth)^beta2.
 */
export const STAMP_STEP_SHARE = 1 / 6;
/** A square fan's closed form costs no table, so it pays from a travel of this many half depths; a turned one's does. */
const SQUARE_SWEEP_DEPTHS = 1;
const TURNED_SWEEP_DEPTHS = 6;
/** Tables kept for turned fans; each is about 1 MB. */
const MOST_TABLES = 32;

/** A grazing gun's aim runs off to infinity; beyond this it lays nothing worth a finer step. */
const MOST_AIM_M = 2;

/** What turns slices of a path into sweeps and stamps, with the tables of one spray. */
export interface Layer {
  readonly spray: Spray;
  readonly tables: FanTables;
  readonly method: LayMethod;
  /** Multiplies the stamp step; 1 but for convergence tests. */
  readonly stepScale: number;
  readonly sweepTables: Map<number, SweepTable>;
}

/** The layer of one run. @param stepScale multiplies the stamps' step; 1 but for convergence tests. */
export function makeLayer(spray: Spray, method: LayMethod, stepScale = 1): Layer {
  return { spray, tables: fanTables(spray.footprint), method, stepScale, sweepTables: new Map() };
}

/** Liquid that leaves the gun in a slice, m³. */
export function liquidOf(layer: Layer, slice: FluidSlice): number {
  return layer.spray.fluidRate_m3_s * slice.share * slice.duration_s;
}

/** The slice as one sweep, or null where no closed form holds or it does not pay. */
export function sweepOf(layer: Layer, slice: FluidSlice): Sweep | null {
  if (layer.method === 'stamp' || !isStraight(slice)) return null;
  const { start, end } = slice;
  const length_m = Math.hypot(end.x_m - start.x_m, end.y_m - start.y_m);
  const scale = start.z_m / layer.tables.distance_m;
  if (!(length_m > 0)) return null;
  const travelX = (end.x_m - start.x_m) / length_m;
  const travelY = (end.y_m - start.y_m) / length_m;
  const turn_rad = start.fan_rad - Math.atan2(travelY, travelX) - Math.PI / 2;
  const square = Math.abs(Math.sin(turn_rad)) < 1e-9;
  const least_m = (square ? SQUARE_SWEEP_DEPTHS : TURNED_SWEEP_DEPTHS) * scale * layer.tables.halfDepth_m;
  if (layer.method === 'auto' && length_m < least_m) return null;
  return {
    table: cachedTable(layer, turn_rad),
    scale,
    startX_m: start.x_m,
    startY_m: start.y_m,
    travelX,
    travelY,
    length_m,
    liquid_m3: liquidOf(layer, slice),
    amounts: amountsAt(layer.spray, start.z_m),
    stroke: slice.stroke,
  };
}

function cachedTable(layer: Layer, turn_rad: number): SweepTable {
  const turn = Math.atan2(Math.sin(turn_rad), Math.cos(turn_rad));
  const key = Math.round(turn * 1e9);
  const kept = layer.sweepTables.get(key);
  if (kept !== undefined) return kept;
  if (layer.sweepTables.size >= MOST_TABLES) layer.sweepTables.clear();
  const table = sweepTable(layer.tables, turn);
  layer.sweepTables.set(key, table);
  return table;
}

/** The slice as stamps, each at the middle of its share of the time. */
export function* stampsOf(layer: Layer, slice: FluidSlice): Generator<Stamp> {
  const count = stampCount(layer, slice);
  const liquid_m3 = liquidOf(layer, slice) / count;
  for (let i = 0; i < count; i++) {
    yield stampAt(poseBetween(slice, (i + 0.5) / count), layer.tables, liquid_m3, layer.spray, slice.stroke);
  }
}

/** Stamps that keep every part of the fan from moving more than the step between two of them. */
export function stampCount(layer: Layer, slice: FluidSlice): number {
  const { tables } = layer;
  const { start, end } = slice;
  const first = aimOf(start, layer);
  const last = aimOf(end, layer);
  const nearest_m = Math.min(first.slant_m, last.slant_m);
  const halfLength_m = (tables.nominalHalfWidth_m * Math.max(first.slant_m, last.slant_m)) / tables.distance_m;
  const swing_m = halfLength_m * Math.abs(end.fan_rad - start.fan_rad);
  const growth_m = (tables.nominalHalfWidth_m * Math.abs(last.slant_m - first.slant_m)) / tables.distance_m;
  const travel_m = Math.hypot(last.x_m - first.x_m, last.y_m - first.y_m) + swing_m + growth_m;
  const step_m = (STAMP_STEP_SHARE * layer.stepScale * tables.nominalHalfDepth_m * nearest_m) / tables.distance_m;
  return Math.max(1, Math.ceil(travel_m / step_m - 1e-9));
}

function aimOf(pose: GunPose, layer: Layer): { x_m: number; y_m: number; slant_m: number } {
  const { slant_m, height_m } = gunView(pose, layer.tables);
  const lean = Math.tan(pose.yaw_rad) * height_m;
  const rise = (Math.tan(pose.pitch_rad) / Math.cos(pose.yaw_rad)) * height_m;
  const cos = Math.cos(pose.fan_rad);
  const sin = Math.sin(pose.fan_rad);
  return { x_m: pose.x_m + heldAim_m(lean * cos - rise * sin), y_m: pose.y_m + heldAim_m(lean * sin + rise * cos), slant_m };
}

function heldAim_m(aim_m: number): number {
  return Math.max(-MOST_AIM_M, Math.min(MOST_AIM_M, aim_m));
}

/** The pose at a share of a slice's time. */
export function poseBetween(slice: Pick<FluidSlice, 'start' | 'end'>, share: number): GunPose {
  const { start, end } = slice;
  return {
    x_m: between(start.x_m, end.x_m, share),
    y_m: between(start.y_m, end.y_m, share),
    z_m: between(start.z_m, end.z_m, share),
    fan_rad: between(start.fan_rad, end.fan_rad, share),
    pitch_rad: between(start.pitch_rad, end.pitch_rad, share),
    yaw_rad: between(start.yaw_rad, end.yaw_rad, share),
  };
}

function between(from: number, to: number, share: number): number {
  return from + share * (to - from);
}
