import * as v from 'valibot';
import { decimalNumber, plainColumnName, type TableRow } from '../../../base/columns.ts';
import { CrosscoatError, type ErrorCode } from '../../../base/errors.ts';
import { secondsOfMoment } from '../../../base/moment.ts';
import type { ReadingSpec } from '../../../job/schema.ts';
import { ReadingSchema } from '../../../job/surveySchema.ts';
import type { NumberColumn, ReadingColumns, WordColumn } from './readingColumns.ts';
import { FILM_UNITS, unitIn } from './readingUnits.ts';

/** What stands beside every row of a file. */
export interface ReadingFile {
  readonly file: string;
  readonly columns: ReadingColumns;
  /** Something else than a comma parts the columns. */
  readonly mayHaveComma: boolean;
}

/** Fields of readings, and the columns that they come from. */
const COLUMN_OF: Readonly<Record<string, NumberColumn | WordColumn>> = {
  dry_um: 'dry', low_um: 'wetLow', high_um: 'wetHigh', x_mm: 'x', y_mm: 'y', area_cm2: 'couponArea', before_g: 'beforeWeight', after_g: 'afterWeight', before_um: 'beforeThickness', after_um: 'afterThickness', area: 'area', spot: 'spot', at: 'time', note: 'note',
};

/** Units of those fields, behind their last underscore, as people write them. */
const UNIT_WORDS: Readonly<Record<string, string>> = { um: 'µm', mm: 'mm', g: 'g', cm2: 'cm²' };

/** All that a row reads: a gauge, a coupon, a micrometer, a comb; mostly one of them. @throws CrosscoatError with row and column. */
export function readingsOfRow({ fields, row }: TableRow, from: ReadingFile): ReadingSpec[] {
  const { columns, file } = from;
  if (fields.slice(columns.fieldCount).some((field) => field.trim() !== '')) {
    throw new CrosscoatError('columns', `${file}: row ${row} has ${fields.length} fields and the header ${columns.fieldCount}${from.mayHaveComma ? '' : '; decimals need a point, or semicolons between the columns'}`, { file, row });
  }
  const number = (kind: NumberColumn): number | null => numberIn(kind, fields, row, from);
  const word = (kind: WordColumn): string => fields[columns.words.get(kind)?.field ?? Infinity]?.trim() ?? '';
  const [x_mm, y_mm] = [number('x'), number('y')];
  const shared = { ...(x_mm === null ? {} : { x_mm }), ...(y_mm === null ? {} : { y_mm }), ...named('area', word('area')), ...named('spot', word('spot')), ...timeAndNote(word('time'), word('note'), fields, columns) };
  if ((x_mm === null) !== (y_mm === null)) throw new CrosscoatError('columns', `${file}: row ${row} gives only one of x and y; give both, or neither`, { file, row });
  const found = [...gauges(number, shared, row), ...coupons(number, shared, row, file), ...micrometers(number, shared, row, file), ...combs(number, shared, row, file)];
  if (found.length === 0) throw new CrosscoatError('columns', `${file}: row ${row} holds no reading; fill it in, or take the row out`, { file, row });
  return found.map((reading) => checked(reading, fields, row, from));
}

type Shared = Pick<ReadingSpec, 'x_mm' | 'y_mm' | 'area' | 'spot' | 'at' | 'note'>;
type Numbers = (kind: NumberColumn) => number | null;

function named<K extends 'area' | 'spot'>(key: K, text: string): Partial<Record<K, string>> {
  return text === '' ? {} : ({ [key]: text } as Record<K, string>);
}

function gauges(number: Numbers, shared: Shared, row: number): ReadingSpec[] {
  const dry_um = number('dry');
  const mean_um = number('spotMean');
  return [
    ...(dry_um === null ? [] : [{ kind: 'metal' as const, dry_um, ...shared }]),
    // Each mean is a spot of its own.
    ...(mean_um === null ? [] : [{ kind: 'metal' as const, dry_um: mean_um, ...shared, spot: shared.spot ?? String(row) }]),
  ];
}

function coupons(number: Numbers, shared: Shared, row: number, file: string): ReadingSpec[] {
  const [before_g, after_g, area_cm2] = [number('beforeWeight'), number('afterWeight'), number('couponArea')];
  if (before_g === null && after_g === null) return [];
  if (before_g === null || after_g === null || area_cm2 === null) throw halfRead('coupon', 'both weights and the coated area', row, file);
  return [{ kind: 'coupon', before_g, after_g, area_cm2, ...shared }];
}

function micrometers(number: Numbers, shared: Shared, row: number, file: string): ReadingSpec[] {
  const [before_um, after_um] = [number('beforeThickness'), number('afterThickness')];
  if (before_um === null && after_um === null) return [];
  if (before_um === null || after_um === null) throw halfRead('micrometer', 'the thickness before and after', row, file);
  return [{ kind: 'micrometer', before_um, after_um, ...shared }];
}

function combs(number: Numbers, shared: Shared, row: number, file: string): ReadingSpec[] {
  const [low_um, high_um] = [number('wetLow'), number('wetHigh')];
  if (low_um === null && high_um === null) return [];
  if (low_um === null) throw halfRead('comb', 'its last wetted tooth, 0 where none was', row, file);
  if (high_um !== null && high_um <= low_um) throw new CrosscoatError('range', `${file}: row ${row}: the dry tooth, ${high_um} µm, is not above the last wetted one, ${low_um} µm; the film lies between the two`, { file, row });
  return [{ kind: 'comb', low_um, ...(high_um === null ? {} : { high_um }), ...shared }];
}

function halfRead(what: string, needed: string, row: number, file: string): CrosscoatError {
  return new CrosscoatError('columns', `${file}: row ${row}: a ${what} needs ${needed}`, { file, row });
}

/** A number in the unit of the job file; null for an empty field. */
function numberIn(kind: NumberColumn, fields: readonly string[], row: number, from: ReadingFile): number | null {
  const column = from.columns.numbers.get(kind);
  const text = fields[column?.field ?? Infinity]?.trim() ?? '';
  if (column === undefined || text === '') return null;
  const value = decimalNumber(text, from.mayHaveComma);
  if (Number.isNaN(value)) throw fieldError('range', `"${text.slice(0, 40)}" is not a number${from.mayHaveComma ? '' : ' with a decimal point'}; mend it, or take the row out`, column.name, row, from.file);
  // Without the last digits that changing the unit leaves: 2.5 mil are 63.5 µm.
  return Number((value * (column.scale ?? unitOfRow(fields, row, from))).toPrecision(12));
}

function unitOfRow(fields: readonly string[], row: number, { columns, file }: ReadingFile): number {
  const column = columns.words.get('unit');
  const text = fields[column?.field ?? Infinity]?.trim() ?? '';
  const scale = unitIn('film', plainColumnName(text));
  if (scale !== null) return scale;
  throw fieldError('unit', `"${text.slice(0, 40)}" is not a unit of film; give ${FILM_UNITS.join(', ')}`, column?.name ?? 'unit', row, file);
}

/** A time with its offset is kept as the time; any other in the note, since nobody can say where its clock stood. */
function timeAndNote(time: string, note: string, fields: readonly string[], { noted }: ReadingColumns): Pick<ReadingSpec, 'at' | 'note'> {
  const at = time.replace(/^(\d{4}-\d\d-\d\d)[ t]/, '$1T').replace(/(:\d\d)[.,]\d+/, '$1').replace(/z$/, 'Z').replace(/ (?=[Z+-])/, '');
  const isMoment = secondsOfMoment(at) !== null;
  const kept = noted.flatMap(({ field, name }) => ((fields[field]?.trim() ?? '') === '' ? [] : [`${name}: ${fields[field]?.trim() ?? ''}`]));
  const pieces = [...(note === '' ? [] : [note]), ...(isMoment || time === '' ? [] : [`read ${time}`]), ...kept];
  return { ...(isMoment ? { at } : {}), ...(pieces.length === 0 ? {} : { note: pieces.join('; ') }) };
}

/** Held to the limits of the job file; what does not fit is told as the file has it. */
function checked(reading: ReadingSpec, fields: readonly string[], row: number, { columns, file }: ReadingFile): ReadingSpec {
  const parsed = v.safeParse(ReadingSchema, reading);
  if (parsed.success) return parsed.output;
  const [issue] = parsed.issues;
  const found = issue.path?.[0]?.key;
  const key = typeof found === 'string' ? found : '';
  const kind = COLUMN_OF[key];
  const column = columns.numbers.get(kind as NumberColumn) ?? columns.words.get(kind as WordColumn) ?? columns.numbers.get('spotMean');
  const value = String((reading as Record<string, unknown>)[key]).slice(0, 40);
  const typed = fields[column?.field ?? Infinity]?.trim().slice(0, 40) ?? value;
  const unit = UNIT_WORDS[key.split('_').at(-1) ?? ''];
  throw fieldError('range', `${typed}${unit === undefined || typed === value ? '' : `, which is ${value} ${unit},`} does not fit; ${issue.message}`, column?.name ?? key, row, file);
}

function fieldError(code: ErrorCode, what: string, column: string, row: number, file: string): CrosscoatError {
  return new CrosscoatError(code, `${file}: row ${row}, column ${column}: ${what}`, { file, row, column });
}
