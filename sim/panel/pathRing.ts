import svgpath from 'svgpath';
import { CrosscoatError } from '../base/errors.ts';

/** A flattened curve stays this near the true one, mm: far below a grid cell. Assumed. */
export const CURVE_TOLERANCE_MM = 0.05;

/** No coordinate of a path may lie farther out, mm. */
const FARTHEST_MM = 1e5;

/**
 * Corners of SVG path data (SVG 1.1, section 8.3), mm, `x, y, x, y, …` as written (y up).
 *
 * One subpath, closed by Z. Curves are cut into chords within `CURVE_TOLERANCE_MM`; elliptical arcs
 * first become cubics of at most a quarter turn, which adds at most 0.03 % of the radius.
 * @throws CrosscoatError `geometry` for data that is no path, is open, or has several subpaths.
 */
export function pathRing(data: string, pointer: string): number[] {
  const path = svgpath(data);
  // The parser keeps its fault in a field that its types leave out.
  const fault = (path as unknown as { readonly err?: string }).err;
  if (fault !== undefined && fault !== '') {
    throw badPath(pointer, `cannot be read (${fault.replace(/^SvgPath:\s*/, '')})`, 'give SVG path data such as "M 0 0 L 300 0 L 300 200 Z"');
  }
  const ring: number[] = [];
  let starts = 0;
  let closed = false;
  let penUp = false;
  path
    .abs()
    .unshort()
    .unarc()
    .iterate((segment, _index, x, y) => {
      checkSize(segment, pointer);
      // Drawing on after Z begins a new subpath, with or without an M.
      if (segment[0] === 'M' || penUp) starts++;
      penUp = false;
      if (segment[0] === 'M' || segment[0] === 'L') ring.push(segment[1], segment[2]);
      else if (segment[0] === 'H') ring.push(segment[1], y);
      else if (segment[0] === 'V') ring.push(x, segment[1]);
      else if (segment[0] === 'C') pushCubic(ring, [x, y, ...segment.slice(1).map(Number)]);
      else if (segment[0] === 'Q') pushCubic(ring, cubicOfQuadratic([x, y, ...segment.slice(1).map(Number)]));
      else if (segment[0] === 'Z' || segment[0] === 'z') {
        closed = true;
        penUp = true;
      }
    });
  if (starts === 0) throw badPath(pointer, 'is empty', 'give SVG path data such as "M 0 0 L 300 0 L 300 200 Z"');
  if (starts > 1) throw badPath(pointer, `has ${starts} subpaths`, 'give one closed subpath; list each hole under "holes"');
  if (!closed) throw badPath(pointer, 'is an open outline (it does not end with Z)', 'end the path with Z');
  return ring;
}

function badPath(pointer: string, what: string, advice: string): CrosscoatError {
  return new CrosscoatError('geometry', `makePanel: ${pointer}: path_mm ${what}; ${advice}`, { pointer });
}

function checkSize(segment: readonly (string | number)[], pointer: string): void {
  for (const value of segment) {
    if (typeof value === 'number' && !(Math.abs(value) <= FARTHEST_MM)) {
      throw badPath(pointer, `holds ${value}, beyond ${FARTHEST_MM} mm`, 'give coordinates in mm');
    }
  }
}

/** A quadratic Bézier curve raised to the cubic that draws the same points. */
function cubicOfQuadratic(q: readonly number[]): number[] {
  const [x0, y0, cx, cy, x1, y1] = q as [number, number, number, number, number, number];
  return [x0, y0, x0 + (2 / 3) * (cx - x0), y0 + (2 / 3) * (cy - y0), x1 + (2 / 3) * (cx - x1), y1 + (2 / 3) * (cy - y1), x1, y1];
}

/**
 * Adds a cubic's chords, all but its start. A chord over a parameter step s misses a curve by at
 * most s²/8 of its second derivative, which for a cubic is at most 6 times the larger second
 * difference of its control points.
 */
function pushCubic(ring: number[], cubic: readonly number[]): void {
  const [x0, y0, x1, y1, x2, y2, x3, y3] = cubic as [number, number, number, number, number, number, number, number];
  const bend = Math.max(Math.hypot(x0 - 2 * x1 + x2, y0 - 2 * y1 + y2), Math.hypot(x1 - 2 * x2 + x3, y1 - 2 * y2 + y3));
  const chords = Math.max(1, Math.ceil(Math.sqrt((6 * bend) / (8 * CURVE_TOLERANCE_MM))));
  for (let i = 1; i < chords; i++) {
    const t = i / chords;
    const s = 1 - t;
    const a = s * s * s;
    const b = 3 * s * s * t;
    const c = 3 * s * t * t;
    const d = t * t * t;
    ring.push(a * x0 + b * x1 + c * x2 + d * x3, a * y0 + b * y1 + c * y2 + d * y3);
  }
  ring.push(x3, y3);
}
