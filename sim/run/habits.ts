/**
 * The habits of a hand that can be corrected one at a time, the most particular first: evening
 * the speed also takes out a stop, and holding the distance also undoes part of a swing.
 */
export const HABITS = [
  'no-stops',
  'square-gun',
  'even-speed',
  'even-distance',
  'trigger-past-edge',
  'move-strokes',
] as const;

/** One of `HABITS`. */
export type Habit = (typeof HABITS)[number];
