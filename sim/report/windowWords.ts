import { CELSIUS_0_K } from '../base/units.ts';
import type { SprayPoint, WindowAxis, WindowFault } from '../verdict/workingWindow.ts';
import { roundedText, shown, shownFluidRate, shownPercent, shownTemperature, shownTemperatureStep, shownUnit, type UnitSystem } from './units.ts';
import { FAULT_WORDS } from './words.ts';

/** An axis in words, and its name and unit in JSON. */
export interface AxisWords {
  readonly title: string;
  /** Behind an amount: `25 mm farther`. */
  readonly less: string;
  readonly more: string;
  readonly key: string;
  /** One of the unit of `key`, SI; `zero` is added to an SI value first. */
  readonly size: number;
  readonly zero: number;
}

/** The axes of a window in the trade's words. */
export const AXIS_WORDS: Readonly<Record<WindowAxis, AxisWords>> = {
  distance: { title: 'distance', less: 'closer', more: 'farther', key: 'distance_mm', size: 1e-3, zero: 0 },
  speed: { title: 'speed', less: 'slower', more: 'faster', key: 'speed_m_s', size: 1, zero: 0 },
  overlap: { title: 'overlap', less: 'less overlap', more: 'more overlap', key: 'overlap_percent', size: 0.01, zero: 0 },
  fluid: { title: 'fluid rate', less: 'less fluid', more: 'more fluid', key: 'fluidRate_mL_min', size: 1e-6 / 60, zero: 0 },
  thinner: { title: 'thinner to one of finish', less: 'less thinner', more: 'more thinner', key: 'thinnerPerFinish', size: 1, zero: 0 },
  temperature: { title: 'air temperature', less: 'colder', more: 'warmer', key: 'temperature_C', size: 1, zero: -CELSIUS_0_K },
  humidity: { title: 'relative humidity', less: 'drier air', more: 'damper air', key: 'humidity_percent', size: 0.01, zero: 0 },
};

/** A place on an axis with its unit: `200 mm`, `0.36 m/s`, `50 %`. */
export function shownOnAxis(axis: WindowAxis, value: number, system: UnitSystem): string {
  switch (axis) {
    case 'distance':
      return shown(value, 'length', system);
    case 'speed':
      return shown(value, 'speed', system);
    case 'overlap':
    case 'humidity':
      return shownPercent(value);
    case 'fluid':
      return shownFluidRate(value, system);
    case 'thinner':
      return roundedText(value);
    case 'temperature':
      return shownTemperature(value, system);
  }
}

/** A length along an axis, without its direction: `25 mm`, `10 points`, `3.0 °C`. */
export function shownSpan(axis: WindowAxis, by: number, system: UnitSystem): string {
  switch (axis) {
    case 'overlap':
    case 'humidity':
      return `${roundedText(by * 100)} points`;
    case 'temperature':
      return shownTemperatureStep(by, system);
    case 'distance':
    case 'speed':
    case 'fluid':
    case 'thinner':
      return shownOnAxis(axis, by, system);
  }
}

/** What lies beyond a window's rim. */
export function limitWords(limit: WindowFault | 'distance-range' | 'plane'): string {
  if (limit === 'distance-range') return 'the end of the distances measured';
  return limit === 'plane' ? 'the end of this map' : FAULT_WORDS[limit];
}

/** A way to lay a coat: `200 mm, 0.36 m/s, 50 % overlap, 180 mL/min`. */
export function pointWords(point: Pick<SprayPoint, 'distance_m' | 'speed_m_s' | 'overlapFraction' | 'fluidRate_m3_s'>, system: UnitSystem): string {
  return `${shown(point.distance_m, 'length', system)}, ${shown(point.speed_m_s, 'speed', system)}, ${shownPercent(point.overlapFraction)} overlap, ${shownFluidRate(point.fluidRate_m3_s, system)}`;
}

/** An axis's name with its unit, and an SI value as a number in that unit. */
export function axisShown(axis: WindowAxis, system: UnitSystem): { readonly title: string; readonly toShown: (value: number) => number } {
  const [unit, size, zero] = axisUnit(axis, system);
  return { title: unit === '' ? AXIS_WORDS[axis].title : `${AXIS_WORDS[axis].title}, ${unit}`, toShown: (value) => (value + zero) / size };
}

function axisUnit(axis: WindowAxis, system: UnitSystem): readonly [unit: string, size: number, zero: number] {
  switch (axis) {
    case 'distance':
    case 'speed': {
      const { name, size } = shownUnit(axis === 'distance' ? 'length' : 'speed', system);
      return [name, size, 0];
    }
    case 'fluid': {
      const { name, size } = shownUnit('volume', system);
      return [`${name}/min`, size / 60, 0];
    }
    case 'overlap':
    case 'humidity':
      return ['%', 0.01, 0];
    case 'thinner':
      return ['', 1, 0];
    case 'temperature':
      return system === 'us' ? ['°F', 5 / 9, 32 * (5 / 9) - CELSIUS_0_K] : ['°C', 1, -CELSIUS_0_K];
  }
}
