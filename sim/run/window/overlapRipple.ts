import type { CoatSetting } from '../result.ts';
import { flattestOverlap } from '../flattestOverlap.ts';
import { overlapWithoutFirstHarmonic } from './firstHarmonic.ts';
import { lapRipple, strokeShape, type StrokeShape } from './lapRipple.ts';
import { signChange } from './signChange.ts';

/** Evenness of endless strokes at one overlap. */
export interface RipplePoint {
  readonly overlapFraction: number;
  /** Standard deviation over mean. */
  readonly cv: number;
  readonly minOverMax: number;
}

/** A connected range of overlaps within a limit. */
export interface OverlapBand {
  readonly low: number;
  readonly high: number;
}

/** The trade's small lap of a fixed length, for this fan. */
export interface FixedLap extends RipplePoint {
  readonly lap_m: number;
  /** Taper of the flat-topped fan of the same width that such a lap fills exactly: the lap itself. */
  readonly idealTaper_m: number;
}

/** How evenly a fan's strokes lie at every overlap. */
export interface OverlapRipple {
  readonly curve: readonly RipplePoint[];
  /** Of least CV, of all overlaps up to `MOST_SOUGHT`. */
  readonly evenest: RipplePoint;
  /** The least overlap that is even enough: `flattestOverlap`. */
  readonly flattest: RipplePoint;
  /** Where the ripple's first harmonic is 0: 1 - π/j for a double-beta fan; null for a fan without such a place. */
  readonly withoutFirstHarmonic: number | null;
  /** The widest range of overlaps within the limit; null where no overlap is. */
  readonly band: OverlapBand | null;
  readonly limit: RippleLimit;
  /** The two overlaps that texts give, and which of them leaves the evener film. */
  readonly half: RipplePoint;
  readonly twoThirds: RipplePoint;
  readonly evener: 'half' | 'two-thirds';
  /** CV where all laps are out by `LAP_ERROR` of the width, the worse way, at those two: what a hand makes of them. */
  readonly halfOut: number;
  readonly twoThirdsOut: number;
  readonly fixedLap: FixedLap;
}

/** Most CV, or least share of the heaviest film that the thinnest must have. */
export type RippleLimit = { readonly cv: number } | { readonly minOverMax: number };

/** What is asked of a ripple. */
export interface RippleOptions {
  /** `USUAL_LIMIT` where not given. */
  readonly limit?: RippleLimit;
  /** Common practice: laps of about 2 in (50 mm) on a fan of about 12 in (300 mm). */
  readonly fixedLap_m?: number;
}

/** Overlaps of the curve, and the last that is worth its strokes: four passes over every place. */
const MOST_SHOWN = 0.8;
const MOST_SOUGHT = 0.75;
const STEP = 0.005;
/** Assumed: a ripple of 5 % swings by ± 7 %, which leaves most of a target's ± 20 % to the hand. */
const USUAL_LIMIT: RippleLimit = { cv: 0.05 };
const USUAL_LAP_M = 0.05;
/** Assumed: a lap out by a twentieth of the width is what practice comes to. */
const LAP_ERROR = 0.05;
/** Golden-section steps: an overlap to 1e-7, where a CV's own rounding ends. */
const NARROWINGS = 24;
const TWO_THIRDS = 2 / 3;

/**
 * Overlap against ripple for a set-up's fan as it is, at its stated distance (the shape, and so the
 * answer, is the same at every distance; the fixed lap's share of the width is not).
 *
 * Texts differ because fans do. At a half every place gets two strokes, and the film is even where one
 * stroke falls off as the next rises: a double-beta fan near β1 = 2.9, a triangle, a squared cosine. A fan
 * that is fuller at its edges lies in stripes at a half; at two thirds three strokes share every place
 * and its shape counts less. A lap of a fixed small length suits a fan with a flat top whose edges taper
 * over just that length, and no other: rising and falling edges then add up to the top.
 */
export function overlapRipple({ setUp, spray }: CoatSetting, options: RippleOptions = {}): OverlapRipple {
  const shape = strokeShape(setUp.fan);
  const limit = options.limit ?? USUAL_LIMIT;
  const count = Math.round(MOST_SHOWN / STEP) + 1;
  const curve = Array.from({ length: count }, (_, i) => ripplePoint(shape, i * STEP));
  const half = ripplePoint(shape, 0.5);
  const twoThirds = ripplePoint(shape, TWO_THIRDS);
  return {
    curve,
    evenest: evenestOf(shape, curve),
    flattest: ripplePoint(shape, flattestOverlap(spray.footprint)),
    withoutFirstHarmonic: overlapWithoutFirstHarmonic(shape),
    band: widestBand(shape, curve, limit),
    limit,
    half,
    twoThirds,
    evener: twoThirds.cv < half.cv ? 'two-thirds' : 'half',
    halfOut: worstBeside(shape, 0.5),
    twoThirdsOut: worstBeside(shape, TWO_THIRDS),
    fixedLap: fixedLap(shape, options.fixedLap_m ?? USUAL_LAP_M),
  };
}

/** Evenness at one overlap. */
export function ripplePoint(shape: StrokeShape, overlapFraction: number): RipplePoint {
  const { cv, least, most } = lapRipple(shape, overlapFraction);
  return { overlapFraction, cv, minOverMax: least / most };
}

/** A lap of a fixed length on a fan at its stated width; held below the width. */
export function fixedLap(shape: StrokeShape, lap_m: number): FixedLap {
  return { ...ripplePoint(shape, Math.min(0.95, lap_m / shape.width_m)), lap_m, idealTaper_m: lap_m };
}

/** The evenest overlap of the curve, narrowed between its neighbours by golden section. */
function evenestOf(shape: StrokeShape, curve: readonly RipplePoint[]): RipplePoint {
  const sought = curve.filter(({ overlapFraction }) => overlapFraction <= MOST_SOUGHT + STEP / 2);
  const best = sought.reduce((least, point) => (point.cv < least.cv ? point : least));
  const golden = (Math.sqrt(5) - 1) / 2;
  let low = Math.max(0, best.overlapFraction - STEP);
  let high = Math.min(MOST_SOUGHT, best.overlapFraction + STEP);
  for (let i = 0; i < NARROWINGS; i++) {
    const nearer = high - golden * (high - low);
    const farther = low + golden * (high - low);
    if (lapRipple(shape, nearer).cv < lapRipple(shape, farther).cv) high = farther;
    else low = nearer;
  }
  const narrowed = ripplePoint(shape, 0.5 * (low + high));
  return narrowed.cv < best.cv ? narrowed : best;
}

/** The widest run of the curve within a limit, its ends brought to the limit itself. */
function widestBand(shape: StrokeShape, curve: readonly RipplePoint[], limit: RippleLimit): OverlapBand | null {
  const excessOf = (point: RipplePoint) => ('cv' in limit ? point.cv - limit.cv : limit.minOverMax - point.minOverMax);
  const excess = (overlap: number) => excessOf(ripplePoint(shape, overlap));
  const within = curve.map((point) => excessOf(point) <= 0);
  let widest: OverlapBand | null = null;
  for (let first = within.indexOf(true); first >= 0; ) {
    const end = within.indexOf(false, first);
    const last = end < 0 ? within.length - 1 : end - 1;
    const low = first === 0 ? 0 : signChange(excess, (first - 1) * STEP, first * STEP);
    const high = end < 0 ? last * STEP : signChange(excess, last * STEP, end * STEP);
    if (widest === null || high - low > widest.high - widest.low) widest = { low, high };
    first = end < 0 ? -1 : within.indexOf(true, end);
  }
  return widest;
}

function worstBeside(shape: StrokeShape, overlap: number): number {
  return Math.max(lapRipple(shape, overlap - LAP_ERROR).cv, lapRipple(shape, overlap + LAP_ERROR).cv);
}
