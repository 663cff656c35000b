import type { Warning } from '../base/errors.ts';
import type { Path } from './path.ts';
import type { Stroke } from './stroke.ts';

/** How a panel is to be filled. SI units. */
export interface StrokePlan {
  /** Share of the full fan width laid over the previous stroke, 0 to 0.95. */
  readonly overlapFraction: number;
  readonly speed_m_s: number;
  readonly distance_m: number;
  /** Direction of the first stroke, counter-clockwise from +x. */
  readonly direction_rad: number;
  readonly order: 'serpentine' | 'one-way';
  /** How far outside the edge the fluid opens and closes. */
  readonly lead_m: number;
  readonly lag_m: number;
  /** First stroke's centre line from the panel's edge, positive inward; 0 = on the edge. */
  readonly firstStroke_m: number;
  /** A second pass at right angles, before the first has flashed off. */
  readonly cross: boolean;
}

/** A planned path and its strokes. */
export interface Planned {
  readonly path: Path;
  readonly strokes: readonly Stroke[];
  readonly warnings: readonly Warning[];
}
