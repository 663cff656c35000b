import { CrosscoatError, parseQuantity, shownUnit, unitSize, type QuantityName, type UnitSystem } from '../../sim/index.ts';

/** How a key of the job is typed and shown: the file's unit and a US reader's, both of one quantity. */
interface KeyUnit {
  readonly quantity: QuantityName;
  readonly fileName: string;
  readonly usName: string;
}

/** By suffix of the key, longest suffix first. */
const KEY_UNITS: readonly (readonly [suffix: string, unit: KeyUnit])[] = [
  ['_mL_min', { quantity: 'flow', fileName: 'mL/min', usName: 'fl oz US/min' }],
  ['_m_s', { quantity: 'speed', fileName: 'm/s', usName: 'ft/min' }],
  ['_percent', { quantity: 'ratio', fileName: '%', usName: '%' }],
  ['_deg', { quantity: 'angle', fileName: '°', usName: '°' }],
  ['Diameter_um', { quantity: 'length', fileName: 'µm', usName: 'µm' }],
  ['_um', { quantity: 'length', fileName: 'µm', usName: 'mil' }],
  ['_mm', { quantity: 'length', fileName: 'mm', usName: 'in' }],
  ['_ms', { quantity: 'time', fileName: 'ms', usName: 'ms' }],
];

/** Enough figures that showing and typing back moves a value by less than a part in ten thousand. */
const FIGURES = 5;

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
  flow: 'a rate', speed: 'a speed', ratio: 'a percentage', angle: 'an angle', length: 'a length', time: 'a time',
};

export function kindOfKey(key: string): string {
  const unit = keyUnit(key);
  return (unit === null ? undefined : KINDS[unit.quantity]) ?? 'a number';
}

/** How many of the file's units one of the reader's is. */
function readerSize(unit: KeyUnit | null, system: UnitSystem): number {
  if (unit === null || system === 'metric') return 1;
  return unitSize(unit.quantity, unit.usName) / unitSize(unit.quantity, unit.fileName);
}

/** A value in the file's unit as the reader would type it, without the unit. */
export function typedText(value: number, key: string, system: UnitSystem): string {
  const size = readerSize(keyUnit(key), system);
  return String(Number((value / size).toPrecision(Number.isInteger(value) && size === 1 ? 12 : FIGURES)));
}

/**
 * A number as typed, with or without a unit behind it: `8 in` in a field of millimetres is 203.2.
 * Without a unit it is in the reader's own.
 * @returns the value in the file's unit, or what is wrong in words.
 */
export function readTyped(text: string, key: string, system: UnitSystem): { readonly value: number } | { readonly problem: string } {
  if (text.trim() === '') return { problem: 'Nothing is typed here; give a number' };
  const unit = keyUnit(key);
  if (unit === null) return readPlain(text);
  try {
    const value = parseQuantity(text, unit.quantity, unitOfKey(key, system)) / unitSize(unit.quantity, unit.fileName);
    // A converted value is kept to twelve figures, so that 8 in is 203.2 and not 203.20000000000002.
    return { value: Number(value.toPrecision(12)) };
  } catch (error) {
    if (error instanceof CrosscoatError) return { problem: error.message };
    throw error;
  }
}

function readPlain(text: string): { readonly value: number } | { readonly problem: string } {
  const value = Number(text);
  return Number.isFinite(value) ? { value } : { problem: `"${text.trim()}" is not a number; this one has no unit` };
}

/** Round numbers for a ruler and a section in the reader's unit: name and metres of one. */
export function rulerUnit(system: UnitSystem): { readonly unit_m: number; readonly unitName: string } {
  const { name, size } = shownUnit('length', system);
  return { unit_m: size, unitName: name };
}
