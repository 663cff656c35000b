import { CrosscoatError } from '../base/errors.ts';

/**
 * A timed series of gun poses, one array a column, all of length `count`.
 *
 * Columns are linear between rows, but for the trigger, which holds from its row to the next
 * (it is a switch). `x_m, y_m` are the foot of the nozzle on the panel, not the aim point;
 * `z_m` its square distance from the panel. Untilted, the fan's long axis is
 * L = (cos fan, sin fan, 0), the short axis S = (-sin fan, cos fan, 0) and the spray runs along
 * (0, 0, -1). Pitch turns about L, positive swings the aim toward +S; yaw, after pitch, turns
 * about S, positive swings the aim toward +L.
 */
export interface Path {
  readonly count: number;
  /** Strictly rising. */
  readonly t_s: Float64Array;
  readonly x_m: Float64Array;
  readonly y_m: Float64Array;
  readonly z_m: Float64Array;
  readonly fan_rad: Float64Array;
  readonly pitch_rad: Float64Array;
  readonly yaw_rad: Float64Array;
  /** 0 off, 0.5 air only, 1 full spray; between 0.5 and 1 the fluid opens in proportion. */
  readonly trigger: Float32Array;
}

/** One row of a path. */
export interface Pose {
  readonly t_s: number;
  readonly x_m: number;
  readonly y_m: number;
  readonly z_m: number;
  readonly fan_rad: number;
  readonly pitch_rad: number;
  readonly yaw_rad: number;
  readonly trigger: number;
}

/** Where the spray's axis meets the panel, and how. */
export interface Aim {
  readonly x_m: number;
  readonly y_m: number;
  /** Along the spray's axis, nozzle to panel. */
  readonly slant_m: number;
  /** Between the spray's axis and the panel's normal. */
  readonly tilt_rad: number;
}

/** A path of `rows`. @throws `time` where the times do not rise. */
export function pathFrom(rows: readonly Pose[]): Path {
  const column = (key: keyof Pose) => Float64Array.from(rows, (row) => row[key]);
  const path: Path = {
    count: rows.length,
    t_s: column('t_s'),
    x_m: column('x_m'),
    y_m: column('y_m'),
    z_m: column('z_m'),
    fan_rad: column('fan_rad'),
    pitch_rad: column('pitch_rad'),
    yaw_rad: column('yaw_rad'),
    trigger: Float32Array.from(rows, (row) => row.trigger),
  };
  checkTimesRise(path.t_s);
  return path;
}

function checkTimesRise(t_s: Float64Array): void {
  for (let i = 1; i < t_s.length; i++) {
    const before = t_s[i - 1] as number;
    const now = t_s[i] as number;
    if (now > before) continue;
    throw new CrosscoatError('time', `pathFrom: t_s[${i}] = ${now} s is not above t_s[${i - 1}] = ${before} s (times must rise); sort the rows`);
  }
}

/** Row `row` of `path`, 0 to count - 1. */
export function poseOfRow(path: Path, row: number): Pose {
  return {
    t_s: path.t_s[row] as number,
    x_m: path.x_m[row] as number,
    y_m: path.y_m[row] as number,
    z_m: path.z_m[row] as number,
    fan_rad: path.fan_rad[row] as number,
    pitch_rad: path.pitch_rad[row] as number,
    yaw_rad: path.yaw_rad[row] as number,
    trigger: path.trigger[row] as number,
  };
}

/** The last row at or before `t_s`; -1 before the first. By bisection. */
export function rowAt(path: Path, t_s: number): number {
  let low = 0;
  let high = path.count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((path.t_s[middle] as number) <= t_s) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/**
 * The pose at a time: linear between rows, the trigger held from its row; the first and last rows
 * are held outside the path.
 * @throws CrosscoatError `time` for an empty path.
 */
export function poseAt(path: Path, t_s: number): Pose {
  if (path.count === 0) throw new CrosscoatError('time', 'poseAt: the path has 0 rows (no pose to give); give a path with at least one row');
  const row = Math.max(0, rowAt(path, t_s));
  const next = Math.min(row + 1, path.count - 1);
  const start_s = path.t_s[row] as number;
  const span_s = (path.t_s[next] as number) - start_s;
  const share = span_s > 0 ? Math.max(0, (t_s - start_s) / span_s) : 0;
  const between = (column: Float64Array) => (column[row] as number) + share * ((column[next] as number) - (column[row] as number));
  return {
    t_s,
    x_m: between(path.x_m),
    y_m: between(path.y_m),
    z_m: between(path.z_m),
    fan_rad: between(path.fan_rad),
    pitch_rad: between(path.pitch_rad),
    yaw_rad: between(path.yaw_rad),
    trigger: path.trigger[row] as number,
  };
}

/**
 * The aim point and slant distance of a pose on the flat panel: foot + z (tan y L + tan p / cos y S),
 * slant z / (cos p cos y). Pitch and yaw within ±π/2.
 */
export function aimOf(pose: Omit<Pose, 't_s' | 'trigger'>): Aim {
  const cosYaw = Math.cos(pose.yaw_rad);
  const square = Math.cos(pose.pitch_rad) * cosYaw;
  const alongLong = pose.z_m * Math.tan(pose.yaw_rad);
  const alongShort = (pose.z_m * Math.tan(pose.pitch_rad)) / cosYaw;
  const cosFan = Math.cos(pose.fan_rad);
  const sinFan = Math.sin(pose.fan_rad);
  return {
    x_m: pose.x_m + alongLong * cosFan - alongShort * sinFan,
    y_m: pose.y_m + alongLong * sinFan + alongShort * cosFan,
    slant_m: pose.z_m / square,
    tilt_rad: Math.acos(Math.min(1, square)),
  };
}

/** Rows `firstRow` to `lastRow` (inclusive) of a path, as views of its arrays: nothing is copied. */
export function slicePath(path: Path, firstRow: number, lastRow: number): Path {
  const end = lastRow + 1;
  return {
    count: Math.max(0, end - firstRow),
    t_s: path.t_s.subarray(firstRow, end),
    x_m: path.x_m.subarray(firstRow, end),
    y_m: path.y_m.subarray(firstRow, end),
    z_m: path.z_m.subarray(firstRow, end),
    fan_rad: path.fan_rad.subarray(firstRow, end),
    pitch_rad: path.pitch_rad.subarray(firstRow, end),
    yaw_rad: path.yaw_rad.subarray(firstRow, end),
    trigger: path.trigger.subarray(firstRow, end),
  };
}
