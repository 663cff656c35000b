/** What a stroke was meant to be: from a plan, or from the session's own medians. */
export interface MeantStroke {
  readonly source: 'plan' | 'median';
  readonly distance_m: number;
  readonly speed_m_s: number;
  /** Overlap with the stroke before it in the same pass; NaN for the first. */
  readonly overlapFraction: number;
  /** Aim line on the panel, where the trigger opens and closes, m. NaN where only medians are known. */
  readonly start_m: readonly [number, number];
  readonly end_m: readonly [number, number];
}

/** One trigger-on travel of the gun: rows `firstRow` to `lastRow` (inclusive) of a path. */
export interface Stroke {
  /** 0-based, in time. */
  readonly index: number;
  /** 0-based set of strokes in one direction; a cross coat has passes 0 and 1. */
  readonly pass: number;
  readonly firstRow: number;
  /** The row at which the trigger closes (its time and place end the stroke). */
  readonly lastRow: number;
  readonly meant: MeantStroke;
}

/** A place along a stroke where the gun stood still with fluid on. */
export interface Stop {
  readonly at_m: readonly [number, number];
  readonly start_s: number;
  readonly duration_s: number;
}

/** Technique measures of one stroke. Angles in rad, lengths in m. */
export interface StrokeMeasures {
  readonly stroke: number;
  readonly pass: number;
  readonly start_s: number;
  readonly duration_s: number;
  readonly start_m: readonly [number, number];
  readonly end_m: readonly [number, number];
  /** Aim point's travel with fluid on. */
  readonly length_m: number;
  /** Direction of travel, counter-clockwise from +x. */
  readonly direction_rad: number;
  readonly speed: { readonly mean_m_s: number; readonly cv: number; readonly low_m_s: number; readonly high_m_s: number };
  /** Along the spray axis to the panel (slant). */
  readonly distance: { readonly mean_m: number; readonly cv: number; readonly low_m: number; readonly high_m: number };
  /** Off square: angle between the spray axis and the panel's normal. */
  readonly tilt: { readonly mean_rad: number; readonly worst_rad: number };
  /** With the neighbour actually laid before it in the same pass; null where there is none. */
  readonly overlap: {
    readonly neighbour: number;
    readonly meanFraction: number;
    readonly mean_m: number;
    readonly worstFraction: number;
    readonly worst_m: number;
    readonly worstAt_m: readonly [number, number];
  } | null;
  /** Trigger points against the panel's edge: positive = fluid on (off) outside the edge by that much, negative = inside it. Null where the stroke never crosses the edge there. */
  readonly triggerOn_m: number | null;
  readonly triggerOff_m: number | null;
  readonly stops: readonly Stop[];
}
