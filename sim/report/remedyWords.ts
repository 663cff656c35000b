import type { Remedies, Remedy } from '../air/remedies.ts';
import { clockOf, localTimeOf } from '../base/localTime.ts';
import { CLIMATE_WORDS } from './climateWords.ts';
import { roundedText, shownPercent, shownTemperature, shownTemperatureStep, type UnitSystem } from './units.ts';
import { capitalised } from './words.ts';

/** Said beside warmth that is advised, next to the caution on heaters. */
export const FAN_CAUTION = 'Warm the room before spraying and keep the fan on while anything is wet: a fan turned off to save the warmth keeps the vapour in.';

/** A ratio so near 1 says nothing. */
const SAME_RATIO = 0.03;

/** Time of a minute: the clock, with the day where it is another than that of `day_min`. */
export function timeWords(minute: number, day_min: number): string {
  const text = localTimeOf(minute);
  return text.slice(0, 10) === localTimeOf(day_min).slice(0, 10) ? clockOf(text) : text.replace('T', ' ');
}

/** What to do, as on a button: `Warm the room to 19.6 °C`. */
export function remedyHead({ kind, air, retarder, minute }: Remedy, system: UnitSystem, day_min: number): string {
  const doings = [
    ...(isWarm(kind) ? [`warm the room to ${shownTemperature(air.temperature_K, system)}`] : []),
    ...(isLater(kind) ? [`wait until ${timeWords(minute ?? day_min, day_min)}`] : []),
    ...(retarder === null ? [] : [`use ${shownPercent(retarder.retarderFraction)} retarder`]),
  ];
  return capitalised(doings.join(' and '));
}

function isWarm(kind: Remedy['kind']): boolean {
  return kind === 'warm' || kind === 'warm-retard';
}

function isLater(kind: Remedy['kind']): boolean {
  return kind === 'later' || kind === 'later-retard';
}

/** What it reaches, on what terms, and what it costs. */
export function remedyTail(remedy: Remedy, system: UnitSystem): string {
  const { kind, reaches, air, retarder, blushMargin_K, surfaceLeast_K } = remedy;
  const terms = [
    `${CLIMATE_WORDS[reaches].toLowerCase()}, the film ${shownTemperatureStep(blushMargin_K, system)} above the dew point`,
    ...(isWarm(kind) ? [`the moisture stays and the humidity falls to ${shownPercent(air.relativeHumidityFraction)}`] : []),
    ...(isLater(kind) ? [`the air is then ${shownTemperature(air.temperature_K, system)} and ${shownPercent(air.relativeHumidityFraction)}`] : []),
    ...(retarder === null ? [] : [`${retarder.retarder}, ${shownPercent(retarder.retarderFraction)} of the thinner`]),
    ...(surfaceLeast_K === null ? [] : [`the part itself must then be ${shownTemperature(surfaceLeast_K, system)} or warmer`]),
  ];
  return `${terms.join('; ')}. ${costWords(remedy)}`;
}

/** What a remedy costs or saves in drying. */
export function costWords({ evaporationRatio, waitsRatio, retarder }: Remedy): string {
  const first = Math.abs(evaporationRatio - 1) < SAME_RATIO ? 'The first evaporation takes as long as now' : `The first evaporation takes ${roundedText(evaporationRatio)} times as long as now`;
  const waits = Math.abs(waitsRatio - 1) < SAME_RATIO ? 'the trade’s rule leaves the waits as they are' : `the trade’s rule makes the waits ${roundedText(waitsRatio)} times as long`;
  const slow = retarder === null ? '' : ' The retarder itself leaves last, so the film stays soft longer than either says.';
  return `${first} (model); ${waits}.${slow}`;
}

/** One remedy as one sentence of a list. */
export function remedySentence(remedy: Remedy, system: UnitSystem, day_min: number): string {
  return `${remedyHead(remedy, system, day_min)}: ${remedyTail(remedy, system)}`;
}

/** Where nothing, or nothing that goes without care, was found; null where something goes. */
export function noRemedyWords({ now, found, tried }: Remedies, system: UnitSystem): string | null {
  if (now.verdict === 'go' || found.some(({ reaches }) => reaches === 'go')) return null;
  const what = [
    `warmth up to the ceiling of ${shownTemperature(tried.ceiling_K, system)}`,
    ...(tried.mostRetarderFraction === null ? [] : [`retarder up to ${shownPercent(tried.mostRetarderFraction)} of the thinner`]),
    ...(tried.hours === 0 ? [] : ['every later hour of the day']),
  ];
  const together = what.length > 1 ? ', alone and with retarder' : '';
  return `Nothing that was tried makes it ${found.length > 0 ? 'go without care' : 'go'}: ${what.join(', ')}${together}.`;
}
