import { METRES_PER_FOOT } from '../base/units.ts';

/** Left, bottom, right, top, m. */
export type SurveyBox = readonly [left: number, bottom: number, right: number, top: number];

/** Steps from a failed spot: 5 ft, or 1.5 m where the survey is metric (SSPC-PA 2, 2012 on, from memory). */
export const FAILURE_STEP_M: Readonly<Record<'m2' | 'ft2', number>> = { m2: 1.5, ft2: 5 * METRES_PER_FOOT };

/** To the right, then counter-clockwise by eighths of a turn. */
const DIRECTIONS: readonly (readonly [x: number, y: number])[] = [0, 1, 2, 3, 4, 5, 6, 7].map((eighth) => [Math.cos((eighth * Math.PI) / 4), Math.sin((eighth * Math.PI) / 4)]);
/** So many in a row that conform end a direction. */
const IN_A_ROW = 2;
/** A place this near to the box's edge is in it: rounding of the directions, m. */
const EDGE_M = 1e-9;

/** Where to read next in one of the eight directions. */
export interface NextPlace {
  /** 0 to the right, then counter-clockwise. */
  readonly direction: number;
  /** Steps from the failed spot, from 1. */
  readonly step: number;
  readonly at_m: readonly [number, number];
}

/**
 * Growth of a failed area: from a spot that fails, spots are read at equal steps in eight directions until two in a row conform, or
 * the panel ends. What lies within is not conforming.
 *
 * @param box places outside it are left out. @param found for each direction, whether the spots read so far conform, the
 *   nearest first; none read where it is left out.
 * @returns the next place of each direction that is not done; nothing where all are.
 */
export function nextAroundFailure(failed_m: readonly [number, number], box: SurveyBox, step_m: number, found: readonly (readonly boolean[])[] = []): NextPlace[] {
  return DIRECTIONS.flatMap(([x, y], direction) => {
    const read = found[direction] ?? [];
    const isDone = read.length >= IN_A_ROW && read.slice(-IN_A_ROW).every((conforms) => conforms);
    const step = read.length + 1;
    const at_m = [failed_m[0] + x * step * step_m, failed_m[1] + y * step * step_m] as const;
    return isDone || !isInside(at_m, box) ? [] : [{ direction, step, at_m }];
  });
}

function isInside([x, y]: readonly [number, number], [left, bottom, right, top]: SurveyBox): boolean {
  return x >= left - EDGE_M && x <= right + EDGE_M && y >= bottom - EDGE_M && y <= top + EDGE_M;
}
