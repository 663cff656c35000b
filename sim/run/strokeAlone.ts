import { type Path, rowAt, slicePath } from '../stroke/path.ts';
import type { Stroke } from '../stroke/stroke.ts';
import type { Travel } from './lay.ts';

/** One stroke as a travel of its own: its rows, and those after it in which its fluid still runs. */
export function strokeAlone(path: Path, stroke: Stroke, lag_s: number): Travel {
  const closes_s = (path.t_s[stroke.lastRow] as number) + lag_s;
  const lastRow = Math.min(path.count - 1, Math.max(stroke.lastRow, rowAt(path, closes_s) + 1));
  return {
    path: slicePath(path, stroke.firstRow, lastRow),
    strokes: [{ ...stroke, firstRow: 0, lastRow: stroke.lastRow - stroke.firstRow }],
  };
}
