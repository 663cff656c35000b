import { evenScale, roundEnds } from '../../sim/index.ts';

/** First and last value of an axis. */
export type Ends = readonly [low: number, high: number];

/** A line across a chart, in the axes' units. */
export interface PairLine {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  /** Dashes of the line; empty for a whole one. */
  readonly dash: string;
  readonly name: string;
}

/** Ends of an axis that shows all values and these besides, at round values. */
export function pairEnds(values: readonly number[], besides: readonly number[], ticks: number): Ends {
  const all = [...values, ...besides].filter(Number.isFinite);
  const [low, high] = [Math.min(...all), Math.max(...all)];
  return roundEnds(high > low ? [low, high] : [low - 1, high + 1], ticks);
}

/** Round values between two ends, with their texts. */
export function pairTicks(ends: Ends, count: number): readonly { readonly value: number; readonly text: string }[] {
  const scale = evenScale(ends);
  const text = scale.tickText(count);
  return scale.ticks(count).map((value) => ({ value, text: text(value) }));
}
