import type { Warning } from '../../base/errors.ts';
import type { CardSpec, SetUpSpec } from '../../job/schema.ts';
import { fanFromFit, placedFan, tableFromReadings } from './fanFromFit.ts';
import { openedWidth, WIDTH_WITHIN_M, type FanOpening } from './fanOpening.ts';
import type { CardReadings } from './cardReadings.ts';
import type { FanFit, FitIntervals, Interval } from './fanFit.ts';
import { tenth } from './fileDigits.ts';
import type { Measured } from './measured.ts';
import { knownSetUp, percentOf, type Proving } from './provedParts.ts';

type FanSpec = SetUpSpec['fan'];

/** Assumed: a fan that was read at one distance is believed from this share of it to that. */
const BELIEVED_RATIOS = [0.8, 1.25] as const;

/** Readings, the fit that is taken, and its intervals. */
interface TakenFit {
  readonly readings: CardReadings;
  readonly chosen: FanFit;
  readonly intervals: FitIntervals;
}

/** With the fan that readings show at the card's distance, its rays opening as the widths say, if there are any. */
export function withFit(now: Proving, { readings, chosen, intervals }: TakenFit, distance_m: number, opening: FanOpening | null, asMeasured: boolean): Proving {
  const before = openedFan(now.setUp.fan, opening);
  const { fan, knownWithin, warnings } = asMeasured ? tableFromReadings(before, distance_m, readings, chosen, intervals) : fanFromFit(before, distance_m, chosen, intervals);
  const { fluidRate_percent, efficiency_percent } = now.setUp.knownWithin ?? {};
  const known = { ...knownWithin, ...(fluidRate_percent === undefined ? {} : { fluidRate_percent }), ...(efficiency_percent === undefined ? {} : { efficiency_percent }) };
  const half = (interval: Interval | null) => (interval === null ? null : (interval.high - interval.low) / 2);
  const width_m = half(intervals.width);
  const taper_m = half(intervals.taper);
  return {
    setUp: { ...knownSetUp({ ...now.setUp, fan }, known), distanceRange_mm: believed(distance_m, opening) },
    within: {
      ...now.within,
      ...originWithin(opening),
      ...(width_m === null ? {} : { width_mm: 1000 * width_m }),
      ...(knownWithin.beta1 === undefined ? {} : { beta1: knownWithin.beta1 }),
      ...(taper_m === null || fan.profile.family !== 'flat-top' ? {} : { taper_mm: 1000 * taper_m }),
    },
    warnings: [...now.warnings, ...warnings, ...(opening === null ? [] : apartWarnings(openedWidth(opening, distance_m), { value: chosen.width_m, within: width_m ?? 0 }))],
  };
}

/** With the width by tape alone: by the line at the card's distance, or the one width where it was read. The profile keeps its shape. */
export function withWidth(now: Proving, { widths = [], widthWithin_mm }: CardSpec, distance_m: number, opening: FanOpening | null): Proving {
  const [first] = widths;
  if (first === undefined) return now;
  const at_m = opening === null ? first.distance_mm / 1000 : distance_m;
  const single = { value: first.width_mm / 1000, within: widthWithin_mm === undefined ? WIDTH_WITHIN_M : widthWithin_mm / 1000 };
  const width_m = opening === null ? single : openedWidth(opening, at_m);
  const before = openedFan(now.setUp.fan, opening);
  const { fan, warnings } = placedFan(before, at_m, width_m.value, stretched(before, tenth(1000 * width_m.value)));
  return {
    setUp: { ...knownSetUp({ ...now.setUp, fan }, { ...now.setUp.knownWithin, width_percent: percentOf(width_m) }), distanceRange_mm: believed(at_m, opening) },
    within: { ...now.within, ...originWithin(opening), width_mm: 1000 * width_m.within },
    warnings: [...now.warnings, ...warnings, ...(opening === null ? [] : drawnOnWarnings(opening, at_m))],
  };
}

function openedFan(fan: FanSpec, opening: FanOpening | null): FanSpec {
  return opening === null ? fan : { ...fan, origin_mm: tenth(1000 * opening.origin_m.value) };
}

function originWithin(opening: FanOpening | null) {
  return opening === null ? {} : { origin_mm: 1000 * opening.origin_m.within };
}

/** Nearest to farthest distance that was read, the card's among them; about the one distance otherwise. */
function believed(distance_m: number, opening: FanOpening | null): [number, number] {
  const [near_m, far_m] = opening === null ? BELIEVED_RATIOS.map((ratio) => ratio * distance_m) : [Math.min(opening.range_m[0], distance_m), Math.max(opening.range_m[1], distance_m)];
  return [tenth(1000 * (near_m as number)), tenth(1000 * (far_m as number))];
}

/** The fan's profile drawn out to another width. */
function stretched({ profile, width_mm }: FanSpec, to_mm: number): FanSpec['profile'] {
  const ratio = to_mm / width_mm;
  if (profile.family === 'flat-top') return { ...profile, taper_mm: Math.min(to_mm / 2, profile.taper_mm * ratio) };
  if (profile.family === 'table') return { ...profile, place_mm: profile.place_mm.map((place) => place * ratio) };
  return profile;
}

function apartWarnings(tape: Measured, readings: Measured): Warning[] {
  if (Math.abs(tape.value - readings.value) <= Math.hypot(tape.within, readings.within)) return [];
  return [{ code: 'model-limit', text: `By tape the fan is ${(1000 * tape.value).toFixed(0)} mm wide at the card, by its readings ${(1000 * readings.value).toFixed(0)} mm, which lie farther apart than either is known; the readings' is taken. An eye sees a soft edge farther in or out than the fitted family ends.`, place: {} }];
}

function drawnOnWarnings({ range_m }: FanOpening, at_m: number): Warning[] {
  if (at_m >= range_m[0] && at_m <= range_m[1]) return [];
  return [{ code: 'distance-range', text: `The card's distance, ${(1000 * at_m).toFixed(0)} mm, lies outside those at which the fan's width was read (${range_m.map((end) => (1000 * end).toFixed(0)).join(' to ')} mm): the width there is drawn on.`, place: {} }];
}
