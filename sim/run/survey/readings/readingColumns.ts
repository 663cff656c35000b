import { plainColumnName } from '../../../base/columns.ts';
import { CrosscoatError } from '../../../base/errors.ts';
import { nearestWord } from '../../../base/nearestWord.ts';
import { partedName, unitIn, unitNames, type ColumnQuantity } from './readingUnits.ts';

/** Columns of numbers. */
export type NumberColumn = 'dry' | 'spotMean' | 'wetLow' | 'wetHigh' | 'beforeWeight' | 'afterWeight' | 'couponArea' | 'beforeThickness' | 'afterThickness' | 'x' | 'y';
/** Columns of words. */
export type WordColumn = 'area' | 'spot' | 'time' | 'note' | 'unit';

/** A column of numbers: where it stands, its name, and one of its unit in the unit of the job file. */
export interface FoundNumbers {
  readonly field: number;
  readonly name: string;
  /** Null where the film's unit is said in each row. */
  readonly scale: number | null;
}

/** Unit of films whose column names none. */
export interface StatedUnit {
  /** µm of one; null where it was not stated. */
  readonly um: number | null;
  /** How it is stated, for messages. */
  readonly advice: string;
}

/** A header of readings, understood. */
export interface ReadingColumns {
  readonly fieldCount: number;
  readonly numbers: ReadonlyMap<NumberColumn, FoundNumbers>;
  readonly words: ReadonlyMap<WordColumn, { readonly field: number; readonly name: string }>;
  /** Kept in the note under their name: gauge, operator and the like. */
  readonly noted: readonly { readonly field: number; readonly name: string }[];
  /** Names of columns passed over. */
  readonly ignored: readonly string[];
}

const EXAMPLE = 'give a header such as dft_um, or x_mm,y_mm,area_id,spot_id,dft_um';

/** Beside a column of films these hold its number. */
const COUNTS = /^(?:reading|value|measurement)$/;

/** Stems of number columns, with what they measure. */
const NUMBERS: readonly (readonly [kind: NumberColumn, quantity: ColumnQuantity, stem: RegExp])[] = [
  ['spotMean', 'film', /^(?:spot|spot_mean|spot_dft|mean_dft|spot_average)$/],
  ['wetLow', 'film', /^(?:wft|wet|comb)_(?:low|lower|from|wetted)$/],
  ['wetHigh', 'film', /^(?:wft|wet|comb)_(?:high|upper|to|dry)$/],
  ['beforeThickness', 'film', /^(?:before|thickness_before|before_thickness)$/],
  ['afterThickness', 'film', /^(?:after|thickness_after|after_thickness)$/],
  ['beforeWeight', 'weight', /^(?:before|weight_before|before_weight|mass_before|before_mass)$/],
  ['afterWeight', 'weight', /^(?:after|weight_after|after_weight|mass_after|after_mass)$/],
  ['couponArea', 'area', /^(?:area|coupon_area|coated_area)$/],
  ['x', 'length', /^x$/],
  ['y', 'length', /^y$/],
  ['dry', 'film', /^(?:dft|dry|dry_film|dry_film_thickness|film|film_thickness|thickness|coating|coating_thickness|reading|value|measurement)$/],
];

const WORDS: readonly (readonly [kind: WordColumn, stem: RegExp])[] = [
  ['area', /^area(?:_(?:id|no|name|number))?$/],
  ['spot', /^spot(?:_(?:id|no|name|number))?$/],
  ['time', /^(?:timestamp|time|at|date|datetime|date_time|read_at)$/],
  ['note', /^(?:note|notes|remark|remarks|comment|comments)$/],
  ['unit', /^units?$/],
];

const NOTED = /^(?:part|panel|gauge|gage|instrument|probe|operator|inspector|who|by|batch)(?:_(?:id|no|name|serial))?$/;

/**
 * Reads the header of a file of readings, the unit being in each name: `dft_um`, `DFT (mil)`, `wft_low_um`, `x_in`, `before_g`, `area_cm2`.
 * @param filmUnit of films whose column names none.
 * @throws CrosscoatError `columns` for none that holds a reading, a doubled one, or half of a pair; `unit` for one without a unit.
 */
export function readingColumns(fields: readonly string[], filmUnit: StatedUnit, file: string): ReadingColumns {
  const numbers = new Map<NumberColumn, FoundNumbers>();
  const words = new Map<WordColumn, { readonly field: number; readonly name: string }>();
  const noted: { readonly field: number; readonly name: string }[] = [];
  const ignored: string[] = [];
  const parted = fields.map((text, field) => ({ field, name: text.trim(), plain: plainColumnName(text), ...partedName(plainColumnName(text)) })).filter(({ name }) => name !== '');
  const hasFilm = parted.some(({ stem, plain }) => !COUNTS.test(plain) && numberColumn(stem, 'um')?.kind === 'dry');
  const saysUnit = parted.some(({ plain }) => /^units?$/.test(plain));
  for (const { field, name, plain, stem, unit } of parted) {
    const number = numberColumn(stem, unit);
    const word = WORDS.find(([, pattern]) => pattern.test(plain))?.[0];
    if (hasFilm && COUNTS.test(plain)) ignored.push(name);
    else if (number !== null && (unit !== null || word === undefined)) {
      put(numbers, number.kind, { field, name, scale: scaleOf(number, unit, name, filmUnit, saysUnit, file) }, file);
    } else if (word !== undefined) put(words, word, { field, name }, file);
    else if (NOTED.test(plain)) noted.push({ field, name });
    else ignored.push(name);
  }
  checkPairs(numbers, ignored, file);
  return { fieldCount: parted.reduce((most, { field }) => Math.max(most, field + 1), 0), numbers, words, noted, ignored };
}

interface NumberKind {
  readonly kind: NumberColumn;
  readonly quantity: ColumnQuantity;
}

/** Weights and thicknesses share their stems: the unit tells them apart. */
function numberColumn(stem: string, unit: string | null): NumberKind | null {
  const fits = NUMBERS.filter(([, , pattern]) => pattern.test(stem));
  const [kind, quantity] = fits.find(([, measured]) => unit !== null && unitIn(measured, unit) !== null) ?? fits[0] ?? [null, null];
  return kind === null ? null : { kind, quantity };
}

function scaleOf({ kind, quantity }: NumberKind, unit: string | null, name: string, filmUnit: StatedUnit, saysUnit: boolean, file: string): number | null {
  if (unit !== null) {
    const scale = unitIn(quantity, unit);
    if (scale !== null) return scale;
    throw new CrosscoatError('unit', `${file}: column ${name} has the unit "${unit}", which does not fit; understood are ${unitNames(quantity).join(', ')}`, { file, row: 1, column: name });
  }
  const example = plainColumnName(name);
  const mayBeWeight = /Thickness$/.test(kind);
  if (quantity === 'film' && !mayBeWeight && filmUnit.um !== null) return filmUnit.um;
  if (quantity === 'film' && !mayBeWeight && saysUnit) return null;
  const advice = mayBeWeight ? `write ${example}_um for a thickness or ${example}_g for a weight` : quantity === 'film' ? `write ${example}_um or ${example}_mil, or ${filmUnit.advice}` : `write ${example}_${unitNames(quantity)[0] ?? ''}`;
  throw new CrosscoatError('unit', `${file}: column ${name} does not say its unit; ${advice}`, { file, row: 1, column: name });
}

function put<K, V extends { readonly name: string }>(found: Map<K, V>, kind: K, column: V, file: string): void {
  const before = found.get(kind);
  if (before !== undefined) throw new CrosscoatError('columns', `${file}: columns "${before.name}" and "${column.name}" hold the same; leave one out`, { file, row: 1, column: column.name });
  found.set(kind, column);
}

const SETS: readonly (readonly [what: string, needed: readonly NumberColumn[], names: string])[] = [
  ['coupon', ['beforeWeight', 'afterWeight', 'couponArea'], 'before_g, after_g and area_cm2'],
  ['micrometer', ['beforeThickness', 'afterThickness'], 'before_um and after_um'],
  ['comb', ['wetLow'], 'wft_low_um, and wft_high_um for the next, dry tooth'],
];

/** Columns that only say something together. */
function checkPairs(numbers: ReadonlyMap<NumberColumn, FoundNumbers>, ignored: readonly string[], file: string): void {
  const has = (kind: NumberColumn): boolean => numbers.has(kind);
  if (has('x') !== has('y')) throw new CrosscoatError('columns', `${file}: a place needs two columns, x_mm and y_mm; give both or neither`, { file, row: 1 });
  if (has('wetHigh') && !has('wetLow')) throw new CrosscoatError('columns', `${file}: a comb needs its last wetted tooth too: wft_low_um`, { file, row: 1 });
  for (const [what, needed, names] of SETS) {
    const there = needed.filter(has).length;
    if (there > 0 && there < needed.length) throw new CrosscoatError('columns', `${file}: a ${what} needs ${names}; only ${needed.filter(has).map((kind) => numbers.get(kind)?.name ?? '').join(' and ')} is there`, { file, row: 1 });
  }
  if (has('dry') && has('spotMean')) throw new CrosscoatError('columns', `${file}: columns "${numbers.get('dry')?.name ?? ''}" and "${numbers.get('spotMean')?.name ?? ''}" hold readings and means of them; leave one out`, { file, row: 1 });
  if (['dry', 'spotMean', 'beforeWeight', 'beforeThickness', 'wetLow'].some((kind) => has(kind as NumberColumn))) return;
  const near = ignored.map((name) => [name, nearestWord(plainColumnName(name), ['dft_um', 'dft_mil', 'wft_low_um', 'before_g', 'before_um'])] as const).find(([, word]) => word !== null);
  throw new CrosscoatError('columns', `${file}: no column holds a reading${near === undefined ? '' : ` (did you mean ${near[1] ?? ''} by "${near[0]}"?)`}; ${EXAMPLE}`, { file, row: 1 });
}
