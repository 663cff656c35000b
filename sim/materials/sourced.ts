/**
 * A number of nature or of the trade with what is known of it. The unit stands in the name of the
 * key that holds it. Every source says how far it may be trusted: a work by name, "from memory"
 * (the value was not looked up again), "common practice" (no single work), or "Assumed" with why.
 */
export interface Sourced {
  readonly value: number;
  /** Lowest and highest of what sources or practice give; equal to the value where one is given. */
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

/** A number with its range. */
export function ranged(value: number, low: number, high: number, source: string): Sourced {
  return { value, low, high, source };
}

/** A number for which no range is known. */
export function single(value: number, source: string): Sourced {
  return { value, low: value, high: value, source };
}
