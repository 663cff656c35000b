/** A surface nearer than this to the dew point is no surface to coat, K: 3 °C (5 °F), after ISO 8502-4, as quoted by others. */
export const SURFACE_MARGIN_K = 3;
