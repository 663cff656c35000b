import { CrosscoatError, parseQuantity, shownUnit, unitSize, type QuantityName, type UnitSystem } from '../../sim/index.ts';

/**
 * How a key of the job is typed and shown: the file's unit and a US reader's, both of one quantity.
 * Without a quantity the number is in the file's unit for every reader.
 */
interface KeyUnit {
  readonly quantity: QuantityName | null;
  readonly fileName: string;
  readonly usName: string;
}

/** A unit that converts to no other. */
function fixed(name: string): KeyUnit {
  return { quantity: null, fileName: name, usName: name };
}

/** By suffix of the key, longest suffix first. */
const KEY_UNITS: readonly (readonly [suffix: string, unit: KeyUnit])[] = [
  ['_mL_min', { quantity: 'flow', fileName: 'mL/min', usName: 'fl oz US/min' }],
  ['_kg_m3', fixed('kg/m³')],
  ['_m3_h', { quantity: 'flow', fileName: 'm³/h', usName: 'ft³/min' }],
  ['_m3', { quantity: 'volume', fileName: 'm³', usName: 'ft³' }],
  ['_g_m2', fixed('g/m²')],
  ['_g_L', fixed('g/L')],
  ['_per_mm', fixed('1/mm')],
  ['_cm2', { quantity: 'area', fileName: 'cm²', usName: 'in²' }],
  ['_m2', { quantity: 'area', fileName: 'm²', usName: 'ft²' }],
  ['_m_s', { quantity: 'speed', fileName: 'm/s', usName: 'ft/min' }],
  ['_mPa_s', fixed('mPa s')],
  ['_kPa', fixed('kPa')],
  ['percent', { quantity: 'ratio', fileName: '%', usName: '%' }],
  ['_deg', { quantity: 'angle', fileName: '°', usName: '°' }],
  ['Diameter_um', { quantity: 'length', fileName: 'µm', usName: 'µm' }],
  ['_um', { quantity: 'length', fileName: 'µm', usName: 'mil' }],
  ['_mm', { quantity: 'length', fileName: 'mm', usName: 'in' }],
  ['_mL', { quantity: 'volume', fileName: 'mL', usName: 'fl oz US' }],
  ['_ms', { quantity: 'time', fileName: 'ms', usName: 'ms' }],
  ['seconds', { quantity: 'time', fileName: 's', usName: 's' }],
  ['_min', { quantity: 'time', fileName: 'min', usName: 'min' }],
  ['_h', { quantity: 'time', fileName: 'h', usName: 'h' }],
  ['_m', { quantity: 'length', fileName: 'm', usName: 'ft' }],
  ['_s', { quantity: 'time', fileName: 's', usName: 's' }],
  // Shop scales read grams in both systems, and an ounce may be a volume.
  ['_g', fixed('g')],
  ['_C', { quantity: 'temperature', fileName: '°C', usName: '°F' }],
];

/** Enough figures that showing and typing back moves a value by less than a part in ten thousand. */
const FIGURES = 5;

/** What a computer leaves of a zero that a temperature's shift should make. */
const ZERO_REST = 1e-9;

/** Null for a plain number. */
function keyUnit(key: string): KeyUnit | null {
  return KEY_UNITS.find(([suffix]) => key.endsWith(suffix))?.[1] ?? null;
}

/** The name of the unit in which the reader reads a key, empty for a plain number. */
export function unitOfKey(key: string, system: UnitSystem): string {
  const unit = keyUnit(key);
  if (unit === null) return '';
  return system === 'us' ? unit.usName : unit.fileName;
}

/** What a key states, as a message would call it. */
const KINDS: Readonly<Partial<Record<QuantityName, string>>> = {
  flow: 'a rate', volume: 'a volume', speed: 'a speed', ratio: 'a percentage', angle: 'an angle', length: 'a length', time: 'a time',
  temperature: 'a temperature',
};

export function kindOfKey(key: string): string {
  const unit = keyUnit(key);
  return (unit === null || unit.quantity === null ? undefined : KINDS[unit.quantity]) ?? 'a number';
}

/** A unit in SI: where its zero lies and how large one of it is. Only temperatures have a zero of their own. */
interface Scale {
  readonly zero: number;
  readonly size: number;
}

function scaleOf(quantity: QuantityName, name: string): Scale {
  if (quantity !== 'temperature') return { zero: 0, size: unitSize(quantity, name) };
  const zero = parseQuantity('0', quantity, name);
  return { zero, size: parseQuantity('1', quantity, name) - zero };
}

/** A value in the file's unit as the reader would type it, without the unit. */
export function typedText(value: number, key: string, system: UnitSystem): string {
  const unit = keyUnit(key);
  if (unit === null || unit.quantity === null || system === 'metric' || unit.usName === unit.fileName) {
    return String(Number(value.toPrecision(Number.isInteger(value) ? 12 : FIGURES)));
  }
  const [file, reader] = [scaleOf(unit.quantity, unit.fileName), scaleOf(unit.quantity, unit.usName)];
  const shown = (value * file.size + file.zero - reader.zero) / reader.size;
  // The difference of two zeros leaves a rest of about 1e-13 beside a plain 0.
  return String(Number((Math.abs(shown) < ZERO_REST ? 0 : shown).toPrecision(FIGURES)));
}

/**
 * A number as typed, with or without a unit behind it: `8 in` in a field of millimetres is 203.2.
 * Without a unit it is in the reader's own.
 * @returns the value in the file's unit, or what is wrong in words.
 */
export function readTyped(text: string, key: string, system: UnitSystem): { readonly value: number } | { readonly problem: string } {
  if (text.trim() === '') return { problem: 'Nothing is typed here; give a number' };
  const unit = keyUnit(key);
  if (unit === null || unit.quantity === null) return readPlain(text, unit?.fileName ?? '');
  try {
    const file = scaleOf(unit.quantity, unit.fileName);
    const value = (parseQuantity(text, unit.quantity, unitOfKey(key, system)) - file.zero) / file.size;
    // A converted value is kept to twelve figures, so that 8 in is 203.2 and not 203.20000000000002.
    return { value: Math.abs(value) < ZERO_REST && file.zero !== 0 ? 0 : Number(value.toPrecision(12)) };
  } catch (error) {
    if (error instanceof CrosscoatError) return { problem: error.message };
    throw error;
  }
}

/** A number without a unit, or with the one name it may have behind it. */
function readPlain(text: string, unitName: string): { readonly value: number } | { readonly problem: string } {
  const bare = unitName === '' || !text.trim().endsWith(unitName) ? text.trim() : text.trim().slice(0, -unitName.length).trim();
  const value = bare === '' ? NaN : Number(bare);
  if (Number.isFinite(value)) return { value };
  return { problem: `"${text.trim()}" is not a number; this one ${unitName === '' ? 'has no unit' : `is in ${unitName}`}` };
}

/** Round numbers for a ruler and a section in the reader's unit: name and metres of one. */
export function rulerUnit(system: UnitSystem): { readonly unit_m: number; readonly unitName: string } {
  const { name, size } = shownUnit('length', system);
  return { unit_m: size, unitName: name };
}
