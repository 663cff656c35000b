/** A number that was measured, and half its 95 % interval, in the same unit. */
export interface Measured {
  readonly value: number;
  readonly within: number;
}

/** Half interval of a product or quotient of numbers that err apart from each other, share of it: theirs in quadrature. */
export function withinRatio(...numbers: readonly Measured[]): number {
  return Math.hypot(...numbers.map(({ value, within }) => within / value));
}
