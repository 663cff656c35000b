import { readEachRow, type TableRow } from '../../../base/columns.ts';
import { CrosscoatError, type Warning } from '../../../base/errors.ts';
import type { ReadingSpec } from '../../../job/schema.ts';
import { MOST_READINGS } from '../../../job/surveySchema.ts';
import { readingColumns } from './readingColumns.ts';
import { readingsOfRow } from './readingsOfRow.ts';
import { readingTable, type ReadingTable } from './readingTable.ts';
import { unitIn, type FILM_UNITS } from './readingUnits.ts';

/** Letters of a file of readings. */
export const LONGEST_SURVEY = 8_000_000;
/** Columns named in a warning. */
const MOST_NAMED = 10;

/** A unit of film. */
export type FilmUnit = (typeof FILM_UNITS)[number];

/** What is known of a file of readings besides its text. */
export interface ReadingsOptions {
  /** Unit of films whose column names none. */
  readonly unit?: FilmUnit | undefined;
  /** How a unit is stated where the text is read, for messages: `give --unit um|mil|mm`. */
  readonly unitAdvice?: string | undefined;
}

/** Readings as a survey keeps them. */
export interface SurveyReadingsRead {
  readonly readings: readonly ReadingSpec[];
  readonly warnings: readonly Warning[];
}

/**
 * Reads readings from CSV (RFC 4180) or from columns pasted out of a gauge's own window, parted by commas, semicolons, tabs or spaces;
 * lines ended either way. Units come from the header: `dft_um`, `DFT (mil)`, `wft_low_um,wft_high_um`, `before_g,after_g,area_cm2`,
 * `before_um,after_um`, with `x_mm,y_mm`, `area_id`, `spot_id`, `timestamp`, `note` where there are any; a column `unit` may say
 * the film's unit row by row. Numbers alone, in one column or one row, are dry films of the stated unit. A row may hold readings of
 * more than one kind. Gauge, operator and times without an offset are kept in the note. Other columns are named in a warning.
 *
 * @param file what the text is called in messages.
 * @throws CrosscoatError with row and column: `columns`, `unit`, `range`, `limit` for more than 20 000 readings or 8 million letters.
 */
export function parseSurveyReadings(text: string, file = 'readings', { unit, unitAdvice = 'state the unit of the file' }: ReadingsOptions = {}): SurveyReadingsRead {
  if (text.length > LONGEST_SURVEY) throw new CrosscoatError('limit', `${file} has ${text.length} letters, more than ${LONGEST_SURVEY}; cut it into parts`, { file });
  const table = readingTable(text);
  if (table.rows.length === 0) throw new CrosscoatError('columns', `${file} ${table.header === null ? 'is empty' : 'has a header and no rows'}; give a header such as dft_um and a reading in each row`, { file });
  checkCount(table.rows.length, file);
  const { header, rows } = withHeader(table, file);
  if (table.header === null && unit === undefined) throw new CrosscoatError('unit', `${file} has no header that says the unit of its numbers; put one above them, such as dft_um or dft_mil, or ${unitAdvice}`, { file, row: 1 });
  const columns = readingColumns(header, { um: unit === undefined ? null : unitIn('film', unit), advice: unitAdvice }, file);
  const readings = readEachRow(rows, file, (row) => readingsOfRow(row, { file, columns, mayHaveComma: table.mayHaveComma }));
  checkCount(readings.length, file);
  const { ignored } = columns;
  const more = ignored.length > MOST_NAMED ? ` and ${ignored.length - MOST_NAMED} more` : '';
  return { readings, warnings: ignored.length === 0 ? [] : [{ code: 'column-ignored', text: `${file}: columns passed over: ${ignored.slice(0, MOST_NAMED).join(', ')}${more}`, place: { file } }] };
}

/** Numbers alone are dry films: a column of them, or one row. */
function withHeader({ header, rows }: ReadingTable, file: string): { readonly header: readonly string[]; readonly rows: readonly TableRow[] } {
  if (header !== null) return { header, rows };
  const [first] = rows;
  if (rows.every(({ fields }) => fields.length === 1)) return { header: ['dft'], rows };
  if (first !== undefined && rows.length === 1) {
    checkCount(first.fields.length, file);
    return { header: ['dft'], rows: first.fields.flatMap((field) => (field.trim() === '' ? [] : [{ fields: [field], row: first.row }])) };
  }
  throw new CrosscoatError('columns', `${file} has ${first?.fields.length ?? 0} columns of numbers and no header; put a row above them that names each, such as x_mm,y_mm,dft_um`, { file, row: 1 });
}

function checkCount(count: number, file: string): void {
  if (count > MOST_READINGS) throw new CrosscoatError('limit', `${file} has ${count} readings, more than the ${MOST_READINGS} that a survey keeps; cut it into parts`, { file });
}
