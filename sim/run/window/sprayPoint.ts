import { saturationPressure_Pa } from '../../air/psychrometrics.ts';
import type { SprayPoint, WindowAxis } from '../../verdict/workingWindow.ts';
import type { CoatSetting } from '../result.ts';

export type { PointFilm, SprayPoint, WindowAxis, WindowFault } from '../../verdict/workingWindow.ts';

/** What may be turned, one axis of a window each. */
export const WINDOW_AXES = ['distance', 'speed', 'overlap', 'fluid', 'thinner', 'temperature', 'humidity'] as const satisfies readonly WindowAxis[];

/** The field of a point that an axis turns. */
const FIELDS = {
  distance: 'distance_m',
  speed: 'speed_m_s',
  overlap: 'overlapFraction',
  fluid: 'fluidRate_m3_s',
  thinner: 'thinnerRatio',
  temperature: 'temperature_K',
  humidity: 'humidityFraction',
} as const satisfies Record<WindowAxis, keyof SprayPoint>;

/** The coat as it is stated: its plan, its set-up's fluid, its mix and the day's air. */
export function statedPoint({ plan, setUp, mix, air }: CoatSetting): SprayPoint {
  return {
    distance_m: plan.distance_m,
    speed_m_s: plan.speed_m_s,
    overlapFraction: plan.overlapFraction,
    fluidRate_m3_s: setUp.fluidRate_m3_s,
    thinnerRatio: mix.thinnerRatio,
    temperature_K: air.temperature_K,
    humidityFraction: air.relativeHumidityFraction,
  };
}

/** Where a point stands on an axis, SI. */
export function axisValue(point: SprayPoint, axis: WindowAxis): number {
  return point[FIELDS[axis]];
}

/**
 * A point moved along one axis to a value, SI. Temperature is moved as a heater moves it: the water in the
 * air stays, so the relative humidity falls as the air warms (and stops at 1 where it cools to its dew
 * point). To turn both, set the temperature first.
 */
export function withAxis(point: SprayPoint, axis: WindowAxis, value: number): SprayPoint {
  if (axis !== 'temperature') return { ...point, [FIELDS[axis]]: value };
  const drier = saturationPressure_Pa(point.temperature_K) / saturationPressure_Pa(value);
  return { ...point, temperature_K: value, humidityFraction: Math.min(1, point.humidityFraction * drier) };
}
