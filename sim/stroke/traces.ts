import { courseOf, type Course } from './course.ts';
import type { MeasuredSession } from './measure.ts';
import { neighbourOf, overlapAtPlace } from './overlap.ts';

/** What the hand did along one stroke, sample by sample, 10 ms apart or a little less. Arrays of one length. */
export interface StrokeTrace {
  readonly stroke: number;
  readonly pass: number;
  /** Time of the path. */
  readonly t_s: Float64Array;
  /** Aim point. */
  readonly x_m: Float64Array;
  readonly y_m: Float64Array;
  readonly speed_m_s: Float64Array;
  /** Along the spray axis. */
  readonly distance_m: Float64Array;
  readonly tilt_rad: Float64Array;
  /** With the stroke beside it; NaN where there is none. */
  readonly overlapFraction: Float64Array;
  /** Time that a sample stands for, s. */
  readonly step_s: number;
}

/** The traces of a session's strokes, smoothed as the measures are (see `smoothTrack`). */
export function strokeTraces({ path, strokes, fanWidthPerDistance, triggerLag_s }: Omit<MeasuredSession, 'panel'>): StrokeTrace[] {
  const courses = strokes.map((stroke) => courseOf(path, stroke, triggerLag_s));
  const laterals = courses.map(({ lateral }) => lateral);
  const passes = strokes.map(({ pass }) => pass);
  return strokes.map((stroke, i) => {
    const { track } = courses[i] as Course;
    const { count, start_s, step_s, x_m, y_m, slant_m, tilt_rad } = track;
    const mean_m = slant_m.reduce((sum, slant) => sum + slant, 0) / count;
    const other = laterals[neighbourOf(i, laterals, passes, fanWidthPerDistance * mean_m)];
    const overlap = (k: number): number => (other === undefined ? NaN : overlapAtPlace(other, x_m[k] as number, y_m[k] as number, slant_m[k] as number, fanWidthPerDistance)?.fraction ?? NaN);
    return {
      stroke: stroke.index,
      pass: stroke.pass,
      t_s: x_m.map((_, k) => start_s + k * step_s),
      x_m,
      y_m,
      speed_m_s: track.vx_m_s.map((vx, k) => Math.hypot(vx, track.vy_m_s[k] as number)),
      distance_m: slant_m,
      tilt_rad,
      overlapFraction: x_m.map((_, k) => overlap(k)),
      step_s,
    };
  });
}
