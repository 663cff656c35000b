import { CELSIUS_0_K } from '../base/units.ts';
import type { AirAnswer } from '../air/airAnswer.ts';
import { ESTIMATE_STATEMENT } from './cautions.ts';
import { airCautions, airWarnings } from './airReport.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { RESULT_VERSION, warningJson } from './reportJson.ts';


/** What the air does to a film of the mix, as one JSON object; keys carry their unit. */
export function airJson(answer: AirAnswer): { readonly [key: string]: JsonValue } {
  const { air, mix, drying } = answer;
  return {
    schemaVersion: RESULT_VERSION,
    estimate: ESTIMATE_STATEMENT,
    cautions: airCautions(answer),
    temperature_C: celsius(air.temperature_K),
    humidity_percent: jsonNumber(air.relativeHumidityFraction, 0.01),
    pressure_kPa: jsonNumber(air.pressure_Pa, 1000),
    airSpeed_m_s: jsonNumber(air.speed_m_s),
    humidityRatio_g_kg: jsonNumber(air.humidityRatio, 1e-3),
    dewPoint_C: celsius(air.dewPoint_K),
    wetBulb_C: celsius(air.wetBulb_K),
    mix: mix.id,
    mixName: mix.name,
    faces: answer.faces,
    filmTemperature_C: celsius(answer.film_K),
    blushMargin_C: jsonNumber(answer.blushMargin_K),
    blushPossible: answer.blushMargin_K < 0,
    criticalHumidity_percent: jsonNumber(answer.criticalHumidityFraction, 0.01),
    dryingFactor: jsonNumber(drying.ruleRatio),
    dryingFactorModel: jsonNumber(drying.modelRatio),
    warming: { ceiling_C: celsius(answer.ceiling_K), least_C: answer.warmEnough_K === null ? null : celsius(answer.warmEnough_K) },
    retarders: answer.retarders.map((tried) => ({
      solvent: tried.retarder,
      ofThinner_percent: jsonNumber(tried.retarderFraction, 0.01),
      filmTemperature_C: celsius(tried.film_K),
      blushMargin_C: jsonNumber(tried.blushMargin_K),
      evaporationRatio: jsonNumber(tried.evaporationRatio),
    })),
    warnings: airWarnings(answer).map(warningJson),
  };
}

function celsius(kelvin: number): number | null {
  return jsonNumber(kelvin - CELSIUS_0_K);
}
