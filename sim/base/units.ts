import { assertThat, CrosscoatError } from './errors.ts';

/** What a number measures. In SI: m, m², m³, m³/s, m/s, s, rad, K, and 1 for a ratio. */
export type QuantityName =
  | 'length'
  | 'area'
  | 'volume'
  | 'flow'
  | 'speed'
  | 'time'
  | 'angle'
  | 'temperature'
  | 'ratio';

/** A unit that people may type. `value in SI = (number + shift) · size`. */
export interface Unit {
  readonly quantity: QuantityName;
  /** The first name is shown; all are understood. */
  readonly names: readonly string[];
  readonly size: number;
  /** Added before scaling; temperatures only. */
  readonly shift?: number;
}

/**
 * Exact by definition (NIST Special Publication 811, 2008, appendix B): the inch is 25.4 mm, the US
 * gallon 231 cubic inches, the imperial gallon 4.546 09 L, 0 °C is 273.15 K.
 */
/** 0 °C in kelvin, exact. */
export const CELSIUS_0_K = 273.15;
/** One mm²/s, m²/s. */
export const M2_S_PER_MM2_S = 1e-6;
export const METRES_PER_INCH = 0.0254;
/** The pound-force to a square inch: 0.453 592 37 kg × 9.806 65 m/s² / (0.0254 m)², exact. */
export const PASCALS_PER_PSI = (0.45359237 * 9.80665) / METRES_PER_INCH ** 2;
export const METRES_PER_FOOT = 12 * METRES_PER_INCH;
export const METRES_PER_MIL = METRES_PER_INCH / 1000;
export const CUBIC_METRES_PER_US_GALLON = 231 * METRES_PER_INCH ** 3;
export const CUBIC_METRES_PER_US_FLUID_OUNCE = CUBIC_METRES_PER_US_GALLON / 128;
const CUBIC_METRES_PER_IMPERIAL_GALLON = 4.54609e-3;

/** All units understood, those shown in messages first within their quantity. */
export const UNITS: readonly Unit[] = [
  { quantity: 'length', names: ['mm'], size: 1e-3 },
  { quantity: 'length', names: ['cm'], size: 1e-2 },
  { quantity: 'length', names: ['m', 'metre', 'metres'], size: 1 },
  { quantity: 'length', names: ['in', '"', 'inch', 'inches'], size: METRES_PER_INCH },
  { quantity: 'length', names: ['ft', "'", 'foot', 'feet'], size: METRES_PER_FOOT },
  { quantity: 'length', names: ['µm', 'um', 'micron', 'microns'], size: 1e-6 },
  { quantity: 'length', names: ['mil', 'mils', 'thou'], size: METRES_PER_MIL },
  { quantity: 'area', names: ['m²'], size: 1 },
  { quantity: 'area', names: ['cm²'], size: 1e-4 },
  { quantity: 'area', names: ['mm²'], size: 1e-6 },
  { quantity: 'area', names: ['ft²', 'sq ft'], size: METRES_PER_FOOT ** 2 },
  { quantity: 'area', names: ['in²', 'sq in'], size: METRES_PER_INCH ** 2 },
  { quantity: 'volume', names: ['mL', 'cc', 'cm³'], size: 1e-6 },
  { quantity: 'volume', names: ['L', 'litre', 'litres'], size: 1e-3 },
  { quantity: 'volume', names: ['m³'], size: 1 },
  { quantity: 'volume', names: ['ft³', 'cu ft'], size: METRES_PER_FOOT ** 3 },
  { quantity: 'volume', names: ['US fl oz', 'fl oz US'], size: CUBIC_METRES_PER_US_FLUID_OUNCE },
  { quantity: 'volume', names: ['US pt', 'US pint', 'US pints'], size: CUBIC_METRES_PER_US_GALLON / 8 },
  { quantity: 'volume', names: ['US qt', 'US quart', 'US quarts'], size: CUBIC_METRES_PER_US_GALLON / 4 },
  { quantity: 'volume', names: ['US gal'], size: CUBIC_METRES_PER_US_GALLON },
  { quantity: 'volume', names: ['imp fl oz'], size: CUBIC_METRES_PER_IMPERIAL_GALLON / 160 },
  { quantity: 'volume', names: ['imp pt', 'imp pint', 'imp pints'], size: CUBIC_METRES_PER_IMPERIAL_GALLON / 8 },
  { quantity: 'volume', names: ['imp qt', 'imp quart', 'imp quarts'], size: CUBIC_METRES_PER_IMPERIAL_GALLON / 4 },
  { quantity: 'volume', names: ['imp gal'], size: CUBIC_METRES_PER_IMPERIAL_GALLON },
  { quantity: 'flow', names: ['mL/min', 'cc/min'], size: 1e-6 / 60 },
  { quantity: 'flow', names: ['L/min'], size: 1e-3 / 60 },
  { quantity: 'flow', names: ['US fl oz/min', 'fl oz US/min'], size: CUBIC_METRES_PER_US_FLUID_OUNCE / 60 },
  { quantity: 'flow', names: ['m³/h'], size: 1 / 3600 },
  { quantity: 'flow', names: ['ft³/min', 'cfm', 'cu ft/min'], size: METRES_PER_FOOT ** 3 / 60 },
  { quantity: 'speed', names: ['m/s'], size: 1 },
  { quantity: 'speed', names: ['mm/s'], size: 1e-3 },
  { quantity: 'speed', names: ['m/min'], size: 1 / 60 },
  { quantity: 'speed', names: ['ft/s'], size: METRES_PER_FOOT },
  { quantity: 'speed', names: ['in/s'], size: METRES_PER_INCH },
  { quantity: 'speed', names: ['ft/min'], size: METRES_PER_FOOT / 60 },
  { quantity: 'time', names: ['s'], size: 1 },
  { quantity: 'time', names: ['ms'], size: 1e-3 },
  { quantity: 'time', names: ['min'], size: 60 },
  { quantity: 'time', names: ['h'], size: 3600 },
  { quantity: 'angle', names: ['°', 'deg', 'degrees'], size: Math.PI / 180 },
  { quantity: 'angle', names: ['rad'], size: 1 },
  { quantity: 'temperature', names: ['°C', 'C'], size: 1, shift: CELSIUS_0_K },
  { quantity: 'temperature', names: ['°F', 'F'], size: 5 / 9, shift: (CELSIUS_0_K * 9) / 5 - 32 },
  { quantity: 'ratio', names: ['%', 'percent'], size: 0.01 },
];

/** Ounces, pints, quarts and gallons without a country: ounces differ by 4 %, the others by 20 %, and an ounce may be a weight. */
const UNNAMED_COUNTRY = /^(?:fl ?oz|oz|ounces?|pts?|pints?|qts?|quarts?|gal|gallons?)(?:\/min)?$/i;

/** A fraction (`1/2`, `3 5/8`, `3-5/8`) or a decimal number, then the unit's name. */
const TYPED = /^([+-]?)(?:(?:(\d+)(?: +|-))?(\d+) ?\/ ?(\d+)|(\d+\.?\d*(?:e[+-]?\d+)?|\.\d+(?:e[+-]?\d+)?)) *([^\d.\s].*)?$/i;

/**
 * Reads a number as typed, with or without a unit: `8 in`, `200`, `1/2 in`, `3 5/8"`, `7.9in`.
 * @param defaultUnit name of the unit of a bare number; for a ratio, '' says that it is a fraction.
 * @returns the value in SI.
 * @throws CrosscoatError `unit` for a text that is no number, a comma (decimal here, thousands
 * there), a unit of another quantity, or ounces, pints, quarts and gallons of no named country.
 */
export function parseQuantity(text: string, quantity: QuantityName, defaultUnit: string): number {
  const plain = plainText(text);
  const quoted = `"${text.length > 40 ? `${text.slice(0, 39)}…` : text}"`;
  if (plain.includes(',')) {
    throw new CrosscoatError('unit', `${quoted} holds a comma, which means decimals in some places and thousands in others; write 1.5 or 1500`);
  }
  const parts = TYPED.exec(plain);
  const number = parts === null ? NaN : numberOf(parts);
  if (parts === null || !Number.isFinite(number)) {
    throw new CrosscoatError('unit', `${quoted} is not ${article(quantity)}; give a number, with or without one of ${unitList(quantity)}`);
  }
  const name = (parts[6] ?? defaultUnit).trim();
  if (name === '' && quantity === 'ratio') return number;
  if (UNNAMED_COUNTRY.test(name)) {
    throw new CrosscoatError('unit', `${quoted} may be US or imperial; write US or imp before it: US fl oz, US pt, US qt, US gal, imp fl oz, imp pt, imp qt or imp gal`);
  }
  const unit = UNITS.find((each) => each.quantity === quantity && each.names.some((known) => sameName(known, name)));
  if (unit === undefined) {
    throw new CrosscoatError('unit', `${quoted} is not ${article(quantity)}; give ${unitList(quantity)}`);
  }
  return (number + (unit.shift ?? 0)) * unit.size;
}

/** How many SI units one of a named unit is, for units without a shift. @throws CrosscoatError `internal` for an unknown name. */
export function unitSize(quantity: QuantityName, name: string): number {
  const unit = UNITS.find((each) => each.quantity === quantity && each.names.includes(name));
  assertThat(unit !== undefined && unit.shift === undefined, `unitSize: no plain unit ${name} of ${quantity}`);
  return unit.size;
}

/** One spelling for signs that keyboards and word processors write in several ways. */
function plainText(text: string): string {
  return text
    .replace(/[¼½¾⅛⅜⅝⅞]/g, ' $&')
    .normalize('NFKC')
    .replaceAll('⁄', '/')
    .replaceAll(/′′|''|”|“/g, '"')
    .replaceAll('−', '-')
    .trim();
}

function numberOf(parts: RegExpExecArray): number {
  const [, sign, whole, above, below, decimal] = parts;
  const size = decimal === undefined ? Number(whole ?? 0) + Number(above) / Number(below) : Number(decimal);
  return sign === '-' ? -size : size;
}

/** Letter case and spaces do not tell units apart, but for M and m, which differ a thousandfold elsewhere. */
function sameName(known: string, name: string): boolean {
  const plain = (word: string): string => plainText(word).replaceAll(/\s+/g, ' ').toLowerCase();
  return known === name || plain(known) === plain(name);
}

function article(quantity: QuantityName): string {
  return quantity === 'area' || quantity === 'angle' ? `an ${quantity}` : `a ${quantity}`;
}

/** `mm, cm or m` for a message. */
function unitList(quantity: QuantityName): string {
  const names = UNITS.filter((unit) => unit.quantity === quantity).map((unit) => unit.names[0] as string);
  const last = names.pop() as string;
  return names.length === 0 ? last : `${names.join(', ')} or ${last}`;
}
