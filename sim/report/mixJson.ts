import { CELSIUS_0_K, M2_S_PER_MM2_S } from '../base/units.ts';
import type { Between } from '../mix/between.ts';
import type { CupTime } from '../mix/cupTime.ts';
import type { Amount, MixedParts, PotFill } from '../mix/mixBatch.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { MIX_CAUTIONS } from './mixCautions.ts';
import type { ReportedCup } from './mixText.ts';
import { ratioAsTyped, ratioWords } from './ratioWords.ts';
import { RESULT_VERSION, warningJson } from './reportJson.ts';
import type { LaterSeconds, ReportedMixing, ReportedThinning } from './reportedMixing.ts';

const ML = 1e-6;
const GRAM = 1e-3;
const UM = 1e-6;
const PERCENT = 0.01;

type JsonObject = { readonly [key: string]: JsonValue };

/** A mix for pouring, as one JSON object; keys carry their unit. */
export function mixJson(mixing: ReportedMixing): JsonObject {
  const { mix, ratio, densities, retarder, thinning, film, need, fill, parts } = mixing;
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    cautions: MIX_CAUTIONS,
    mix: mix.id,
    mixName: mix.name,
    finish: mix.finish.id,
    ratio: ratioAsTyped(ratio),
    ratioWords: ratioWords(ratio),
    thinnerPerFinish: jsonNumber(ratio.thinnerPerFinish),
    thinner: mixing.thinnerWords,
    retarder: retarder === null ? null : { solvent: retarder.name, ofThinner_percent: jsonNumber(ratio.retarderFraction, PERCENT), judgement: retarder.judgement, evaporationTimeRatio: jsonNumber(retarder.timeRatio) },
    density_kg_m3: { finish: jsonNumber(densities.finish_kg_m3), thinner: jsonNumber(densities.thinner_kg_m3), retarder: jsonNumber(densities.retarder_kg_m3) },
    canSolids_percent: between(mixing.canSolids, PERCENT),
    volumeSolids_percent: between(mixing.mixedSolids, PERCENT),
    film: film === null ? null : { wet_um: between(film.wet_m, UM), dry_um: between(film.dry_m, UM) },
    need: need === null ? null : { area_m2: jsonNumber(need.area_m2), coats: need.coatCount, landed_percent: between(need.landedFraction, PERCENT), left_mL: jsonNumber(need.left_m3, ML) },
    liquid_mL: mixing.liquid_m3 === null ? null : between(mixing.liquid_m3, ML),
    parts: parts === null ? null : partsJson(parts),
    pots: fill === null ? null : potsJson(fill),
    thinning: thinning === null ? null : thinningJson(thinning),
    warnings: mix.warnings.map(warningJson),
  };
}

/** A cup's answer, as one JSON object. */
export function cupJson({ viscosity_m2_s, time, other, later }: ReportedCup): JsonObject {
  const { cup } = time;
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    cup: cup.id,
    cupName: cup.name,
    seconds: jsonNumber(time.seconds),
    viscosity_mm2_s: jsonNumber(viscosity_m2_s, M2_S_PER_MM2_S),
    inRange: true,
    range_s: [cup.least_s, cup.most_s],
    standard_C: cup.standard_C,
    source: cup.source,
    ...(other === null ? {} : { to: timeJson(other) }),
    ...(later === null ? {} : { at: laterJson(later) }),
  };
}

function between({ value, low, high }: Between, unit: number): JsonObject {
  return { value: jsonNumber(value, unit), low: jsonNumber(low, unit), high: jsonNumber(high, unit) };
}

function amount({ volume_m3, weight_kg }: Amount): JsonObject {
  return { volume_mL: jsonNumber(volume_m3, ML), weight_g: jsonNumber(weight_kg, GRAM) };
}

function partsJson({ finish, thinner, retarder, total }: MixedParts): JsonObject {
  return { finish: amount(finish), thinner: amount(thinner), retarder: amount(retarder), total: amount(total) };
}

function potsJson({ pot_m3, potCount, each, pours }: PotFill): JsonObject {
  return { pot_mL: jsonNumber(pot_m3, ML), count: potCount, each: partsJson(each), pours: pours.map(({ part, upTo }) => ({ part, fillTo_mL: jsonNumber(upTo.volume_m3, ML), scaleShows_g: jsonNumber(upTo.weight_kg, GRAM) })) };
}

function timeJson({ cup, seconds, fitting }: CupTime): JsonObject {
  return { cup: cup.id, seconds: seconds === null ? null : jsonNumber(seconds), inRange: seconds !== null, fittingCup: fitting?.id ?? null };
}

function laterJson({ temperature_K, time, viscosity_m2_s, low_s, high_s }: LaterSeconds): JsonObject {
  return { temperature_C: jsonNumber(temperature_K - CELSIUS_0_K), viscosity_mm2_s: between(viscosity_m2_s, M2_S_PER_MM2_S), ...timeJson(time), low_s: low_s === null ? null : jsonNumber(low_s), high_s: high_s === null ? null : jsonNumber(high_s) };
}

function thinningJson({ law, origin, sensitivity_K, time, viscosity_m2_s, isBeyondReadings, wanted, later, guess }: ReportedThinning): JsonObject {
  return {
    origin,
    temperature_C: jsonNumber(law.temperature_K - CELSIUS_0_K),
    sensitivity_K: between(sensitivity_K, 1),
    sensitivityFitted: law.sensitivityFitted,
    viscosity_mm2_s: jsonNumber(viscosity_m2_s, M2_S_PER_MM2_S),
    ...timeJson(time),
    beyondReadings: isBeyondReadings,
    wanted: wanted === null ? null : {
      seconds: jsonNumber(wanted.seconds), problem: wanted.problem, beyondReadings: wanted.isBeyondReadings,
      ratio: wanted.ratio === null ? null : ratioAsTyped(wanted.ratio), thinnerPerFinish: wanted.ratio === null ? null : jsonNumber(wanted.ratio.thinnerPerFinish),
    },
    at: later === null ? null : laterJson(later),
    firstGuess: guess === null ? null : { refutas_mm2_s: jsonNumber(guess.refutas_m2_s, M2_S_PER_MM2_S), arrhenius_mm2_s: jsonNumber(guess.arrhenius_m2_s, M2_S_PER_MM2_S), cubeRoot_mm2_s: jsonNumber(guess.cubeRoot_m2_s, M2_S_PER_MM2_S), spreadRatio: jsonNumber(guess.spreadRatio), finish_mm2_s: jsonNumber(guess.finish_m2_s, M2_S_PER_MM2_S), thinner_mm2_s: jsonNumber(guess.thinner_m2_s, M2_S_PER_MM2_S) },
  };
}
