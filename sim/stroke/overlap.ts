import { interpolateEven } from '../base/interpolate.ts';
import { type Lateral, placeOfBin } from './lateral.ts';
import type { StrokeMeasures } from './stroke.ts';
import { axialAngle_rad, besideLine } from './strokeLine.ts';

/** Strokes more than this apart in direction do not lie side by side. */
const OTHER_WAY_RAD = Math.PI / 4;
/** Share of the shorter stroke that must run beside the other. */
const BESIDE_SHARE = 0.25;
/** A stroke farther off than so many fan widths is not its neighbour but another part of the work. */
const FARTHEST_WIDTHS = 2;

type Overlap = NonNullable<StrokeMeasures['overlap']>;

/**
 * The earlier stroke of the same pass that lies nearest beside stroke `index`.
 * @param fanWidth_m full width at the stroke's distance. @returns its index, or -1.
 */
export function neighbourOf(index: number, laterals: readonly Lateral[], passes: readonly number[], fanWidth_m: number): number {
  const { line } = laterals[index] as Lateral;
  let nearest = -1;
  let nearest_m = FARTHEST_WIDTHS * fanWidth_m;
  for (let j = index - 1; j >= 0; j--) {
    if (passes[j] !== passes[index]) continue;
    const other = (laterals[j] as Lateral).line;
    if (axialAngle_rad(line, other) > OTHER_WAY_RAD) continue;
    const { across_m, shared_m } = besideLine(line, other);
    const shorter_m = Math.min(line.to_m - line.from_m, other.to_m - other.from_m);
    if (!(Math.abs(across_m) < nearest_m && shared_m > BESIDE_SHARE * shorter_m)) continue;
    nearest = j;
    nearest_m = Math.abs(across_m);
  }
  return nearest;
}

/**
 * Overlap of a stroke with its neighbour along their common length: 1 - gap / width, the gap square
 * to the neighbour's line and the width k · D at the mean of both distances there. Negative where
 * a bare lane is left. Mean over the length; worst is the place farthest from what was meant, or
 * the least where that is not known.
 * @param within_m from and to along the stroke's line: only there does the overlap count.
 * @returns null where they share no length there.
 */
export function overlapBetween(lateral: Lateral, other: Lateral, neighbour: number, fanWidthPerDistance: number, meantFraction: number, within_m: readonly [number, number]): Overlap | null {
  let bins = 0;
  let sumFraction = 0;
  let sum_m = 0;
  let worstError = -Infinity;
  let worst = { fraction: NaN, length_m: NaN, bin: 0 };
  for (let bin = 0; bin < lateral.across_m.length; bin++) {
    const along = lateral.line.from_m + (bin + 0.5) * lateral.binSize_m;
    if (along < within_m[0] || along > within_m[1]) continue;
    const [x, y] = placeOfBin(lateral, bin);
    const lap = overlapAtPlace(other, x, y, lateral.slant_m[bin] as number, fanWidthPerDistance);
    if (lap === null) continue;
    const { length_m, fraction } = lap;
    bins++;
    sumFraction += fraction;
    sum_m += length_m;
    const error = Number.isNaN(meantFraction) ? -fraction : Math.abs(fraction - meantFraction);
    if (error <= worstError) continue;
    worstError = error;
    worst = { fraction, length_m, bin };
  }
  if (bins === 0) return null;
  return {
    neighbour,
    meanFraction: sumFraction / bins,
    mean_m: sum_m / bins,
    worstFraction: worst.fraction,
    worst_m: worst.length_m,
    worstAt_m: placeOfBin(lateral, worst.bin),
  };
}

/** How far a stroke at a place laps another: the length and its share of the fan's width; null beyond the other's ends. */
export function overlapAtPlace(other: Lateral, x_m: number, y_m: number, slant_m: number, fanWidthPerDistance: number): { readonly length_m: number; readonly fraction: number } | null {
  const beside = besideOther(other, x_m, y_m);
  if (beside === null) return null;
  const width_m = (fanWidthPerDistance * (slant_m + beside.slant_m)) / 2;
  const length_m = width_m - beside.gap_m;
  return { length_m, fraction: length_m / width_m };
}

function besideOther(other: Lateral, x_m: number, y_m: number): { readonly gap_m: number; readonly slant_m: number } | null {
  const { line } = other;
  const x = x_m - line.x_m;
  const y = y_m - line.y_m;
  const along = x * line.dx + y * line.dy;
  if (along < line.from_m || along > line.to_m) return null;
  const start = line.from_m + other.binSize_m / 2;
  const across = interpolateEven(other.across_m, start, other.binSize_m, along);
  return { gap_m: Math.abs(y * line.dx - x * line.dy - across), slant_m: interpolateEven(other.slant_m, start, other.binSize_m, along) };
}
