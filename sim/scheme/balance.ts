import { weightedSum } from '../base/sums.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import type { Spread } from './planned.ts';
import { scaled } from './spread.ts';

/** A place on the panel, x right and y up, m. */
export type PanelPlace = readonly [x_m: number, y_m: number];
/** A hinge line by two different points on it. */
export type HingeLine = readonly [first: PanelPlace, second: PanelPlace];

/** A weight and where it acts. */
export interface PlacedWeight {
  readonly weight_kg: Spread;
  readonly centre_m: PanelPlace;
}

/** Balance of the weight added about a hinge line. */
export interface HingeBalance {
  readonly weight_kg: Spread;
  readonly centre_m: PanelPlace;
  /** From the line to the centre, square to the line; above 0 to the left of the line as one looks from its first point to its second. */
  readonly arm_m: number;
  /** Foot of the arm on the line. */
  readonly foot_m: PanelPlace;
  /** Weight times arm, with the arm's sign, kg m. `low` and `high` are those of the weight. */
  readonly moment_kg_m: Spread;
  readonly side: 'left' | 'right' | 'on the line';
}

/** An arm shorter than this is none, m. */
const NO_ARM_M = 1e-9;

/**
 * Centre of a film that lies on a panel, by sums over its cells: each cell counts with its covered area and its film, at its own centre.
 * Second order in the cell's side, since a cut cell's middle is off the middle of what it covers.
 * @param film thickness by cell, length `cover.length`; without it an even film.
 * @returns null where no film lies.
 */
export function filmCentre({ grid, cover }: PanelGrid, film?: ArrayLike<number>): PanelPlace | null {
  const weights = Float64Array.from(cover, (share, cell) => share * (film === undefined ? 1 : (film[cell] as number)));
  const [x_m, y_m] = [new Float64Array(weights.length), new Float64Array(weights.length)];
  for (let row = 0, cell = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++, cell++) {
      x_m[cell] = (column + 0.5) * grid.cellSize_m;
      y_m[cell] = (row + 0.5) * grid.cellSize_m;
    }
  }
  const total = weightedSum(weights, new Float64Array(weights.length).fill(1));
  return total > 0 ? [weightedSum(x_m, weights) / total, weightedSum(y_m, weights) / total] : null;
}

/**
 * The weights' common centre and their moment about a hinge line, in the panel's own plane. A second side finished alike lies at the same
 * places, so its weight counts and its arm is the same. Left out: the part's own weight, thickness and curve of the part, tapes at
 * their places.
 * @returns null where nothing weighs anything.
 */
export function balanceAbout([first, second]: HingeLine, weights: readonly PlacedWeight[]): HingeBalance | null {
  const total = weights.reduce((sum, { weight_kg }) => sum + weight_kg.value, 0);
  if (!(total > 0)) return null;
  const mean = (axis: 0 | 1) => weights.reduce((sum, { weight_kg, centre_m }) => sum + weight_kg.value * centre_m[axis], 0) / total;
  const centre_m: PanelPlace = [mean(0), mean(1)];
  const length = Math.hypot(second[0] - first[0], second[1] - first[1]);
  const [ux, uy] = [(second[0] - first[0]) / length, (second[1] - first[1]) / length];
  const [dx, dy] = [centre_m[0] - first[0], centre_m[1] - first[1]];
  const arm_m = ux * dy - uy * dx;
  const along = ux * dx + uy * dy;
  const low = weights.reduce((sum, { weight_kg }) => sum + weight_kg.low, 0);
  const high = weights.reduce((sum, { weight_kg }) => sum + weight_kg.high, 0);
  const weight_kg: Spread = { value: total, low, high };
  return {
    weight_kg,
    centre_m,
    arm_m,
    foot_m: [first[0] + along * ux, first[1] + along * uy],
    moment_kg_m: scaled(weight_kg, arm_m),
    side: Math.abs(arm_m) < NO_ARM_M ? 'on the line' : arm_m > 0 ? 'left' : 'right',
  };
}
