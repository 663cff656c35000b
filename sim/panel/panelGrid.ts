import type { Grid } from '../base/grid.ts';

/** A panel laid on a grid. */
export interface PanelGrid {
  readonly grid: Grid;
  /**
   * Share of each cell's area that lies inside the outline and outside the holes, 0 to 1, so
   * that a slanted edge does not bias a mean. Length `columns * rows`.
   */
  readonly cover: Float32Array;
  /** Sum of cover times cell area: the panel's area to rounding, m². */
  readonly covered_m2: number;
}
