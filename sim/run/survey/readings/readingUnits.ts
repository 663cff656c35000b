import { METRES_PER_INCH } from '../../../base/units.ts';

/** What a column of readings measures. */
export type ColumnQuantity = 'film' | 'length' | 'weight' | 'area';

/** Avoirdupois, exact. */
const GRAMS_PER_OUNCE = 28.349523125;
const MM_PER_INCH = METRES_PER_INCH * 1e3;

/** Names of units behind a column's name, and one of each in the unit of the job file: µm, mm, g, cm². */
const SIZES: Readonly<Record<ColumnQuantity, Readonly<Record<string, number>>>> = {
  film: { um: 1, micron: 1, microns: 1, micrometre: 1, micrometres: 1, micrometer: 1, micrometers: 1, mil: 1000 * METRES_PER_INCH, mils: 1000 * METRES_PER_INCH, thou: 1000 * METRES_PER_INCH, mm: 1000 },
  length: { mm: 1, cm: 10, m: 1000, in: MM_PER_INCH, inch: MM_PER_INCH, ft: 12 * MM_PER_INCH },
  weight: { g: 1, mg: 1e-3, kg: 1e3, oz: GRAMS_PER_OUNCE },
  area: { cm2: 1, mm2: 1e-2, m2: 1e4, in2: (MM_PER_INCH / 10) ** 2, ft2: (12 * MM_PER_INCH / 10) ** 2 },
};

/** Units of film that may be stated for a file whose columns name none. */
export const FILM_UNITS = ['um', 'mil', 'mm'] as const;

/** One of a named unit in the unit of the job file; null for an unknown name. */
export function unitIn(quantity: ColumnQuantity, name: string): number | null {
  return SIZES[quantity][name] ?? null;
}

/** Names of the units of a quantity, for a message. */
export function unitNames(quantity: ColumnQuantity): string[] {
  return Object.keys(SIZES[quantity]);
}

/** A column's plain name parted into what it holds and the unit behind it: `dft_um` is `dft` and `um`. */
export function partedName(plain: string): { readonly stem: string; readonly unit: string | null } {
  const cut = plain.lastIndexOf('_');
  const last = plain.slice(cut + 1);
  const isUnit = cut > 0 && Object.values(SIZES).some((sizes) => last in sizes);
  return isUnit ? { stem: plain.slice(0, cut), unit: last } : { stem: plain, unit: null };
}
