import { raySource } from '../base/raySource.ts';
import { fluidShare } from '../base/trigger.ts';
import type { Spray } from '../gun/spray.ts';
import type { Path } from '../stroke/path.ts';
import type { Stroke } from '../stroke/stroke.ts';

/** A gun pose; angles as in a path. */
export interface GunPose {
  x_m: number;
  y_m: number;
  z_m: number;
  fan_rad: number;
  pitch_rad: number;
  yaw_rad: number;
}

/** A piece of travel with fluid on in which every column of the path is linear in time. */
export interface FluidSlice {
  readonly start: GunPose;
  readonly end: GunPose;
  /** Time of the path at which it begins. */
  readonly start_s: number;
  readonly duration_s: number;
  /** Share of the full fluid rate. */
  readonly share: number;
  /** Index of the stroke whose trigger let this fluid go, -1 outside every stroke. */
  readonly stroke: number;
}

/** What of a spray the slices depend on. */
type LaggedFan = Pick<Spray, 'triggerLag_s' | 'footprint'>;

/** Two slices join where neither velocity nor pose changes by more than this, relative. */
const JOIN_TOLERANCE = 1e-7;

/**
 * Every piece of the path with fluid on, in time, straight even runs joined across rows. Its poses stand
 * where the fan's rays start (`raySource`): at the nozzle, unless a card has said otherwise.
 *
 * The fluid follows the trigger by the spray's lag both ways; a row's trigger holds to the next row; what
 * would still flow after the last row is left out, as the path does not say where the gun goes.
 * A lagging piece counts for the stroke that pulled the trigger.
 * @param until_s leave out everything after this time of the path.
 */
export function* fluidSlices(path: Path, strokes: readonly Stroke[], spray: LaggedFan, until_s: number): Generator<FluidSlice> {
  let pending: FluidSlice | undefined;
  for (const slice of plainSlices(path, strokes, spray, until_s)) {
    if (pending === undefined) pending = slice;
    else if (joins(pending, slice)) pending = joined(pending, slice);
    else {
      yield pending;
      pending = slice;
    }
  }
  if (pending !== undefined) yield pending;
}

function joined(first: FluidSlice, second: FluidSlice): FluidSlice {
  return { ...first, end: second.end, duration_s: first.duration_s + second.duration_s };
}

function* plainSlices(path: Path, strokes: readonly Stroke[], { triggerLag_s: lag_s, footprint }: LaggedFan, until_s: number): Generator<FluidSlice> {
  if (path.count < 2) return;
  const source = (row: number, time_s: number): GunPose => raySource(poseIn(path, row, time_s), footprint.origin_m);
  const owner = strokeOfRow(path.count, strokes);
  const end_s = Math.min(until_s, path.t_s[path.count - 1] as number);
  let row = 0;
  let triggerRow = -1;
  let now_s = path.t_s[0] as number;
  while (now_s < end_s) {
    while ((path.t_s[row + 1] as number) <= now_s) row++;
    while (triggerRow + 1 < path.count && (path.t_s[triggerRow + 1] as number) + lag_s <= now_s) triggerRow++;
    const share = shareAt(path, triggerRow);
    const stroke = triggerRow < 0 ? -1 : (owner[triggerRow] as number);
    let change = triggerRow + 1;
    const nextRow_s = path.t_s[row + 1] as number;
    // Only a changed share or owner cuts a slice: a recording repeats the same trigger row by row.
    while (change < path.count && (path.t_s[change] as number) + lag_s < nextRow_s && shareAt(path, change) === share && owner[change] === stroke) change++;
    const change_s = change < path.count ? (path.t_s[change] as number) + lag_s : Infinity;
    const next_s = Math.min(nextRow_s, change_s, end_s);
    if (share > 0) {
      yield { start: source(row, now_s), end: source(row, next_s), start_s: now_s, duration_s: next_s - now_s, share, stroke };
    }
    now_s = next_s;
  }
}

/** Fluid share of a row's trigger; none before the first. */
function shareAt(path: Path, row: number): number {
  return row < 0 ? 0 : fluidShare(path.trigger[row] as number);
}

/** Index of the stroke that holds the trigger from each row, -1 for none. */
function strokeOfRow(count: number, strokes: readonly Stroke[]): Int32Array {
  const owner = new Int32Array(count).fill(-1);
  for (const stroke of strokes) owner.fill(stroke.index, stroke.firstRow, stroke.lastRow);
  return owner;
}

/** The pose at a time within a row and the next. */
export function poseIn(path: Path, row: number, time_s: number): GunPose {
  const start_s = path.t_s[row] as number;
  const share = (time_s - start_s) / ((path.t_s[row + 1] as number) - start_s);
  return {
    x_m: valueIn(path.x_m, row, share),
    y_m: valueIn(path.y_m, row, share),
    z_m: valueIn(path.z_m, row, share),
    fan_rad: valueIn(path.fan_rad, row, share),
    pitch_rad: valueIn(path.pitch_rad, row, share),
    yaw_rad: valueIn(path.yaw_rad, row, share),
  };
}

function valueIn(column: Float64Array, row: number, share: number): number {
  const from = column[row] as number;
  return from + share * ((column[row + 1] as number) - from);
}

/** Whether two slices are one straight travel at one speed, distance and attitude (or one dwell). */
function joins(first: FluidSlice, second: FluidSlice): boolean {
  if (first.share !== second.share || first.stroke !== second.stroke) return false;
  const { start, end } = first;
  const next = second.end;
  if (!samePlace(end, second.start) || !sameAttitude(start, end) || !sameAttitude(start, next)) return false;
  const vx = (end.x_m - start.x_m) / first.duration_s;
  const vy = (end.y_m - start.y_m) / first.duration_s;
  const wx = (next.x_m - second.start.x_m) / second.duration_s;
  const wy = (next.y_m - second.start.y_m) / second.duration_s;
  return Math.hypot(wx - vx, wy - vy) <= JOIN_TOLERANCE * Math.hypot(vx, vy);
}

function samePlace(a: GunPose, b: GunPose): boolean {
  return Math.abs(a.x_m - b.x_m) <= 1e-9 && Math.abs(a.y_m - b.y_m) <= 1e-9;
}

/** Same distance and angles: within a nanometre and a nanoradian. */
function sameAttitude(a: GunPose, b: GunPose): boolean {
  return (
    Math.abs(a.z_m - b.z_m) <= 1e-9 &&
    Math.abs(a.fan_rad - b.fan_rad) <= 1e-9 &&
    Math.abs(a.pitch_rad - b.pitch_rad) <= 1e-9 &&
    Math.abs(a.yaw_rad - b.yaw_rad) <= 1e-9
  );
}

/** Whether a slice is one straight travel (or a dwell) of a square gun at one distance and fan angle. */
export function isStraight(slice: FluidSlice): boolean {
  const { start, end } = slice;
  return sameAttitude(start, end) && Math.abs(start.pitch_rad) <= 1e-9 && Math.abs(start.yaw_rad) <= 1e-9;
}
