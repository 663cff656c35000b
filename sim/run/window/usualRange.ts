import { CELSIUS_0_K } from '../../base/units.ts';
import { MOST_THINNER } from '../../mix/makeMix.ts';
import type { CoatSetting } from '../result.ts';
import { axisValue, statedPoint, type WindowAxis } from './sprayPoint.ts';

/** Speeds that a hand keeps, m/s. Common practice: 0.2 to 0.6; shown a little beyond. */
const SPEEDS_M_S = [0.15, 0.8] as const;
/** Assumed: less leaves lanes with any tapering fan, more wastes strokes. */
const OVERLAPS = [0.2, 0.8] as const;
/** Of the stated rate. Assumed: what a needle is opened and closed by without another nozzle. */
const FLUID_RATIOS = [0.5, 1.6] as const;
/** Rooms in which somebody sprays, °C, and their humidity. Assumed. */
const TEMPERATURES_C = [10, 35] as const;
const HUMIDITIES = [0.2, 0.9] as const;
/** Thinner is shown from none to this many times the stated, or to one to one. Assumed. */
const THINNER_RATIO = 2;

/**
 * The range of an axis that is worth looking at, SI, wide enough that the stated point lies inside by a
 * tenth of it: for distance what the set-up may be believed for, and no more.
 */
export function usualRange(setting: CoatSetting, axis: WindowAxis): readonly [low: number, high: number] {
  const stated = axisValue(statedPoint(setting), axis);
  switch (axis) {
    case 'distance':
      return setting.setUp.distanceRange_m;
    case 'speed':
      return around(stated, SPEEDS_M_S[0], SPEEDS_M_S[1], 0.01, 5);
    case 'overlap':
      return around(stated, OVERLAPS[0], OVERLAPS[1], 0, 0.95);
    case 'fluid':
      return [FLUID_RATIOS[0] * stated, FLUID_RATIOS[1] * stated];
    case 'thinner':
      return [0, Math.min(MOST_THINNER, Math.max(1, THINNER_RATIO * stated))];
    case 'temperature':
      return around(stated, TEMPERATURES_C[0] + CELSIUS_0_K, TEMPERATURES_C[1] + CELSIUS_0_K, CELSIUS_0_K - 20, CELSIUS_0_K + 60);
    case 'humidity':
      return around(stated, HUMIDITIES[0], HUMIDITIES[1], 0, 1);
  }
}

/** A range widened so that a value lies inside it by a tenth, as far as limits allow. */
function around(value: number, low: number, high: number, least: number, most: number): readonly [number, number] {
  const tenth = 0.1 * (high - low);
  return [Math.max(least, Math.min(low, value - tenth)), Math.min(most, Math.max(high, value + tenth))];
}
