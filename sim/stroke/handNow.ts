import { overlapAtPlace } from './overlap.ts';
import type { Lateral } from './lateral.ts';
import { aimOf, poseAt, type Path } from './path.ts';

/** What a hand does at one moment, for gauges; NaN where it cannot be told. */
export interface HandNow {
  readonly x_m: number;
  readonly y_m: number;
  readonly speed_m_s: number;
  /** Along the spray axis. */
  readonly distance_m: number;
  readonly tilt_rad: number;
  /** With the earlier stroke that lies nearest beside the aim point. */
  readonly overlapFraction: number;
  readonly trigger: number;
}

/** Speed is read over this time: long enough for a sensor's steps, short enough to feel at once, s. */
const SPEED_WINDOW_S = 0.12;
/** A stroke farther off than so many fan widths is not lapped but another part of the work. */
const FARTHEST_WIDTHS = 1.5;
/** A stroke nearer than this share of a width is the one being laid over again. */
const SAME_SHARE = 0.1;

/**
 * Reads the last moment of a path.
 * @param path at least one row; `SPEED_WINDOW_S` of it is enough. @param laid strokes so far, of which one may be lapped.
 * @param fanWidthPerDistance full fan width per m of gun distance.
 */
export function handNow(path: Path, laid: readonly Lateral[], fanWidthPerDistance: number): HandNow {
  const t_s = path.t_s[path.count - 1] as number;
  const pose = poseAt(path, t_s);
  const aim = aimOf(pose);
  const before = aimOf(poseAt(path, t_s - SPEED_WINDOW_S));
  const span_s = Math.min(SPEED_WINDOW_S, t_s - (path.t_s[0] as number));
  return {
    x_m: aim.x_m,
    y_m: aim.y_m,
    speed_m_s: span_s > 0 ? Math.hypot(aim.x_m - before.x_m, aim.y_m - before.y_m) / span_s : 0,
    distance_m: aim.slant_m,
    tilt_rad: aim.tilt_rad,
    overlapFraction: overlapNow(aim, laid, fanWidthPerDistance),
    trigger: pose.trigger,
  };
}

/** The largest overlap with a stroke beside, not the same one again. */
function overlapNow({ x_m, y_m, slant_m }: { readonly x_m: number; readonly y_m: number; readonly slant_m: number }, laid: readonly Lateral[], fanWidthPerDistance: number): number {
  let most = NaN;
  for (const lateral of laid) {
    const lap = overlapAtPlace(lateral, x_m, y_m, slant_m, fanWidthPerDistance);
    if (lap === null || lap.fraction < 1 - FARTHEST_WIDTHS || lap.fraction > 1 - SAME_SHARE) continue;
    if (!(lap.fraction <= most)) most = lap.fraction;
  }
  return most;
}
