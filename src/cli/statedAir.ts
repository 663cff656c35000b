import { CELSIUS_0_K, CrosscoatError, USUAL_AIR, type AirSpec } from '../../sim/index.ts';
import { quantityOf } from './optionValues.ts';

/** Options that state the air of a room. */
export interface AirWords {
  readonly temp: string;
  readonly rh: string;
  readonly altitude?: string;
  readonly speed?: string;
}


/** The air that the options state. @throws `unit`, naming the option. */
export function statedAir({ temp, rh, altitude, speed }: AirWords): AirSpec {
  return {
    temperature_C: statedTemperature_C('--temp', temp),
    humidity_percent: statedHumidity_percent(rh),
    altitude_m: altitude === undefined ? USUAL_AIR.altitude_m : quantityOf('--altitude', altitude, ['length', 'm', '300m or 1000ft']),
    speed_m_s: speed === undefined ? USUAL_AIR.speed_m_s : quantityOf('--speed', speed, ['speed', 'm/s', '0.5m/s or 100ft/min']),
    ceiling_C: USUAL_AIR.ceiling_C,
  };
}

/** A temperature of an option, °C. @throws `unit`, naming the option. */
export function statedTemperature_C(option: string, text: string): number {
  return tidy(quantityOf(option, text, ['temperature', '°C', '21C or 70F']) - CELSIUS_0_K);
}

function statedHumidity_percent(text: string): number {
  const percent = tidy(quantityOf('--rh', text, ['ratio', '%', '65%']) * 100);
  if (percent === 0 || percent > 1 || text.includes('%')) return percent;
  throw new CrosscoatError('unit', `--rh = "${text}" may mean ${percent} % or ${tidy(percent * 100)} %; write the % sign`);
}

/** Without the last digits that changing the unit leaves. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
