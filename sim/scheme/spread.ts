import type { Spread } from './planned.ts';

/** A number without a spread. */
export function exactly(value: number): Spread {
  return { value, low: value, high: value };
}

/** A number give or take the same on both sides, never below 0. */
export function within(value: number, by: number): Spread {
  return { value, low: Math.max(0, value - by), high: value + by };
}

/** The sum of numbers whose errors have one cause, so that all may be low or high at once: the wide reading. */
export function summed(spreads: readonly Spread[]): Spread {
  const sum = (of: (spread: Spread) => number) => spreads.reduce((total, spread) => total + of(spread), 0);
  return { value: sum(({ value }) => value), low: sum(({ low }) => low), high: sum(({ high }) => high) };
}

/** A number multiplied by an exact one, 0 or more. */
export function scaled({ value, low, high }: Spread, by: number): Spread {
  return { value: value * by, low: low * by, high: high * by };
}
