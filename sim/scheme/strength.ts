import { NEWTONS_PER_METRE_PER_LB_IN } from '../base/force.ts';

/**
 * How weak a cloth may have become, by AC 43.13-1B 2-30 and 2-33: not below 70 % of the strength
 * that a new cloth of its grade must have. A figure for the record only: whether a cloth may stay is
 * for a licensed person, by test of the cloth itself.
 */
export const STRENGTH_SHARE = 0.7;
/** The least in use whatever cloth is fitted, where intermediate cloth would do, N/m: 46 lb/in. */
export const LEAST_STRENGTH_N_M = 46 * NEWTONS_PER_METRE_PER_LB_IN;

/** A grade of cloth. */
export interface ClothGrade {
  readonly name: string;
  /** New, warp and fill, N/m. */
  readonly new_N_m: number;
  readonly source: string;
}

const TABLE = 'AC 43.13-1B Table 2-1, warp and fill';

/** The cotton grades of the circular. */
export const CLOTH_GRADES: readonly ClothGrade[] = [
  { name: 'Grade A cotton', new_N_m: 80 * NEWTONS_PER_METRE_PER_LB_IN, source: TABLE },
  { name: 'intermediate cotton', new_N_m: 65 * NEWTONS_PER_METRE_PER_LB_IN, source: TABLE },
  { name: 'glider cloth', new_N_m: 50 * NEWTONS_PER_METRE_PER_LB_IN, source: TABLE },
];

/** Least strength in use of a cloth, N/m: 70 % of what the grade must have when new. */
export function strengthFloor(new_N_m: number): number {
  return STRENGTH_SHARE * new_N_m;
}

/** The same in whole lb/in as the circular prints it: a half is rounded up, to the safe side. */
export function printedFloor_lb_in(new_N_m: number): number {
  // A hundred-millionth keeps 56 from becoming 57 by its binary digits.
  return Math.ceil(strengthFloor(new_N_m) / NEWTONS_PER_METRE_PER_LB_IN - 1e-8);
}
