/** From the least to the most that is allowed, both included. */
export type FitRange = readonly [low: number, high: number];

/** One pass, two at right angles, or whichever is better. */
export type FitPasses = 'single' | 'cross' | 'either';

/** What the answer must keep to. What is not given has the default that is stated with it. */
export interface FitLimits {
  /** Ids of set-ups that may be used; every one of the job. */
  readonly setUps?: readonly string[] | undefined;
  /** Ids of mixes that may be used; every one of the job with the coat's own finish. A coat without a mix keeps without. */
  readonly mixes?: readonly string[] | undefined;
  /** `FIT_DISTANCES_M`, or what a set-up may be believed for where the two do not meet; never beyond that. */
  readonly distance_m?: FitRange | undefined;
  /** `FIT_SPEEDS_M_S`. */
  readonly speed_m_s?: FitRange | undefined;
  /** `FIT_OVERLAPS`. */
  readonly overlapFraction?: FitRange | undefined;
  /** What each gun can do, by the id of its set-up; `FIT_FLUID_RATIOS` of the stated rate. */
  readonly fluidRate_m3_s?: Readonly<Record<string, FitRange>> | undefined;
  /** Volumes of thinner to one of finish; `FIT_THINNER_RATIOS` of what each mix states. */
  readonly thinnerRatio?: FitRange | undefined;
  /** `either`. */
  readonly passes?: FitPasses | undefined;
  /** Longest time for one coat, trigger and turns; endless. */
  readonly mostTime_s?: number | undefined;
  /** Most liquid for all coats, what is lost included; endless. */
  readonly mostLiquid_m3?: number | undefined;
}

/** What the film should come to, and what must be kept to. */
export interface Wish {
  /** Dry film of all coats together; give this, a weight, or neither: then each coat is to have the coat's own target. */
  readonly dry_m?: number;
  /** Its weight instead, by the density of the finish's solids. */
  readonly weight_kg_m2?: number;
  /** Coats, all alike; 1. */
  readonly coatCount?: number;
  readonly limits?: FitLimits;
}

/** Gun to panel, m. Common practice: 6 to 10 in. */
export const FIT_DISTANCES_M: FitRange = [0.15, 0.25];
/** Speeds of a hand, m/s. Common practice: 0.2 to 0.6; slower for small work. */
export const FIT_SPEEDS_M_S: FitRange = [0.1, 0.6];
/** Assumed: fans with tapering edges are uneven below, and above most strokes only go over others. */
export const FIT_OVERLAPS: FitRange = [0.25, 0.75];
/** Of the stated rate. Assumed: what a needle is opened and closed by without another nozzle. */
export const FIT_FLUID_RATIOS: FitRange = [0.5, 1.5];
/** Of the thinner that the mix states. Assumed: beyond, it is another mix. */
export const FIT_THINNER_RATIOS: FitRange = [0.5, 1.5];
