import { checkRange } from '../../base/check.ts';
import { CELSIUS_0_K } from '../../base/units.ts';
import { LOW_PRESSURE_EFFICIENCY_PERCENT, USUAL_AIR, USUAL_BACKING } from '../../job/defaults.ts';
import { cupById } from '../../materials/cups.ts';
import type { TodayQuestion } from '../../scheme/today.ts';

/** Least and most of each number of the question, SI. Air, height and air speed have the limits of `makeAir`. */
export const TODAY_LIMITS = {
  thinnerRatio: [0, 10],
  retarderFraction: [0, 0.5],
  seconds: [1, 1000],
  area_m2: [0.01, 1000],
  dry_m: [1e-6, 500e-6],
  coats: [1, 60],
  tilt_rad: [0, Math.PI],
  sanded_m: [0, 500e-6],
  efficiencyFraction: [0.05, 1],
} as const satisfies Partial<Record<keyof TodayQuestion, readonly [number, number]>>;

/** Thinner to one of finish of a mix that was read without its ratio. Assumed: 3 : 1, as the usual mix is. */
export const ASSUMED_RATIO = 1 / 3;

/** Least and most temperature of anything asked about, °C. */
export const TODAY_TEMPERATURES_C = [-20, 60] as const;

/**
 * The question where nothing is stated: the usual air, clear dope thinned as is recommended, an upright side of open cloth whose
 * surface nobody measured, a Zahn No. 2 cup, which can say what a thinned lacquer-type finish drains in. Assumed: 2 m², 25 µm
 * dry, about what the published weight of one clear coat comes to; sanding as a scheme's step has it.
 */
export const USUAL_TODAY: TodayQuestion = {
  temperature_K: USUAL_AIR.temperature_C + CELSIUS_0_K,
  humidityFraction: USUAL_AIR.humidity_percent / 100,
  finish: 'clear-dope',
  thinner: 'general',
  thinnerRatio: null,
  retarderFraction: 0,
  cup: 'zahn-2',
  seconds: null,
  area_m2: 2,
  dry_m: 25e-6,
  coats: null,
  tilt_rad: Math.PI / 2,
  backing: USUAL_BACKING,
  surface_K: null,
  liquid_K: null,
  afternoon_K: null,
  sanded_m: 3e-6,
  efficiencyFraction: LOW_PRESSURE_EFFICIENCY_PERCENT / 100,
  altitude_m: USUAL_AIR.altitude_m,
  airSpeed_m_s: USUAL_AIR.speed_m_s,
  ceiling_K: USUAL_AIR.ceiling_C + CELSIUS_0_K,
};

/** @throws CrosscoatError `range`, naming the number, its limits and what to give. Finish, thinner and air are checked where they are made. */
export function checkToday(question: TodayQuestion): void {
  const within = (key: keyof typeof TODAY_LIMITS, words: string, size: number, unit: string) => {
    const [low, high] = TODAY_LIMITS[key];
    const value = question[key];
    if (value === null) return;
    // As typed, in the unit of the message; a hair over a limit is the changing of units.
    const shown = (number: number) => Number((number / size).toPrecision(9));
    checkRange({ name: `today: ${words}`, value: shown(value), low: shown(low), high: shown(high), unit, advice: `give ${words} within these` });
  };
  within('thinnerRatio', 'thinner to one of finish', 1, '');
  within('retarderFraction', 'retarder, share of the thinner', 0.01, '%');
  within('seconds', 'cup seconds', 1, 's');
  within('area_m2', 'area', 1, 'm²');
  within('dry_m', 'dry film wanted', 1e-6, 'µm');
  within('coats', 'coats', 1, '');
  within('tilt_rad', 'slope from level', Math.PI / 180, '°');
  within('sanded_m', 'film sanded off', 1e-6, 'µm');
  within('efficiencyFraction', 'share that lands', 0.01, '%');
  temperature('surface temperature', question.surface_K);
  temperature('temperature of the liquid', question.liquid_K);
  temperature('temperature this afternoon', question.afternoon_K);
  temperature('ceiling of the room', question.ceiling_K);
  cupById(question.cup);
}

function temperature(words: string, value_K: number | null): void {
  if (value_K === null) return;
  const [low, high] = TODAY_TEMPERATURES_C;
  checkRange({ name: `today: ${words}`, value: Number((value_K - CELSIUS_0_K).toPrecision(9)), low, high, unit: '°C', advice: 'give a temperature within these' });
}
