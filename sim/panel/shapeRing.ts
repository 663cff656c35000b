import { counted } from '../base/counted.ts';
import { CrosscoatError } from '../base/errors.ts';
import type { ShapeSpec } from '../job/schema.ts';
import type { Polygon } from './panel.ts';
import { CURVE_TOLERANCE_MM, pathRing } from './pathRing.ts';
import { withoutRepeats } from './polygon.ts';

const M_PER_MM = 1e-3;

/** Most corners of one outline or hole, after curves are cut into chords. */
export const MOST_CORNERS = 20000;

/**
 * A stated shape as a polygon, m, in the file's own coordinates; repeated corners dropped.
 * Neither turned nor checked for crossings.
 * @param pointer JSON pointer of the shape, for errors.
 * @throws CrosscoatError `geometry` for fewer than three distinct corners, a number that is not
 * finite, or an open path; `limit` for more than `MOST_CORNERS`.
 */
export function shapeRing(shape: ShapeSpec, pointer: string): Polygon {
  const corners_mm = cornersOf(shape, pointer);
  if (corners_mm.length / 2 > MOST_CORNERS) {
    throw new CrosscoatError(
      'limit',
      `makePanel: ${pointer}: ${corners_mm.length / 2} corners is more than ${MOST_CORNERS} (curves cut into chords count); give fewer points`,
      { pointer },
    );
  }
  const ring = withoutRepeats(Float64Array.from(corners_mm, (value) => value * M_PER_MM));
  if (!ring.every(Number.isFinite)) {
    throw new CrosscoatError('geometry', `makePanel: ${pointer}: a corner is not a finite number; give mm`, { pointer });
  }
  if (ring.length < 6) {
    throw new CrosscoatError(
      'geometry',
      `makePanel: ${pointer}: ${counted(ring.length / 2, 'distinct corner')} cannot enclose anything; give at least 3`,
      { pointer },
    );
  }
  return ring;
}

function cornersOf(shape: ShapeSpec, pointer: string): number[] {
  if ('rectangle_mm' in shape) {
    const [width, height] = shape.rectangle_mm;
    return [0, 0, width, 0, width, height, 0, height];
  }
  if ('points_mm' in shape) return shape.points_mm.flat();
  if ('circle_mm' in shape) return circleCorners(...shape.circle_mm);
  return pathRing(shape.path_mm, pointer);
}

/**
 * A regular polygon with the circle's area, corners at the four quarters. Its edges stay within
 * the curve tolerance of the circle: an inscribed one misses it by r(1 - cos(π/n)) at most, and
 * the growth to equal area splits that error between the two sides.
 */
function circleCorners(x: number, y: number, diameter: number): number[] {
  const radius = diameter / 2;
  const share = Math.min(1, CURVE_TOLERANCE_MM / radius);
  const sides = Math.max(16, 4 * Math.ceil(Math.PI / Math.acos(1 - share) / 4));
  const step = (2 * Math.PI) / sides;
  const reach = radius * Math.sqrt(step / Math.sin(step));
  const corners: number[] = [];
  for (let i = 0; i < sides; i++) corners.push(x + reach * Math.cos(i * step), y + reach * Math.sin(i * step));
  return corners;
}
