import { roundedText, shownPercent, shownUnit, type Quantity, type UnitSystem } from '../../../sim/index.ts';

/** Where a number lies with 95 % confidence; null where that is not known, or the number was held. */
export type Bounds = { readonly low: number; readonly high: number } | null;

/** A bounded number as a table shows it. */
export interface BoundedText {
  readonly value: string;
  /** `236 to 247 mm`; empty without bounds. */
  readonly interval: string;
}

/** Bounds by a half width both ways. */
export function within(value: number, half: number): Bounds {
  return { low: value - half, high: value + half };
}

/** A number in the reader's unit of a quantity. @param perUnit what follows the unit's name: `/min`. */
export function boundedIn(value: number, bounds: Bounds, quantity: Quantity, system: UnitSystem, perUnit = ''): BoundedText {
  const { name, size } = shownUnit(quantity, system);
  return boundedBy(value, bounds, `${name}${perUnit}`, size);
}

/** A share, in per cent. */
export function boundedPercent(value: number, bounds: Bounds): BoundedText {
  return { ...boundedBy(value, bounds, '%', 0.01), value: shownPercent(value) };
}

/** A number in any unit: its name, and one of it in what the number is in. */
export function boundedBy(value: number, bounds: Bounds, name = '', size = 1): BoundedText {
  const inUnit = (each: number): string => roundedText(each / size);
  return {
    value: `${inUnit(value)} ${name}`.trim(),
    interval: bounds === null ? '' : `${inUnit(bounds.low)} to ${inUnit(bounds.high)} ${name}`.trim(),
  };
}
