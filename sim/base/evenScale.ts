import { nice, ticks, tickStep } from 'd3-array';

/** First and last value of a scale, or its first and last place. */
export type Ends = readonly [number, number];

/** A straight scale: places in step with values, and ticks at round values. */
export interface EvenScale {
  /** The place of a value; beyond the ends it goes on straight. The middle where both ends are the same value. */
  (value: number): number;
  /** About `count` round values (1, 2 or 5 times a power of ten apart) between the ends. */
  ticks(count: number): number[];
  /** Writes such ticks: all with the decimals that their step needs, thousands apart by commas, a true minus sign. */
  tickText(count: number): (value: number) => string;
}

/**
 * A scale from the values between `domain` to the places between `range`, either way round, in any unit.
 *
 * Ticks are d3-array's. The package for scales of every kind is left out on purpose: it brings colour
 * spaces and number formats, 7 KiB of the page's first load, for what is one line here.
 */
export function evenScale([low, high]: Ends, [first, last]: Ends = [0, 1]): EvenScale {
  const place = (value: number): number => {
    const share = high === low ? 0.5 : (value - low) / (high - low);
    return first * (1 - share) + last * share;
  };
  return Object.assign(place, {
    ticks: (count: number) => ticks(low, high, count),
    tickText: (count: number) => tickText(decimalsOf(tickStep(low, high, count))),
  });
}

/** The ends moved outward to round values, about `count` ticks apart. Ends that are the same stay. */
export function roundEnds([low, high]: Ends, count: number): [number, number] {
  return nice(low, high, count);
}

/** Decimals that tell multiples of `step` from each other. */
function decimalsOf(step: number): number {
  return Math.max(0, -Number(step.toExponential().split('e')[1]));
}

function tickText(decimals: number): (value: number) => string {
  // 0 is added so that a negative zero has no sign.
  return (value) => (value + 0).toLocaleString('en-US', { minimumFractionDigits: decimals, maximumFractionDigits: decimals }).replace('-', '−');
}
