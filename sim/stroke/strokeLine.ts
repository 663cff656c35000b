import type { Track } from './track.ts';

/** The straight line that a stroke's aim point follows best. */
export interface StrokeLine {
  /** A place on it, and its direction as a unit vector, in the order of travel. */
  readonly x_m: number;
  readonly y_m: number;
  readonly dx: number;
  readonly dy: number;
  /** Least and greatest place along it that the stroke reaches, from (x, y). */
  readonly from_m: number;
  readonly to_m: number;
}

/** Share of the samples left out at each end, where a hand turns. */
const END_SHARE = 0.1;

/**
 * Fits a line to samples `first` to `last` of a track by least squares of the square distance,
 * leaving out a tenth of the samples at each end. A track that stands still gets the direction +x.
 */
export function fitLine(track: Track, first = 0, last = track.count - 1): StrokeLine {
  const margin = Math.floor((last - first + 1) * END_SHARE);
  const from = first + margin;
  const to = last - margin;
  let x_m = 0;
  let y_m = 0;
  for (let i = from; i <= to; i++) {
    x_m += track.x_m[i] as number;
    y_m += track.y_m[i] as number;
  }
  x_m /= to - from + 1;
  y_m /= to - from + 1;
  const [dx, dy] = directionOf(track, from, to, x_m, y_m);
  let from_m = Infinity;
  let to_m = -Infinity;
  for (let i = first; i <= last; i++) {
    const along = ((track.x_m[i] as number) - x_m) * dx + ((track.y_m[i] as number) - y_m) * dy;
    from_m = Math.min(from_m, along);
    to_m = Math.max(to_m, along);
  }
  return { x_m, y_m, dx, dy, from_m, to_m };
}

function directionOf(track: Track, from: number, to: number, x_m: number, y_m: number): [number, number] {
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (let i = from; i <= to; i++) {
    const x = (track.x_m[i] as number) - x_m;
    const y = (track.y_m[i] as number) - y_m;
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const dx = Math.cos(angle);
  const dy = Math.sin(angle);
  const onward = ((track.x_m[to] as number) - (track.x_m[from] as number)) * dx + ((track.y_m[to] as number) - (track.y_m[from] as number)) * dy;
  return onward < 0 ? [-dx, -dy] : [dx, dy];
}

/** Angle between two lines whatever their sense, 0 to π/2. */
export function axialAngle_rad(a: StrokeLine, b: StrokeLine): number {
  return Math.acos(Math.min(1, Math.abs(a.dx * b.dx + a.dy * b.dy)));
}

/** How far `line`'s middle stands to the left of `other`, and the length over which both run side by side, m. */
export function besideLine(line: StrokeLine, other: StrokeLine): { readonly across_m: number; readonly shared_m: number } {
  const middle = (line.from_m + line.to_m) / 2;
  const half = ((line.to_m - line.from_m) / 2) * Math.abs(line.dx * other.dx + line.dy * other.dy);
  const x = line.x_m + middle * line.dx - other.x_m;
  const y = line.y_m + middle * line.dy - other.y_m;
  const along = x * other.dx + y * other.dy;
  return {
    across_m: y * other.dx - x * other.dy,
    shared_m: Math.min(along + half, other.to_m) - Math.max(along - half, other.from_m),
  };
}
