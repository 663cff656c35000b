/** One value of a trend; null where there was nothing to measure. */
export interface TrendPoint {
  /** When, in words. */
  readonly label: string;
  readonly value: number | null;
}

/** Values within a limit: from `from` to `to`, one of which may be infinite. */
export interface TrendBand {
  readonly from: number;
  readonly to: number;
}

/** Room above the highest value, share of the scale. */
const HEADROOM = 0.08;
/** Rounding leaves a value on its limit a little beyond it. */
const ROUNDING = 1e-9;

export function isInBand(value: number, { from, to }: TrendBand): boolean {
  return value >= from - ROUNDING && value <= to + ROUNDING;
}

/** Scale that shows every value, zero, and the finite limits of the band. Never empty. */
export function trendDomain(points: readonly TrendPoint[], band: TrendBand | null): readonly [number, number] {
  const limits = band === null ? [] : [band.from, band.to];
  const shown = [0, ...points.map(({ value }) => value ?? 0), ...limits].filter(Number.isFinite);
  const [low, high] = [Math.min(...shown), Math.max(...shown)];
  return high > low ? [low, high + (high - low) * HEADROOM] : [low, low + 1];
}

/** SVG path through the points that have a value, broken where one has none. A lone one has no path. */
export function trendPath(points: readonly TrendPoint[], x: (index: number) => number, y: (value: number) => number): string {
  let path = '';
  let isOpen = false;
  points.forEach(({ value }, index) => {
    if (value === null || !Number.isFinite(value)) {
      isOpen = false;
      return;
    }
    path += `${isOpen ? 'L' : 'M'}${x(index).toFixed(1)},${y(value).toFixed(1)}`;
    isOpen = true;
  });
  return path;
}
