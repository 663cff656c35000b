/**
 * The fan on a square panel at one distance, sampled, so that a measured one can stand in for a
 * computed one. The share of the landing liquid per area at `x` along the long axis and `y`
 * along the short axis is
 *
 *     across(u) · along(w),   u = x / halfLength_m,   w = y² / (halfDepth_m² · chordSquared(u))
 *
 * inside |u| <= 1, w <= 1, and zero outside. Its integral over the plane is 1 - `cutFraction`.
 */
export interface Footprint {
  /** The distance from the nozzle at which it is stated; flux falls as the square of what lengths grow by. */
  readonly distance_m: number;
  /** Where the rays seem to start, in front of the nozzle: lengths grow as the distance from there. */
  readonly origin_m: number;
  /** Full width and depth as the trade states them (a Gaussian's support is wider). */
  readonly width_m: number;
  readonly depth_m: number;
  /** Half extents of the support, at `distance_m`. */
  readonly halfLength_m: number;
  readonly halfDepth_m: number;
  /** At even nodes of u from -1 to 1 (odd count), 1/m². */
  readonly across: Float64Array;
  /** Square of the support's depth at u relative to the centre, same nodes as `across`: 1 - u² for an ellipse, 1 for a rectangle. */
  readonly chordSquared: Float64Array;
  /** At even nodes of w from 0 to 1, along(0) = 1. */
  readonly along: Float64Array;
  /** Share that an infinite tail loses by being cut. */
  readonly cutFraction: number;
}

/** What arrives, against distance: tables at even nodes, linear between, ends held. */
export interface Arrival {
  readonly start_m: number;
  readonly step_m: number;
  /** Share of the solids leaving the gun that lands (transfer efficiency). */
  readonly transferFraction: Float64Array;
  /** Share of the landing drops' solvent that is still there on impact. */
  readonly solventKeptFraction: Float64Array;
  /** Share of the landing wet volume in drops that arrive dry (see `dryDropShare`). */
  readonly dryFraction: Float64Array;
}

/** What a set-up hands to `deposit`. */
export interface Spray {
  readonly setUpId: string;
  readonly footprint: Footprint;
  readonly fluidRate_m3_s: number;
  readonly volumeSolidsFraction: number;
  readonly meanDrop_m: number;
  readonly triggerLag_s: number;
  readonly arrival: Arrival;
}
