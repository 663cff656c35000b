import { scaleLinear } from 'd3-scale';

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

/** A scale (d3-scale's linear one) from the values between `domain` to the places between `range`, either way round, in any unit. */
export function evenScale(domain: Ends, range: Ends = [0, 1]): EvenScale {
  const scale = scaleLinear(domain, range);
  return Object.assign((value: number) => scale(value), {
    ticks: (count: number) => scale.ticks(count),
    tickText: (count: number) => scale.tickFormat(count),
  });
}

/** The ends moved outward to round values, about `count` ticks apart. Ends that are the same stay. */
export function roundEnds(ends: Ends, count: number): [number, number] {
  const [low = ends[0], high = ends[1]] = scaleLinear(ends, [0, 1]).nice(count).domain();
  return [low, high];
}
