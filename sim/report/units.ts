import { CELSIUS_0_K, CUBIC_METRES_PER_US_FLUID_OUNCE, CUBIC_METRES_PER_US_GALLON, METRES_PER_FOOT, METRES_PER_INCH, METRES_PER_MIL } from '../base/units.ts';

/** What people read results in. Metric: µm, mm, mL, °C. US: mil, in, US fluid ounces, ft/min, °F. */
export type UnitSystem = 'metric' | 'us';

/** What a number measures, which fixes its unit in each system. */
export type Quantity = 'film' | 'length' | 'volume' | 'area' | 'speed' | 'temperature-step' | 'viscosity' | 'weight' | 'areal-weight' | 'panel-area' | 'liquid' | 'part-weight' | 'coverage' | 'room' | 'air-flow' | 'face';

/** A unit as shown: its name, and one of it in SI. */
export interface ShownUnit {
  readonly name: string;
  readonly size: number;
}

/** Avoirdupois, exact. */
const KILOGRAMS_PER_OUNCE = 0.028349523125;
export const KILOGRAMS_PER_POUND = 16 * KILOGRAMS_PER_OUNCE;

const UNITS: Readonly<Record<UnitSystem, Readonly<Record<Quantity, ShownUnit>>>> = {
  metric: {
    film: { name: 'µm', size: 1e-6 },
    length: { name: 'mm', size: 1e-3 },
    volume: { name: 'mL', size: 1e-6 },
    area: { name: 'cm²', size: 1e-4 },
    speed: { name: 'm/s', size: 1 },
    'temperature-step': { name: '°C', size: 1 },
    viscosity: { name: 'mPa s', size: 1e-3 },
    weight: { name: 'g', size: 1e-3 },
    'areal-weight': { name: 'g/m²', size: 1e-3 },
    'panel-area': { name: 'm²', size: 1 },
    liquid: { name: 'L', size: 1e-3 },
    'part-weight': { name: 'kg', size: 1 },
    coverage: { name: 'm²/L', size: 1e3 },
    room: { name: 'm³', size: 1 },
    'air-flow': { name: 'm³/h', size: 1 / 3600 },
    face: { name: 'm²', size: 1 },
  },
  us: {
    film: { name: 'mil', size: METRES_PER_MIL },
    length: { name: 'in', size: METRES_PER_INCH },
    volume: { name: 'fl oz US', size: CUBIC_METRES_PER_US_FLUID_OUNCE },
    area: { name: 'in²', size: METRES_PER_INCH ** 2 },
    speed: { name: 'ft/min', size: METRES_PER_FOOT / 60 },
    'temperature-step': { name: '°F', size: 5 / 9 },
    viscosity: { name: 'mPa s', size: 1e-3 },
    weight: { name: 'oz', size: KILOGRAMS_PER_OUNCE },
    'areal-weight': { name: 'oz/yd²', size: KILOGRAMS_PER_OUNCE / (3 * METRES_PER_FOOT) ** 2 },
    'panel-area': { name: 'ft²', size: METRES_PER_FOOT ** 2 },
    liquid: { name: 'US gal', size: CUBIC_METRES_PER_US_GALLON },
    'part-weight': { name: 'lb', size: KILOGRAMS_PER_POUND },
    coverage: { name: 'ft²/US gal', size: METRES_PER_FOOT ** 2 / CUBIC_METRES_PER_US_GALLON },
    room: { name: 'ft³', size: METRES_PER_FOOT ** 3 },
    'air-flow': { name: 'ft³/min', size: METRES_PER_FOOT ** 3 / 60 },
    face: { name: 'ft²', size: METRES_PER_FOOT ** 2 },
  },
};

/** Unit of a quantity in a system. */
export function shownUnit(quantity: Quantity, system: UnitSystem): ShownUnit {
  return UNITS[system][quantity];
}

/** A value in SI as a number in the reader's unit, without the unit's name; `?` where it is not finite. */
export function shownNumber(value: number, quantity: Quantity, system: UnitSystem): string {
  return roundedText(value / shownUnit(quantity, system).size);
}

/** A value in SI with its unit: `88 µm`. */
export function shown(value: number, quantity: Quantity, system: UnitSystem): string {
  return `${shownNumber(value, quantity, system)} ${shownUnit(quantity, system).name}`;
}

/** The quantity whose unit fits a volume of liquid: mL or US fluid ounces below a litre or a US quart, else L or US gallons. */
export function liquidQuantity(volume_m3: number, system: UnitSystem): Quantity {
  const isSmall = Math.abs(volume_m3) < (system === 'us' ? CUBIC_METRES_PER_US_GALLON / 4 : 1e-3) * (1 - 1e-9);
  return isSmall ? 'volume' : 'liquid';
}

/** A volume of liquid in the unit that fits it. */
export function shownLiquid(volume_m3: number, system: UnitSystem): string {
  return shown(volume_m3, liquidQuantity(volume_m3, system), system);
}

/** The quantity whose unit fits a weight on a part: grams below a kilogram; pounds whatever its size, since an ounce may be a volume. */
export function weightQuantity(weight_kg: number, system: UnitSystem): Quantity {
  return system === 'metric' && Math.abs(weight_kg) < 1 ? 'weight' : 'part-weight';
}

/** A weight on a part in the unit that fits it. */
export function shownWeight(weight_kg: number, system: UnitSystem): string {
  return shown(weight_kg, weightQuantity(weight_kg, system), system);
}

/** A place on the panel: `x 410, y 620 mm`. */
export function shownPlace(at_m: readonly [number, number], system: UnitSystem): string {
  return `x ${shownNumber(at_m[0], 'length', system)}, y ${shownNumber(at_m[1], 'length', system)} ${shownUnit('length', system).name}`;
}

/** A share in per cent to about three figures; never 100 % or 0 % by rounding alone. */
export function shownPercent(fraction: number): string {
  const percent = fraction * 100;
  if (!Number.isFinite(percent)) return '?';
  if (percent > 0 && percent < 0.1) return '<0.1 %';
  if (percent < 100 && percent >= 99.5) return percent < 99.9 ? `${percent.toFixed(1)} %` : '>99.9 %';
  return `${roundedText(percent)} %`;
}

/** A share to two figures, for what is known no better: `3 %`, `34 %`. */
export function shownRoughPercent(fraction: number): string {
  // Near all of it two figures would say 100 %.
  return shownPercent(fraction > 0.985 ? fraction : twoFigures(fraction));
}

/** A number to two figures. */
export function twoFigures(value: number): number {
  return Number(value.toPrecision(2));
}

/** What leaves the gun: `180 mL/min`. */
export function shownFluidRate(rate_m3_s: number, system: UnitSystem): string {
  return `${shown(rate_m3_s * 60, 'volume', system)}/min`;
}

/** An angle in whole degrees. */
export function shownAngle(angle_rad: number): string {
  return `${roundedText((angle_rad * 180) / Math.PI)}°`;
}

/** A time: `0.7 s`, `12.5 min`, `1.2 h`. */
export function shownTime(time_s: number): string {
  if (Math.abs(time_s) < 120) return `${roundedText(time_s)} s`;
  return Math.abs(time_s) < 7200 ? `${roundedText(time_s / 60)} min` : `${roundedText(time_s / 3600)} h`;
}

/** A temperature: `16.4 °C`. */
export function shownTemperature(kelvin: number, system: UnitSystem): string {
  const celsius = kelvin - CELSIUS_0_K;
  return system === 'us' ? `${oneDigit(celsius * 1.8 + 32)} °F` : `${oneDigit(celsius)} °C`;
}

/** A difference of temperatures: `2.1 °C`. */
export function shownTemperatureStep(kelvin: number, system: UnitSystem): string {
  return system === 'us' ? `${oneDigit(kelvin * 1.8)} °F` : `${oneDigit(kelvin)} °C`;
}

function oneDigit(value: number): string {
  if (!Number.isFinite(value)) return '?';
  const text = value.toFixed(1);
  return text === '-0.0' ? '0.0' : text;
}

/** Three figures: none behind the point from 100 up, one from 10, two from 1, three below; bare zeros are dropped. */
export function roundedText(value: number): string {
  if (!Number.isFinite(value)) return '?';
  const digits = Math.abs(value) >= 99.95 ? 0 : Math.abs(value) >= 9.995 ? 1 : Math.abs(value) >= 0.9995 ? 2 : 3;
  const text = value.toFixed(digits);
  const short = digits > 0 ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}
