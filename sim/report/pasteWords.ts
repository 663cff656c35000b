import { shownUnit, type UnitSystem } from './units.ts';

/** Cubic metres of a US gallon: 128 fluid ounces. */
const gallon_m3 = 128 * shownUnit('volume', 'us').size;
const kgPerOunce = shownUnit('weight', 'us').size;

/** Weight of paste in a volume of unthinned finish: `22.5 g/L`, `3 oz (weight)/US gal`. */
export function shownPaste(paste_kg_m3: number, system: UnitSystem): string {
  return system === 'us'
    ? `${Number(((paste_kg_m3 * gallon_m3) / kgPerOunce).toFixed(2))} oz (weight)/US gal`
    : `${Number(paste_kg_m3.toFixed(1))} g/L`;
}
