/**
 * Columns `low <= c < high` of a grid row; empty where low >= high. Reused, so that a stamp
 * allocates nothing a row. Kept as 32-bit integers (`| 0`): a loop that counts in doubles is slower.
 */
export interface RowSpan {
  low: number;
  high: number;
}

/** Beyond every grid, and inside 32 bits. */
const FARTHEST_COLUMN = 2 ** 30;

/** Cuts `span` to the columns where `value0 + c step <= 0`. */
export function keepBelowZero(span: RowSpan, value0: number, step: number): void {
  if (step === 0) {
    if (!(value0 <= 0)) span.high = span.low;
    return;
  }
  const root = heldColumn(-value0 / step);
  if (step > 0) span.high = Math.min(span.high, Math.floor(root) + 1) | 0;
  else span.low = Math.max(span.low, Math.ceil(root)) | 0;
}

/** A root beyond any grid, held where `| 0` does not wrap it round (a step near zero gives 1e18). */
function heldColumn(root: number): number {
  return Math.max(-FARTHEST_COLUMN, Math.min(FARTHEST_COLUMN, root));
}

/**
 * Cuts `span` to the columns inside an ellipse seen from the nozzle, `u² + s² <= z²` with each
 * linear in the column. Where the cone does not close on the panel (a grazing gun) the span stays
 * as it is. @returns whether the cone closes.
 */
export function keepInCone(span: RowSpan, u0: number, du: number, s0: number, ds: number, z0: number, dz: number): boolean {
  const a = du * du + ds * ds - dz * dz;
  if (!(a > 0)) return false;
  const b = u0 * du + s0 * ds - z0 * dz;
  const c = u0 * u0 + s0 * s0 - z0 * z0;
  const squared = b * b - a * c;
  if (!(squared >= 0)) {
    span.high = span.low;
    return true;
  }
  const root = Math.sqrt(squared);
  span.low = Math.max(span.low, Math.ceil(heldColumn((-b - root) / a))) | 0;
  span.high = Math.min(span.high, Math.floor(heldColumn((-b + root) / a)) + 1) | 0;
  return true;
}
