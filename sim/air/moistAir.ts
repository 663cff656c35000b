import { CELSIUS_0_K } from '../base/units.ts';
import { checkRange } from '../base/check.ts';
import type { Warning } from '../base/errors.ts';
import type { AirSpec } from '../job/schema.ts';
import { dewPoint_K, humidityRatio, saturationPressure_Pa, standardPressure_Pa, vapourFromRatio_Pa, wetBulb_K } from './psychrometrics.ts';
import { tradeWindowWarnings } from './tradeWindows.ts';

/** No room is drier; a dew point of no water at all does not exist. */
export const LEAST_HUMIDITY = 0.001;

/** The air of the room. */
export interface MoistAir {
  readonly temperature_K: number;
  /** Relative humidity, 0.001 to 1. */
  readonly relativeHumidityFraction: number;
  readonly pressure_Pa: number;
  readonly dewPoint_K: number;
  readonly wetBulb_K: number;
  /** Kilograms of water to one of dry air. */
  readonly humidityRatio: number;
  /** Over the panel, as stated; 0 to 5 m/s. */
  readonly speed_m_s: number;
  readonly warnings: readonly Warning[];
}

/**
 * The air as stated, with dew point, wet bulb and the pressure of its height; warnings say where
 * it is drier than 0.1 %, below freezing, or outside the windows that the trade publishes.
 * @param pointer JSON pointer of the air, for messages.
 * @throws CrosscoatError `range` for a temperature outside -20 to 60 °C, a humidity outside 0 to
 * 100 %, a height outside -400 to 5000 m, or a speed outside 0 to 5 m/s.
 */
export function makeAir(spec: AirSpec, pointer: string): MoistAir {
  const place = { pointer };
  checkRange({ name: `${pointer}: temperature`, value: spec.temperature_C, low: -20, high: 60, unit: '°C', advice: 'give the temperature of the room', place });
  checkRange({ name: `${pointer}: humidity`, value: spec.humidity_percent, low: 0, high: 100, unit: '%', advice: 'give the relative humidity of the room', place });
  checkRange({ name: `${pointer}: altitude`, value: spec.altitude_m, low: -400, high: 5000, unit: 'm', advice: 'give the height above the sea', place });
  checkRange({ name: `${pointer}: air speed`, value: spec.speed_m_s, low: 0, high: 5, unit: 'm/s', advice: 'give the speed of the air over the panel', place });
  const temperature_K = spec.temperature_C + CELSIUS_0_K;
  const stated = spec.humidity_percent / 100;
  const humidity = Math.max(stated, LEAST_HUMIDITY);
  const pressure_Pa = standardPressure_Pa(spec.altitude_m);
  const ratio = humidityRatio(humidity * saturationPressure_Pa(temperature_K), pressure_Pa);
  return airOf(temperature_K, ratio, pressure_Pa, spec.speed_m_s, [
    ...(stated < LEAST_HUMIDITY ? [dryWarning(spec.humidity_percent, pointer)] : []),
    ...tradeWindowWarnings(temperature_K, stated, pointer),
  ]);
}

/**
 * The same air warmed (or cooled, down to its dew point): same moisture, pressure and speed. No
 * heater adds water. The warnings are those of the air as it was stated.
 * @throws CrosscoatError `range` below the dew point, where water would fall out, or above 60 °C.
 */
export function heatedAir(air: MoistAir, temperature_K: number): MoistAir {
  checkRange({
    name: 'heatedAir: temperature', value: temperature_K - CELSIUS_0_K, low: air.dewPoint_K - CELSIUS_0_K, high: 60, unit: '°C',
    why: 'colder than its dew point the air loses water', advice: 'give a temperature above the dew point',
  });
  return airOf(temperature_K, air.humidityRatio, air.pressure_Pa, air.speed_m_s, air.warnings);
}

/**
 * Air of a temperature and a moisture at the pressure and speed of another; moisture that such air cannot hold is taken
 * as fallen out: saturated. Without warnings.
 * @param ratio kilograms of water to one of dry air.
 */
export function airWithMoisture(temperature_K: number, ratio: number, { pressure_Pa, speed_m_s }: Pick<MoistAir, 'pressure_Pa' | 'speed_m_s'>): MoistAir {
  const most = humidityRatio(saturationPressure_Pa(temperature_K), pressure_Pa);
  return airOf(temperature_K, Math.min(ratio, most), pressure_Pa, speed_m_s, []);
}

function airOf(temperature_K: number, ratio: number, pressure_Pa: number, speed_m_s: number, warnings: readonly Warning[]): MoistAir {
  const vapour_Pa = vapourFromRatio_Pa(ratio, pressure_Pa);
  return {
    temperature_K,
    relativeHumidityFraction: Math.min(1, vapour_Pa / saturationPressure_Pa(temperature_K)),
    pressure_Pa,
    dewPoint_K: dewPoint_K(temperature_K, vapour_Pa),
    wetBulb_K: wetBulb_K(temperature_K, ratio, pressure_Pa),
    humidityRatio: ratio,
    speed_m_s,
    warnings,
  };
}

function dryWarning(humidity_percent: number, pointer: string): Warning {
  return {
    code: 'model-limit',
    text: `Humidity ${humidity_percent} % is taken as ${LEAST_HUMIDITY * 100} %: no room is drier, and air without water has no dew point.`,
    place: { pointer: `${pointer}/humidity_percent` },
  };
}
