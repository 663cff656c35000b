/** Trigger value at and below which no fluid flows. */
export const AIR_ONLY = 0.5;

/** Share of the full fluid rate at a trigger value, 0 to 1: none up to air only, then in proportion. */
export function fluidShare(trigger: number): number {
  return Math.min(1, Math.max(0, (trigger - AIR_ONLY) / (1 - AIR_ONLY)));
}
