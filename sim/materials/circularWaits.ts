/**
 * Waits that FAA AC 43.13-1B, paragraph 2-21, states for 70 °F, h: before and after the third clear coat (f), between the two
 * aluminium coats (g), before the aluminium is wet sanded (h).
 */
export const CIRCULAR_WAITS_H = { thirdClear: 2, betweenAluminium: 1, beforeSanding: 4 } as const;
