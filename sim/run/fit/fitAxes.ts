import { CrosscoatError } from '../../base/errors.ts';
import { MOST_THINNER } from '../../mix/makeMix.ts';
import type { CoatSetting } from '../result.ts';
import { FIT_DISTANCES_M, FIT_FLUID_RATIOS, FIT_OVERLAPS, FIT_THINNER_RATIOS, type FitLimits, type FitRange } from './wish.ts';

/** What the search turns; the speed follows from the film. */
export const FIT_AXES = ['distance', 'overlap', 'fluid', 'thinner'] as const;
export type FitAxis = (typeof FIT_AXES)[number];

/** Values that a finisher can set: from low to high, each a whole number of steps, the ends always among them. */
export interface FitAxisRange {
  readonly low: number;
  readonly high: number;
  readonly step: number;
}

export type FitAxes = Readonly<Record<FitAxis, FitAxisRange>>;
/** A place in the search: one value an axis, SI. */
export type FitPlace = Readonly<Record<FitAxis, number>>;

/** Distances and speeds that the model lays. */
export const LAID_DISTANCES_M: FitRange = [0.02, 1];
export const LAID_SPEEDS_M_S: FitRange = [0.01, 5];

/** What can be set at a gun or read from a cup. Assumed. */
const DISTANCE_STEP_M = 0.005;
const OVERLAP_STEP = 0.01;
const FLUID_STEP_M3_S = 2e-6 / 60;
const THINNER_STEP = 0.01;

/**
 * The axes of one kind: limits as given or as is usual, within what the set-up may be believed for.
 * @throws CrosscoatError `range` where the set-up's distances and the allowed ones do not meet.
 */
export function axesOf({ setUp, mix, coat }: CoatSetting, limits: FitLimits): FitAxes {
  const { fluidRate_m3_s: rate } = setUp;
  const thinned = coat.mix !== undefined && mix.thinnerRatio > 0;
  return {
    distance: { ...ends(distances(setUp, limits)), step: DISTANCE_STEP_M },
    overlap: { ...ends(limits.overlapFraction ?? FIT_OVERLAPS), step: OVERLAP_STEP },
    fluid: { ...ends(limits.fluidRate_m3_s?.[setUp.id] ?? times(FIT_FLUID_RATIOS, rate)), step: FLUID_STEP_M3_S },
    thinner: { ...ends(thinned ? (limits.thinnerRatio ?? usualThinner(mix.thinnerRatio)) : [mix.thinnerRatio, mix.thinnerRatio]), step: THINNER_STEP },
  };
}

function distances({ id, distanceRange_m: range_m }: CoatSetting['setUp'], { distance_m }: FitLimits): FitRange {
  const believed = common(range_m, LAID_DISTANCES_M);
  const [low, high] = common(believed, distance_m ?? FIT_DISTANCES_M);
  if (low <= high) return [low, high];
  if (distance_m === undefined) return believed;
  throw new CrosscoatError(
    'range',
    `fit: set-up "${id}" may be believed from ${mm(believed[0])} to ${mm(believed[1])} mm, the wish allows ${mm(distance_m[0])} to ${mm(distance_m[1])} mm; widen one of them, or leave the set-up out`,
  );
}

function common([near, far]: FitRange, [low, high]: FitRange): FitRange {
  return [Math.max(near, low), Math.min(far, high)];
}

function mm(length_m: number): number {
  return Math.round(length_m * 1000);
}

function usualThinner(ratio: number): FitRange {
  const [low, high] = times(FIT_THINNER_RATIOS, ratio);
  return [low, Math.min(MOST_THINNER, high)];
}

function times([low, high]: FitRange, value: number): FitRange {
  return [low * value, high * value];
}

function ends([low, high]: FitRange): Pick<FitAxisRange, 'low' | 'high'> {
  return { low, high };
}

/** A value held to an axis and brought to a whole step of it, where the axis has one there. */
export function onAxis({ low, high, step }: FitAxisRange, value: number): number {
  return Math.min(high, Math.max(low, Math.round(value / step) * step));
}

/** A place with each of its values on its axis. */
export function onAxes(axes: FitAxes, place: FitPlace): FitPlace {
  return { distance: onAxis(axes.distance, place.distance), overlap: onAxis(axes.overlap, place.overlap), fluid: onAxis(axes.fluid, place.fluid), thinner: onAxis(axes.thinner, place.thinner) };
}
