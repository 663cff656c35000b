import { CrosscoatError } from '../../base/errors.ts';
import { unitSize } from '../../base/units.ts';

/** A header of readings, understood. */
export interface ReadingsHeader {
  /** 0-based field, name as written, m per unit. */
  readonly place: { readonly field: number; readonly name: string; readonly scale: number };
  readonly film: { readonly field: number; readonly name: string };
  /** What the film is read in, as written behind the underscore. */
  readonly unit: string;
  readonly fieldCount: number;
}

const PLACE_UNITS = ['mm', 'cm', 'm', 'in'] as const;
/** Beginnings of columns that hold a reading, where there are more than two. */
const MEASURES = ['film', 'mass', 'weight', 'shade', 'reading', 'darkness'];
const EXAMPLE = 'readings start with a header such as x_mm,film_um';

/**
 * Finds place and reading in a header: `x_mm` (or `x_cm`, `x_m`, `x_in`) and one other column, or, of several, the one
 * whose name begins with film, mass, weight, shade, reading or darkness. Case and spaces at the ends do not count.
 * @throws CrosscoatError `columns` for one that is missing or doubled, `unit` for a place without a known unit.
 */
export function headerOf(fields: readonly string[], file: string): ReadingsHeader {
  const names = fields.map((field) => field.trim());
  const filled = names.flatMap((name, field) => (name === '' ? [] : [{ field, name, key: name.toLowerCase() }]));
  const places = filled.filter(({ key }) => key === 'x' || key.startsWith('x_'));
  const others = filled.filter((column) => !places.includes(column));
  const known = others.filter(({ key }) => MEASURES.some((measure) => key.startsWith(measure)));
  const place = theOne(places, 'place across the fan', file);
  const film = theOne(others.length === 1 ? others : known, 'reading', file);
  const cut = film.name.indexOf('_');
  return {
    place: { field: place.field, name: place.name, scale: placeScale(place.key, place.name, file) },
    film: { field: film.field, name: film.name },
    unit: cut < 0 ? '' : film.name.slice(cut + 1),
    fieldCount: filled.reduce((most, { field }) => Math.max(most, field + 1), 0),
  };
}

function theOne<T extends { readonly name: string }>(columns: readonly T[], what: string, file: string): T {
  const [first, second] = columns;
  if (first !== undefined && second === undefined) return first;
  const fault = first === undefined || second === undefined ? `no column for the ${what}` : `columns ${first.name} and ${second.name} both for the ${what}`;
  throw new CrosscoatError('columns', `${file}: row 1 has ${fault}; ${EXAMPLE}`, { file, row: 1, ...(second === undefined ? {} : { column: second.name }) });
}

function placeScale(key: string, name: string, file: string): number {
  const unit = PLACE_UNITS.find((each) => key === `x_${each}`);
  if (unit !== undefined) return unitSize('length', unit);
  const what = key === 'x' ? 'has no unit in its name' : `has the unit "${key.slice(2)}", which is not known`;
  throw new CrosscoatError('unit', `${file}: column ${name} ${what}; understood are ${PLACE_UNITS.map((each) => `x_${each}`).join(', ')}`, { file, row: 1, column: name });
}
