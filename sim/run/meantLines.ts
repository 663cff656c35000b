import { rowAt } from '../stroke/path.ts';
import type { Stroke, StrokeMeasures } from '../stroke/stroke.ts';
import type { Travel } from './lay.ts';
import type { CoatStrokes } from './result.ts';

/**
 * How far the middle of a stroke as laid lies from its meant line, m, and which way that is. The
 * offset points from the stroke to the line; zero where no line is known.
 */
export function offsetToLine_m({ meant }: Stroke, measures: StrokeMeasures): readonly [number, number] {
  const { start_m: a, end_m: b } = meant;
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const square = dx * dx + dy * dy;
  if (!(square > 0)) return [0, 0];
  const x = (measures.start_m[0] + measures.end_m[0]) / 2 - a[0];
  const y = (measures.start_m[1] + measures.end_m[1]) / 2 - a[1];
  const across = (dx * y - dy * x) / square;
  return [across * dy, -across * dx];
}

/** The travel with whole strokes shifted sideways until their middles lie on their meant lines. */
export function anchoredStrokes(travel: CoatStrokes, chosen: readonly number[], lag_s: number): Travel {
  const { path } = travel;
  const x_m = path.x_m.slice();
  const y_m = path.y_m.slice();
  for (const index of chosen) {
    const stroke = travel.strokes[index] as Stroke;
    const [dx, dy] = offsetToLine_m(stroke, travel.measures[index] as StrokeMeasures);
    const next = travel.strokes[index + 1]?.firstRow ?? path.count;
    const closes = rowAt(path, (path.t_s[stroke.lastRow] as number) + lag_s) + 1;
    const last = Math.min(next - 1, path.count - 1, Math.max(stroke.lastRow, closes));
    for (let row = stroke.firstRow; row <= last; row++) {
      x_m[row] = (x_m[row] as number) + dx;
      y_m[row] = (y_m[row] as number) + dy;
    }
  }
  return { path: { ...path, x_m, y_m }, strokes: travel.strokes };
}
