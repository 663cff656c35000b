import { CELSIUS_0_K, M2_S_PER_MM2_S } from '../base/units.ts';
import type { CupTime } from '../mix/cupTime.ts';
import type { TodayAnswer, TodayPart, TodayRatio, TodaySprayed, TodayWait } from '../scheme/today.ts';
import { airCautions } from './airReport.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { reasonWords } from './climateWords.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION, warningJson } from './reportJson.ts';
import { TODAY_CAUTION, TODAY_PARTS, todayLine } from './todayWords.ts';
import { todayWorking } from './todayWorking.ts';
import type { UnitSystem } from './units.ts';

const UM = 1e-6;
const ML = 1e-6;
const G_M2 = 1e-3;
const HOUR = 3600;
const MINUTE = 60;

/** The front sheet as one JSON object; keys carry their unit, sentences are in the reader's units. */
export function todayJson(answer: TodayAnswer, system: UnitSystem): { readonly [key: string]: JsonValue } {
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    cautions: airCautions(answer.climate.answer),
    ...Object.fromEntries(TODAY_PARTS.map(([part, question]) => [part, { question, answer: todayLine(answer, part, system), ...FIGURES[part](answer, system), working: workingJson(answer, part, system) }])),
    warnings: [...answer.climate.answer.air.warnings, ...answer.mix.warnings].map(warningJson),
  };
}

function workingJson(answer: TodayAnswer, part: TodayPart, system: UnitSystem): JsonValue {
  const { formula, inputs, sources, limits } = todayWorking(answer, part, system);
  return { formula, inputs: Object.fromEntries(inputs), sources, limits };
}

const FIGURES: Readonly<Record<TodayPart, (answer: TodayAnswer, system: UnitSystem) => { readonly [key: string]: JsonValue }>> = {
  climate: ({ climate }, system) => ({
    verdict: climate.verdict.verdict,
    temperature_C: celsius(climate.answer.air.temperature_K),
    humidity_percent: jsonNumber(climate.answer.air.relativeHumidityFraction, 0.01),
    dewPoint_C: celsius(climate.answer.air.dewPoint_K),
    filmTemperature_C: celsius(climate.answer.film_K),
    blushMargin_C: jsonNumber(climate.answer.blushMargin_K),
    surface_C: climate.surface_K === null ? null : celsius(climate.surface_K),
    statement: TODAY_CAUTION,
    rules: climate.verdict.rules.map(({ rule, verdict, reasons }) => ({ id: rule.id, name: rule.name, verdict, counts: rule.counts, reasons: reasons.map((reason) => reasonWords(reason, system)) })),
  }),
  thinning: ({ thinning }) => ({
    cup: thinning.cup.id,
    read_s: thinning.read_s,
    refusal: thinning.refusal,
    viscosity_mm2_s: jsonNumber(thinning.viscosity_m2_s, M2_S_PER_MM2_S),
    seconds: orNull(thinning.now.seconds),
    otherCups: thinning.otherCups.map(cupJson),
    thinnerPerFinish: jsonNumber(thinning.thinnerRatio),
    spraying: { cup: thinning.sprayCup.id, thick: ratioJson(thinning.thick), thin: ratioJson(thinning.thin) },
    afternoon: { temperature_C: celsius(thinning.afternoon_K), seconds: orNull(thinning.afternoon.time.seconds), low_s: orNull(thinning.afternoon.low_s), high_s: orNull(thinning.afternoon.high_s), fittingCup: thinning.afternoon.time.fitting?.id ?? null },
  }),
  film: ({ film, thinning }) => ({
    thinning: sprayedJson(thinning.sprayed),
    coats: film.coats,
    coatWet_um: jsonNumber(film.coatWet_m, UM),
    coatDry_um: jsonNumber(film.coatDry_m, UM),
    passWet_um: jsonNumber(film.passWet_m, UM),
    allWet_um: jsonNumber(film.allWet_m, UM),
    allDry_um: jsonNumber(film.allDry_m, UM),
    leftAfterSanding_um: jsonNumber(film.left_m, UM),
  }),
  hold: ({ hold }) => ({
    verdict: hold.word,
    wet_um: jsonNumber(hold.wet_m, UM),
    held_um: { value: jsonNumber(hold.held_m.value, UM), low: jsonNumber(hold.held_m.low, UM), high: jsonNumber(hold.held_m.high, UM) },
    working_um: hold.working_m.map((film_m) => jsonNumber(film_m, UM)),
    limit_um: jsonNumber(hold.limit_m, UM),
    sags_um: jsonNumber(hold.sags_m, UM),
    fewestCoats: hold.fewestCoats,
  }),
  next: ({ next }) => ({
    dryingFactor: jsonNumber(next.ruleRatio),
    dryingFactorModel: jsonNumber(next.modelRatio),
    tradeNextCoat: waitJson(next.coat),
    tradeSanding: waitJson(next.sand),
    touchDry_min: minutes(next.touchDry_s),
    recoat_min: minutes(next.recoat_s),
    watched_h: jsonNumber(next.watched_s, HOUR),
    earliest_min: minutes(next.earliest_s),
    nextCoatDissolvesIn: next.dissolves,
  }),
  amounts: ({ amounts, question, thinning }) => ({
    thinning: sprayedJson(thinning.sprayed),
    area_m2: jsonNumber(question.area_m2),
    coats: amounts.coats,
    landed_mL: jsonNumber(amounts.landed_m3, ML),
    lostPast_mL: jsonNumber(amounts.missed_m3, ML),
    leftInCup_mL: jsonNumber(amounts.pot_m3, ML),
    mix_mL: jsonNumber(amounts.mix_m3, ML),
    finish_mL: jsonNumber(amounts.finish_m3, ML),
    thinner_mL: jsonNumber(amounts.thinner_m3, ML),
    coat_g_m2: jsonNumber(amounts.coat_kg_m2, G_M2),
    all_g_m2: jsonNumber(amounts.all_kg_m2, G_M2),
    all_g: jsonNumber(amounts.all_kg, 1e-3),
    publishedCoat_g_m2: amounts.published_kg_m2.map((weight) => jsonNumber(weight, G_M2)),
    publishedSource: amounts.publishedSource,
  }),
};

function celsius(kelvin: number): number | null {
  return jsonNumber(kelvin - CELSIUS_0_K);
}

function orNull(value: number | null): number | null {
  return value === null ? null : jsonNumber(value);
}

function minutes(time_s: number | null): number | null {
  return time_s === null ? null : jsonNumber(time_s, MINUTE);
}

function cupJson({ cup, seconds }: CupTime): JsonValue {
  return { cup: cup.id, seconds: orNull(seconds) };
}

function ratioJson({ seconds, viscosity_m2_s, thinnerRatio }: TodayRatio): JsonValue {
  return { seconds, viscosity_mm2_s: jsonNumber(viscosity_m2_s, M2_S_PER_MM2_S), thinnerPerFinish: orNull(thinnerRatio) };
}

function sprayedJson({ from, thinnerRatio }: TodaySprayed): JsonValue {
  return { thinnerPerFinish: jsonNumber(thinnerRatio), from };
}

function waitJson(wait: TodayWait | null): JsonValue {
  return wait === null ? null : { stated_h: jsonNumber(wait.stated_s, HOUR), today_h: jsonNumber(wait.today_s, HOUR), source: wait.source };
}
