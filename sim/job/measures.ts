/** What a practice session is marked by, in the order in which an instructor reads it. */
export const MEASURES = [
  'distance',
  'speed',
  'angle',
  'overlap',
  'trigger',
  'stops',
  'coverage',
  'evenness',
  'runs',
  'dry-laps',
  'dust',
  'paint',
  'time',
] as const;

/** One of `MEASURES`. */
export type Measure = (typeof MEASURES)[number];

/** Measures of which more is better; of every other, less is. */
export const MORE_IS_BETTER: readonly Measure[] = ['trigger', 'coverage'];
