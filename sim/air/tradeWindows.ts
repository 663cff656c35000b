import { CELSIUS_0_K } from '../base/units.ts';
import type { Warning } from '../base/errors.ts';

/** 60 and 90 °F. */
const COLD_K = (60 - 32) / 1.8 + CELSIUS_0_K;
const HOT_K = (90 - 32) / 1.8 + CELSIUS_0_K;
const HUMID = 0.75;

/**
 * Advice where the air lies outside what the trade publishes. The outer window used here, 60 to
 * 90 °F and up to 75 %, is the narrowest that the sources below agree to call workable.
 */
export function tradeWindowWarnings(temperature_K: number, humidityFraction: number, pointer: string): Warning[] {
  const doubts: Warning[] = [];
  const add = (key: string, text: string) => doubts.push({ code: 'model-limit', text, place: { pointer: `${pointer}/${key}` } });
  if (temperature_K < CELSIUS_0_K) {
    add('temperature_C', 'The air is below freezing: no source allows spraying, and the solvent data are extrapolated.');
  }
  if (temperature_K < COLD_K) {
    add('temperature_C', 'The air is colder than 60 °F (15.6 °C), below which the FAA airframe handbook expects blushing; AC 43.13-1B 2-21 asks for 65 to 75 °F.');
  } else if (temperature_K > HOT_K) {
    add('temperature_C', 'The air is warmer than 90 °F (32.2 °C), the most that TM 55-1500-345-23 allows; AC 43.13-1B 2-21 asks for 65 to 75 °F.');
  }
  if (humidityFraction > HUMID) {
    add('humidity_percent', 'The air is more humid than 75 %, the most that TM 55-1500-345-23 allows; AC 43.13-1B 2-21 asks for less than 65 %, and the FAA airframe handbook expects blushing from 80 %.');
  }
  return doubts;
}
