import { type Lateral, lateralOf } from './lateral.ts';
import type { Path } from './path.ts';
import type { Stroke } from './stroke.ts';
import { fitLine } from './strokeLine.ts';
import { smoothTrack, type Track } from './track.ts';

/** A stroke's fluid-on stretch, smoothed. */
export interface Course {
  readonly track: Track;
  readonly lateral: Lateral;
}

/** The stretch of a stroke over which fluid flows: its trigger rows shifted by the lag. */
export function courseOf(path: Path, stroke: Pick<Stroke, 'firstRow' | 'lastRow'>, lag_s: number): Course {
  const pull_s = path.t_s[stroke.firstRow] as number;
  const close_s = Math.min(path.t_s[path.count - 1] as number, (path.t_s[stroke.lastRow] as number) + lag_s);
  // A path that ends before the fluid comes leaves only the trigger's own time to measure.
  const track = smoothTrack(path, pull_s + lag_s < close_s ? pull_s + lag_s : pull_s, close_s);
  return { track, lateral: lateralOf(track, fitLine(track)) };
}
