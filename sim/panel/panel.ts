/**
 * A closed polygon, `x0, y0, x1, y1, …` in m, the last corner not repeated.
 * Outlines run counter-clockwise, holes clockwise, as made by `makePanel`.
 */
export type Polygon = Float64Array;

/** How the panel hangs. */
export interface Attitude {
  /** Angle from level: 0 a table top, π/2 a wall, up to π a ceiling. */
  readonly tilt_rad: number;
  /** Where gravity pulls in the panel's plane, counter-clockwise from +x; -π/2 is down the page. */
  readonly down_rad: number;
}

/**
 * A flat panel in panel coordinates: origin at the lower-left corner of the outline's bounding
 * box as the sprayer sees it, x right, y up, z toward the sprayer.
 */
export interface Panel {
  readonly id: string;
  readonly name: string;
  readonly outline: Polygon;
  readonly holes: readonly Polygon[];
  readonly attitude: Attitude;
  readonly width_m: number;
  readonly height_m: number;
  /** Outline less holes. */
  readonly area_m2: number;
}
