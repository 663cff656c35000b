// The package brings no types, and every TypeScript project that reads this file must find ours.
// eslint-disable-next-line @typescript-eslint/triple-slash-reference -- an ambient module cannot be imported
/// <reference path="./psychrolib.d.ts" />
import psychrolib from 'psychrolib';
import { CELSIUS_0_K } from '../base/units.ts';


// The package keeps one unit system for all its callers; nobody else calls it.
psychrolib.SetUnitSystem(psychrolib.SI);

/**
 * Pressure of saturated water vapour, over ice below the triple point, Pa; 173.15 to 473.15 K.
 * ASHRAE Handbook - Fundamentals (2017) ch. 1, eq. 5 and 6 (Hyland and Wexler 1983).
 */
export function saturationPressure_Pa(temperature_K: number): number {
  return psychrolib.GetSatVapPres(temperature_K - CELSIUS_0_K);
}

/** Kilograms of water to one of dry air, from the vapour's pressure; ch. 1, eq. 20. */
export function humidityRatio(vapour_Pa: number, pressure_Pa: number): number {
  return psychrolib.GetHumRatioFromVapPres(vapour_Pa, pressure_Pa);
}

/** The vapour's pressure, Pa, from kilograms of water to one of dry air; ch. 1, eq. 20. */
export function vapourFromRatio_Pa(ratio: number, pressure_Pa: number): number {
  return psychrolib.GetVapPresFromHumRatio(ratio, pressure_Pa);
}

/** Dew (or frost) point, K, within 0.001 K, by inverting eq. 5 and 6. */
export function dewPoint_K(temperature_K: number, vapour_Pa: number): number {
  return psychrolib.GetTDewPointFromVapPres(temperature_K - CELSIUS_0_K, vapour_Pa) + CELSIUS_0_K;
}

/** Wet bulb, K, within 0.001 K; ch. 1, eq. 33 and 35. */
export function wetBulb_K(temperature_K: number, ratio: number, pressure_Pa: number): number {
  return psychrolib.GetTWetBulbFromHumRatio(temperature_K - CELSIUS_0_K, ratio, pressure_Pa) + CELSIUS_0_K;
}

/** Kilograms of water to one of dry air, from dry and wet bulb; ch. 1, eq. 33 and 35. */
export function ratioFromWetBulb(temperature_K: number, wetBulb_K: number, pressure_Pa: number): number {
  return psychrolib.GetHumRatioFromTWetBulb(temperature_K - CELSIUS_0_K, wetBulb_K - CELSIUS_0_K, pressure_Pa);
}

/** Pressure of the standard atmosphere at a height above the sea, Pa; ch. 1, eq. 3. */
export function standardPressure_Pa(altitude_m: number): number {
  return psychrolib.GetStandardAtmPressure(altitude_m);
}
