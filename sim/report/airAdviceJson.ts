import type { AirAdvice } from '../air/airAdvice.ts';
import type { ClimateReason, RuleVerdict } from '../air/climateVerdict.ts';
import type { HourVerdict } from '../air/dayVerdicts.ts';
import type { Remedy } from '../air/remedies.ts';
import { localTimeOf } from '../base/localTime.ts';
import { CELSIUS_0_K } from '../base/units.ts';
import { firstMinute } from './airDayWords.ts';
import { airJson } from './airJson.ts';
import { CLIMATE_STATEMENT, climateSentence, ruleWords } from './climateWords.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { noRemedyWords, remedyHead } from './remedyWords.ts';

/** What `airJson` says, with the verdict, the rules side by side, what would turn it, and the day's hours. */
export function airAdviceJson(advice: AirAdvice): { readonly [key: string]: JsonValue } {
  const { answer, remedies, day, minute, held } = advice;
  const { now } = remedies;
  const day_min = day === null ? 0 : firstMinute(day);
  return {
    ...airJson(answer),
    verdict: now.verdict,
    verdictText: climateSentence(now, answer, 'metric'),
    verdictLimits: CLIMATE_STATEMENT,
    reasons: now.reasons.map(reasonJson),
    surface_C: now.surface_K === null ? null : celsius(now.surface_K),
    surfaceMargin_C: now.surfaceMargin_K === null ? null : jsonNumber(now.surfaceMargin_K),
    rules: now.rules.map(ruleJson),
    remedies: remedies.found.map((remedy) => remedyJson(remedy, day_min)),
    noRemedy: noRemedyWords(remedies, 'metric'),
    at: minute === null ? null : localTimeOf(minute),
    held,
    hours: day?.hours.map(hourJson) ?? [],
    firstGo: day === null || day.firstGo_min === null ? null : localTimeOf(day.firstGo_min),
    worsenings: day?.worsenings.map(({ minute: then, from, to }) => ({ at: localTimeOf(then), from, to })) ?? [],
    dewPointChange_C: day === null ? null : jsonNumber(day.dewPointChange_K),
  };
}

function ruleJson({ rule, verdict, reasons }: RuleVerdict): JsonValue {
  return { id: rule.id, name: rule.name, rule: ruleWords(rule, 'metric'), source: rule.source, mark: rule.mark, counts: rule.counts, verdict, reasons: reasons.map(reasonJson) };
}

function reasonJson({ of, is, value, limit, verdict }: ClimateReason): JsonValue {
  const inUnit = (number: number) => (of === 'humidity' ? jsonNumber(number, 0.01) : of === 'temperature' ? celsius(number) : jsonNumber(number));
  const unit = of === 'humidity' ? 'percent' : 'C';
  return { of, is, verdict, [`value_${unit}`]: inUnit(value), [`limit_${unit}`]: inUnit(limit) };
}

function remedyJson(remedy: Remedy, day_min: number): JsonValue {
  const { kind, reaches, air, retarder, minute, surfaceLeast_K, blushMargin_K, evaporationRatio, waitsRatio } = remedy;
  return {
    kind,
    what: remedyHead(remedy, 'metric', day_min),
    reaches,
    temperature_C: celsius(air.temperature_K),
    humidity_percent: jsonNumber(air.relativeHumidityFraction, 0.01),
    dewPoint_C: celsius(air.dewPoint_K),
    retarder_percent: retarder === null ? null : jsonNumber(retarder.retarderFraction, 0.01),
    at: minute === null ? null : localTimeOf(minute),
    surfaceLeast_C: surfaceLeast_K === null ? null : celsius(surfaceLeast_K),
    blushMargin_C: jsonNumber(blushMargin_K),
    evaporationRatio: jsonNumber(evaporationRatio),
    waitsRatio: jsonNumber(waitsRatio),
  };
}

function hourJson({ minute, air, film_K, verdict }: HourVerdict): JsonValue {
  return {
    at: localTimeOf(minute),
    temperature_C: celsius(air.temperature_K),
    humidity_percent: jsonNumber(air.relativeHumidityFraction, 0.01),
    dewPoint_C: celsius(air.dewPoint_K),
    filmTemperature_C: celsius(film_K),
    blushMargin_C: jsonNumber(film_K - air.dewPoint_K),
    verdict: verdict.verdict,
    passes: verdict.rules.filter(({ verdict: word }) => word === 'go').map(({ rule }) => rule.id),
  };
}

function celsius(kelvin: number): number | null {
  return jsonNumber(kelvin - CELSIUS_0_K);
}
