import { CrosscoatError, type Place } from './errors.ts';

/** What a checked number is called, where it stands, and what to do when it does not fit. */
export interface CheckedNumber {
  /** The function or file that asks, then the name: `planStrokes: overlap`. */
  readonly name: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Printed behind the limits; empty for a plain ratio. */
  readonly unit?: string;
  /** Why the limit is there, in brackets; optional. */
  readonly why?: string;
  /** What the reader should give instead. */
  readonly advice: string;
  readonly place?: Place;
}

/**
 * Throws a `range` error unless `low <= value <= high`. NaN and infinities fail.
 * @returns the value, so that a check can stand in an expression.
 */
export function checkRange(checked: CheckedNumber): number {
  const { name, value, low, high, advice, why, place } = checked;
  if (value >= low && value <= high && Number.isFinite(value)) return value;
  const unit = checked.unit === undefined ? '' : ` ${checked.unit}`;
  const reason = why === undefined ? '' : ` (${why})`;
  throw new CrosscoatError(
    'range',
    `${name} = ${value}${unit} is not from ${low} to ${high}${unit}${reason}; ${advice}`,
    place,
  );
}
