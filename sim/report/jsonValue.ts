/** A value that JSON can hold; numbers are finite. */
export type JsonValue = string | number | boolean | null | readonly JsonValue[] | { readonly [key: string]: JsonValue };

/** Digits kept: sums still close to 1e-11, and no digits of binary rounding are printed. */
const FIGURES = 12;

/** A number for JSON: `value / unit` to 12 figures, null where it is not finite. */
export function jsonNumber(value: number, unit = 1): number | null {
  const scaled = value / unit;
  return Number.isFinite(scaled) ? Number(scaled.toPrecision(FIGURES)) : null;
}
