import type { Grid } from '../base/grid.ts';

/**
 * The film at one time. A later film is made from an earlier one; a record is never changed.
 * Arrays have length `columns * rows`.
 */
export interface Film {
  readonly grid: Grid;
  /** Since the first row of the path. */
  readonly time_s: number;
  readonly wet_m: Float32Array;
  readonly dry_m: Float32Array;
  /** Share of the wet film that arrived in dry drops, times the wet film, m. */
  readonly arrivedDry_m: Float32Array;
  readonly passes: Uint16Array;
}
