import { evenScale } from '../../sim/index.ts';

/** Ticks of a ruler, in its unit. */
export interface RulerTicks {
  readonly labelled: readonly number[];
  readonly small: readonly number[];
}

/** Round values between `from` and `to`, labels about `labelSpacing_px` apart on `length_px`. */
export function rulerTicks(from: number, to: number, length_px: number, labelSpacing_px: number): RulerTicks {
  const scale = evenScale([from, to]);
  const count = Math.max(2, length_px / labelSpacing_px);
  return { labelled: scale.ticks(count), small: scale.ticks(5 * count) };
}

/** A tick's value as people write it: no rounding noise, a true minus sign. */
export function tickText(value: number): string {
  const text = String(Number(value.toPrecision(8)));
  return text.replace('-', '−');
}

/** The greatest 1, 2 or 5 times a power of ten that is at most `most`. */
export function roundLength(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  const lead = most / power;
  return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * power;
}
