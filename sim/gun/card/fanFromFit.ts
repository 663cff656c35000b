import { CrosscoatError, type Warning } from '../../base/errors.ts';
import { fanScale } from '../../base/raySource.ts';
import type { KnownWithinSpec, SetUpSpec } from '../../job/schema.ts';
import type { CardReadings } from './cardReadings.ts';
import type { FanFit, FitIntervals, Interval } from './fanFit.ts';
import { hundredth, tenth } from './fileDigits.ts';
import { fittedFilm } from './fittedFilm.ts';

type FanSpec = SetUpSpec['fan'];
type ProfileSpec = FanSpec['profile'];

/** A fan as a set-up states it, taken from a card. */
export interface FanFromCard {
  readonly fan: FanSpec;
  /** Width, and β1 where the profile has one. */
  readonly knownWithin: KnownWithinSpec;
  readonly warnings: readonly Warning[];
}

/** A lean whose interval stays this far off 0 is the fan's, not chance. Assumed: less than that, the film's halves differ by under 3 % of it. */
export const LEAN_LIMIT = 0.05;
/** Places of the table that stands for a lopsided fit. */
const TABLE_PLACES = 41;
/** Most places that a set-up's table takes. */
const MOST_TABLE_PLACES = 2000;
/** Exponents that a set-up takes, and that of a fan along the travel of which nothing is known. */
const BETA = { low: 1, high: 8, along: 3 };

/** Whether a fit leans to one side beyond chance. */
export function isLopsided({ imbalance }: FitIntervals): boolean {
  return imbalance !== null && (imbalance.low > LEAN_LIMIT || imbalance.high < -LEAN_LIMIT);
}

/**
 * The fan that a fit hands to a set-up: width and profile by the family (β1 held to 1 to 8, β2 and depth kept, the
 * depth as it is at the card's distance), without the fog; the middle of the fan becomes the aim. The families are even about their middle,
 * so a lopsided fit is handed over as a table of 41 places.
 * @param fan what the set-up says now. @param distance_m gun to card; whether it lies in the set-up's range is the caller's to say.
 */
export function fanFromFit(fan: FanSpec, distance_m: number, fit: FanFit, intervals: FitIntervals): FanFromCard {
  const isTable = isLopsided(intervals);
  const profile = isTable ? tableFromFit(fit) : familyProfile(fit, fan.profile);
  const at = placedFan(fan, distance_m, fit.width_m, profile);
  return {
    fan: at.fan,
    knownWithin: {
      ...widthKnown(fit, intervals),
      ...(profile.family === 'double-beta' && intervals.beta1 !== null ? { beta1: Math.min(BETA.high - BETA.low, halfOf(intervals.beta1)) } : {}),
    },
    warnings: [...at.warnings, ...(isTable ? [] : betaWarnings(fit))],
  };
}

/**
 * The fan with the readings themselves as its profile: less the fitted fog and not smoothed, readings at one place averaged, from
 * bare card to bare card (the first reading past each of the fitted edges counts as bare), film below 0 as 0.
 * @throws CrosscoatError `limit` for more than 2000 places.
 */
export function tableFromReadings(fan: FanSpec, distance_m: number, readings: CardReadings, fit: FanFit, intervals: FitIntervals): FanFromCard {
  return { ...placedFan(fan, distance_m, fit.width_m, measuredTable(readings, fit)), knownWithin: widthKnown(fit, intervals) };
}

/** A fan moved to another distance, with another width and profile: its depth as it is there, and no deeper than wide. */
export function placedFan(fan: FanSpec, distance_m: number, width_m: number, profile: ProfileSpec): Pick<FanFromCard, 'fan' | 'warnings'> {
  const width_mm = tenth(width_m * 1000);
  const { origin_mm } = fan;
  // A stated distance that a new origin has overtaken says nothing of the depth farther out.
  const isAhead = fan.atDistance_mm > (origin_mm ?? 0);
  const depth_mm = tenth(fan.depth_mm * (isAhead ? fanScale(distance_m, fan.atDistance_mm / 1000, (origin_mm ?? 0) / 1000) : 1));
  return {
    // Keys in the schema's order, so that the job is written as it would be read back.
    fan: { width_mm, depth_mm: Math.min(depth_mm, width_mm), atDistance_mm: tenth(distance_m * 1000), ...(origin_mm === undefined ? {} : { origin_mm }), profile },
    warnings: depth_mm <= width_mm ? [] : [{ code: 'model-limit', text: `The fan is narrower than it was said to be deep (${depth_mm} mm at the card): the depth is taken as ${width_mm} mm. Look at a short burst for the depth.`, place: {} }],
  };
}

function familyProfile({ family, beta1, taper_m, width_m }: FanFit, before: ProfileSpec): ProfileSpec {
  switch (family) {
    case 'double-beta':
      return { family, beta1: hundredth(Math.min(BETA.high, Math.max(BETA.low, beta1 as number))), beta2: before.family === family ? before.beta2 : BETA.along };
    case 'flat-top':
      return { family, taper_mm: Math.min(tenth(width_m * 1000) / 2, tenth((taper_m as number) * 1000)) };
    case 'gaussian':
    case 'parabola':
    case 'triangle':
    case 'cosine-squared':
      return { family };
  }
}

function betaWarnings({ beta1 }: FanFit): Warning[] {
  if (beta1 === null || (beta1 >= BETA.low && beta1 <= BETA.high)) return [];
  return [{ code: 'model-limit', text: `The card asks for an exponent across the fan of ${beta1.toFixed(2)}; ${beta1 < BETA.low ? BETA.low : BETA.high} is taken, the ${beta1 < BETA.low ? 'least' : 'most'} that a set-up holds.`, place: {} }];
}

/** Film of the fit less its fog, as a share of the peak, at even places from edge to edge. */
function tableFromFit(fit: FanFit): ProfileSpec {
  const film = fittedFilm(fit);
  const places = Array.from({ length: TABLE_PLACES }, (_, i) => fit.width_m * (i / (TABLE_PLACES - 1) - 0.5));
  return {
    family: 'table',
    place_mm: places.map((place_m) => micrometre(place_m)),
    film: places.map((place_m) => sixFigures(Math.max(0, (film(fit.offset_m + place_m) - fit.fog) / fit.peak))),
  };
}

function measuredTable({ place_m, film }: CardReadings, fit: FanFit): ProfileSpec {
  const half_m = fit.width_m / 2;
  const byPlace = new Map<number, number[]>();
  place_m.forEach((place, i) => {
    const from_m = micrometre(place - fit.offset_m) / 1e3;
    byPlace.set(from_m, [...(byPlace.get(from_m) ?? []), Math.max(0, (film[i] as number) - fit.fog)]);
  });
  const rows = Array.from(byPlace, ([from_m, films]) => [from_m, films.reduce((sum, value) => sum + value, 0) / films.length] as const);
  const inside = rows.filter(([from_m]) => Math.abs(from_m) < half_m);
  const left = rows.filter(([from_m]) => from_m <= -half_m).at(-1);
  const right = rows.find(([from_m]) => from_m >= half_m);
  const kept = [...bare(left, half_m), ...inside, ...bare(right, half_m)];
  if (kept.length > MOST_TABLE_PLACES) {
    throw new CrosscoatError('limit', `readings: ${kept.length} places are more than the ${MOST_TABLE_PLACES} that a table takes; use the fitted fan, or leave readings out`);
  }
  return { family: 'table', place_mm: kept.map(([from_m]) => micrometre(from_m)), film: kept.map(([, value]) => sixFigures(value)) };
}

/** The reading past an edge as bare card, no farther out than a set-up's table may reach (a full width). */
function bare(row: readonly [number, number] | undefined, half_m: number): (readonly [number, number])[] {
  return row === undefined || Math.abs(row[0]) > 1.9 * half_m ? [] : [[row[0], 0]];
}

function widthKnown({ width_m }: FanFit, { width }: FitIntervals): KnownWithinSpec {
  return width === null ? {} : { width_percent: Math.min(100, hundredth((100 * halfOf(width)) / width_m)) };
}

function halfOf({ low, high }: Interval): number {
  return (high - low) / 2;
}

/** A place in mm to the last micrometre. */
function micrometre(place_m: number): number {
  return Math.round(place_m * 1e6) / 1e3;
}

function sixFigures(value: number): number {
  return Number(value.toPrecision(6));
}
