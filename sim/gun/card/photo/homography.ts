import { solve } from 'ml-matrix';
import type { CardCorners, PixelPlace } from './cardPhoto.ts';

/** A plane seen in perspective: `x = (a u + b v + c) / (g u + h v + 1)`, `y = (d u + e v + f) / (g u + h v + 1)`. */
export type Homography = readonly [a: number, b: number, c: number, d: number, e: number, f: number, g: number, h: number];

const UNIT_CORNERS = [[0, 0], [1, 0], [1, 1], [0, 1]] as const;

/**
 * The view of a flat card by a camera without distortion: where a place (u, v) of the rectangle, 0 to 1 rightward and
 * upward, stands on the photograph, px. Eight equations of its four corners; the textbook form (R. Hartley and
 * A. Zisserman, "Multiple View Geometry in Computer Vision", 2nd ed. 2003, section 2.3; from memory). A lens that bends
 * straight lines is left out.
 * @param corners checked by `checkPhoto`: convex, so that the denominator is above 0 inside.
 */
export function homography(corners: CardCorners): Homography {
  // Pixels are scaled to order 1, so that the equations are.
  const scale_px = Math.max(...corners.flat());
  const rows: number[][] = [];
  const right: number[][] = [];
  for (let i = 0; i < 4; i++) {
    const [u, v] = UNIT_CORNERS[i] as readonly [number, number];
    const [x, y] = (corners[i] as PixelPlace).map((px) => px / scale_px) as [number, number];
    rows.push([u, v, 1, 0, 0, 0, -u * x, -v * x], [0, 0, 0, u, v, 1, -u * y, -v * y]);
    right.push([x], [y]);
  }
  const found = solve(rows, right).to1DArray();
  return found.map((value, i) => (i < 6 ? value * scale_px : value)) as unknown as Homography;
}
