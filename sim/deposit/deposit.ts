import type { Grid } from '../base/grid.ts';

/** What has landed so far, cell by cell; the arrays are changed in place as strokes are laid. */
export interface Deposit {
  readonly grid: Grid;
  /** Liquid thickness on arrival (solids and the solvent kept in flight), m. */
  readonly wet_m: Float32Array;
  /** Solids thickness: the dry film, m. */
  readonly solids_m: Float32Array;
  /** The part of `wet_m` that came in drops that were dry on arrival, m. */
  readonly arrivedDry_m: Float32Array;
  /** How many strokes passed over the cell with it inside the fan's nominal width. */
  readonly passes: Uint16Array;
}

/** Where the liquid went, m³. sprayed = landed + fog + missed + flight, to rounding. */
export interface PaintAccount {
  /** Left the gun. */
  readonly sprayed_m3: number;
  /** Lies wet on the panel (cover-weighted). */
  readonly landed_m3: number;
  /** Never reached the plane of the panel: 1 - transfer efficiency. */
  readonly fog_m3: number;
  /** Reached the plane beside the panel, in a hole, or in the fan's cut tail. */
  readonly missed_m3: number;
  /** Solvent that left the landing drops in the air. */
  readonly flight_m3: number;
}
