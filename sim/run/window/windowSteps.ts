import { axisValue, type SprayPoint, type WindowAxis } from './sprayPoint.ts';

/** A change of a tenth of what is stated, for what a hand and a knob keep in proportion. */
const PROPORTIONAL = 0.1;

/**
 * One step of an axis at a point, SI: 25 mm, 10 % of speed, fluid or thinner, 10 points of overlap or
 * humidity, 3 K. Assumed: changes that a finisher can make on purpose and makes by mistake; the axes of
 * a window are measured in them, so that a margin along one can be held against a margin along another.
 */
export function axisStep(point: SprayPoint, axis: WindowAxis): number {
  switch (axis) {
    case 'distance':
      return 0.025;
    case 'overlap':
    case 'humidity':
      return 0.1;
    case 'temperature':
      return 3;
    case 'speed':
    case 'fluid':
    case 'thinner':
      return PROPORTIONAL * axisValue(point, axis);
  }
}
