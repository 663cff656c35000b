/** A reading on the plot: one film, or the two that a comb's film lies between; the upper one may be infinite. */
export type PlottedReading = readonly [low: number, high: number];

/** A limit drawn as an upright line. */
export interface PlottedLimit {
  readonly value: number;
  /** Letter at the line and in the key. */
  readonly letter: string;
  readonly words: string;
}

/** A limit further off than so many times the spread of the readings is told, not drawn: it would press them into a corner. */
const FAR = 1;
/** Room beside the outermost value, share of the scale. */
const SIDE = 0.06;

/** Values of the plot from left to right, with the limits that lie near enough. */
export function plotDomain(readings: readonly PlottedReading[], limits: readonly PlottedLimit[]): readonly [number, number] {
  let [least, most] = [Infinity, -Infinity];
  for (const [low, high] of readings) {
    least = Math.min(least, low);
    most = Math.max(most, Number.isFinite(high) ? high : low);
  }
  if (!(least <= most)) return [0, 1];
  const reach = FAR * Math.max(most - least, 0.3 * Math.abs(most), Number.MIN_VALUE);
  const near = limits.map(({ value }) => value).filter((value) => value >= least - reach && value <= most + reach);
  const [left, right] = [Math.min(least, ...near), Math.max(most, ...near)];
  const side = SIDE * (right - left || Math.abs(right) || 1);
  return [left - side, right + side];
}

/** Whether a limit is drawn between the ends of a plot. */
export function isDrawn({ value }: PlottedLimit, [low, high]: readonly [number, number]): boolean {
  return value >= low && value <= high;
}

/** Counts of the values in equal bins between two ends; what lies on an edge belongs to the bin right of it, the last edge to the last bin. */
export function binned(values: readonly number[], [low, high]: readonly [number, number], bins: number): number[] {
  const counts = new Array<number>(bins).fill(0);
  for (const value of values) {
    const bin = Math.min(bins - 1, Math.floor(((value - low) / (high - low)) * bins));
    if (bin >= 0 && value <= high) counts[bin] = (counts[bin] as number) + 1;
  }
  return counts;
}
