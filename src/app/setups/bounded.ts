import { roundedText, shownUnit, type Quantity, type UnitSystem } from '../../../sim/index.ts';

/** Where a number lies with 95 % confidence; null where that is not known, or the number was held. */
export type Bounds = { readonly low: number; readonly high: number } | null;

/** A bounded number as a table shows it. */
export interface BoundedText {
  readonly value: string;
  /** `236 to 247 mm`; empty without bounds. */
  readonly interval: string;
}

/** A number in the reader's unit of a quantity. */
export function boundedIn(value: number, bounds: Bounds, quantity: Quantity, system: UnitSystem): BoundedText {
  const { name, size } = shownUnit(quantity, system);
  return boundedBy(value, bounds, name, size);
}

/** A number in any unit: its name, and one of it in what the number is in. */
export function boundedBy(value: number, bounds: Bounds, name = '', size = 1): BoundedText {
  const inUnit = (each: number): string => roundedText(each / size);
  return {
    value: `${inUnit(value)} ${name}`.trim(),
    interval: bounds === null ? '' : `${inUnit(bounds.low)} to ${inUnit(bounds.high)} ${name}`.trim(),
  };
}
