/** One pound-force to the inch of width, in which strength of cloth is stated, N/m: 4.4482216152605 N over 25.4 mm, exact. */
export const NEWTONS_PER_METRE_PER_LB_IN = 4.4482216152605 / 0.0254;
