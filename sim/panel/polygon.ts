import type { Polygon } from './panel.ts';

/** Left, bottom, right, top. */
export type Box = readonly [left: number, bottom: number, right: number, top: number];

/**
 * Signed area by the shoelace formula: positive counter-clockwise. Taken about the first corner,
 * so that a polygon far from the origin loses no digits.
 */
export function signedArea(ring: Polygon): number {
  const x0 = ring[0] as number;
  const y0 = ring[1] as number;
  let twice = 0;
  for (let i = 2; i + 3 < ring.length; i += 2) {
    const ax = (ring[i] as number) - x0;
    const ay = (ring[i + 1] as number) - y0;
    const bx = (ring[i + 2] as number) - x0;
    const by = (ring[i + 3] as number) - y0;
    twice += ax * by - bx * ay;
  }
  return twice / 2;
}

/** The smallest upright rectangle round a polygon. */
export function boundingBox(ring: Polygon): Box {
  let left = Infinity;
  let bottom = Infinity;
  let right = -Infinity;
  let top = -Infinity;
  for (let i = 0; i < ring.length; i += 2) {
    const x = ring[i] as number;
    const y = ring[i + 1] as number;
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < bottom) bottom = y;
    if (y > top) top = y;
  }
  return [left, bottom, right, top];
}

/** Whether a place lies inside a polygon (even-odd rule). Places on the edge fall on either side. */
export function contains(ring: Polygon, x: number, y: number): boolean {
  let inside = false;
  let bx = ring[ring.length - 2] as number;
  let by = ring[ring.length - 1] as number;
  for (let i = 0; i < ring.length; i += 2) {
    const ax = ring[i] as number;
    const ay = ring[i + 1] as number;
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
    bx = ax;
    by = ay;
  }
  return inside;
}

/** The polygon run counter-clockwise (`turn` 1) or clockwise (-1); a copy where it has to be turned. */
export function oriented(ring: Polygon, turn: 1 | -1): Polygon {
  if (Math.sign(signedArea(ring)) === turn) return ring;
  const turned = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i += 2) {
    turned[i] = ring[ring.length - 2 - i] as number;
    turned[i + 1] = ring[ring.length - 1 - i] as number;
  }
  return turned;
}

/** A copy moved by (dx, dy). */
export function moved(ring: Polygon, dx: number, dy: number): Polygon {
  return ring.map((value, i) => value + (i % 2 === 0 ? dx : dy));
}

/** Corners nearer than this are one corner: paths of relative steps return to their start only to rounding, m. */
const SAME_CORNER_M = 1e-9;

/** A copy without corners that repeat the one before, the last one against the first included. */
export function withoutRepeats(ring: Polygon): Polygon {
  const kept: number[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    const x = ring[i] as number;
    const y = ring[i + 1] as number;
    if (kept.length === 0 || !isSameCorner(kept, kept.length - 2, x, y)) kept.push(x, y);
  }
  while (kept.length > 2 && isSameCorner(kept, 0, kept[kept.length - 2] as number, kept[kept.length - 1] as number)) {
    kept.length -= 2;
  }
  return Float64Array.from(kept);
}

function isSameCorner(ring: readonly number[], at: number, x: number, y: number): boolean {
  return Math.hypot((ring[at] as number) - x, (ring[at + 1] as number) - y) < SAME_CORNER_M;
}

/** Whether all corners lie on one line, to rounding. */
export function isFlat(ring: Polygon): boolean {
  const x0 = ring[0] as number;
  const y0 = ring[1] as number;
  let ux = 0;
  let uy = 0;
  for (let i = 2; i < ring.length; i += 2) {
    const dx = (ring[i] as number) - x0;
    const dy = (ring[i + 1] as number) - y0;
    if (dx * dx + dy * dy > ux * ux + uy * uy) {
      ux = dx;
      uy = dy;
    }
  }
  const rounding = 1e-12 * (ux * ux + uy * uy);
  for (let i = 2; i < ring.length; i += 2) {
    if (Math.abs(ux * ((ring[i + 1] as number) - y0) - uy * ((ring[i] as number) - x0)) > rounding) return false;
  }
  return true;
}
