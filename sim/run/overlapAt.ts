import { smoothTrack } from '../stroke/track.ts';
import type { Stroke, StrokeMeasures } from '../stroke/stroke.ts';
import type { CoatStrokes } from './result.ts';

/** A place of a stroke's course over the panel. */
interface OnCourse {
  readonly x_m: number;
  readonly y_m: number;
  readonly slant_m: number;
}

/**
 * Overlap of a stroke with a neighbour abreast of one place: 1 - gap / width, both taken where the
 * two strokes pass nearest to the place, the gap square to the neighbour's direction and the width
 * at the mean of both distances there. Negative where a bare lane is left. Courses are smoothed over
 * 0.1 s, so the gap is as good as the sensor (1 mm of noise leaves about 0.3 mm).
 * @param fanWidthPerDistance full fan width per m of gun distance.
 */
export function overlapAt(strokes: CoatStrokes, measures: StrokeMeasures, neighbour: number, at_m: readonly [number, number], fanWidthPerDistance: number): number {
  const here = nearestOnCourse(strokes, measures.stroke, at_m);
  const other = nearestOnCourse(strokes, neighbour, at_m);
  const { direction_rad } = strokes.measures[neighbour] as StrokeMeasures;
  const gap_m = Math.abs((here.y_m - other.y_m) * Math.cos(direction_rad) - (here.x_m - other.x_m) * Math.sin(direction_rad));
  const width_m = (fanWidthPerDistance * (here.slant_m + other.slant_m)) / 2;
  return 1 - gap_m / width_m;
}

function nearestOnCourse({ path, strokes }: CoatStrokes, index: number, [x, y]: readonly [number, number]): OnCourse {
  const { firstRow, lastRow } = strokes[index] as Stroke;
  const track = smoothTrack(path, path.t_s[firstRow] as number, path.t_s[lastRow] as number);
  let nearest = 0;
  let nearest_m = Infinity;
  for (let i = 0; i < track.count; i++) {
    const away_m = Math.hypot((track.x_m[i] as number) - x, (track.y_m[i] as number) - y);
    if (away_m >= nearest_m) continue;
    nearest = i;
    nearest_m = away_m;
  }
  return { x_m: track.x_m[nearest] as number, y_m: track.y_m[nearest] as number, slant_m: track.slant_m[nearest] as number };
}
