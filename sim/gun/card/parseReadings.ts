import { dsvFormat } from 'd3-dsv';
import { decimalNumber, separatorOf } from '../../base/columns.ts';
import { CrosscoatError } from '../../base/errors.ts';
import { checkReadings, MOST_READINGS, type CardReadings } from './cardReadings.ts';
import { headerOf, type ReadingsHeader } from './readingsHeader.ts';

/**
 * Reads a card's readings: CSV (RFC 4180) with a header such as `x_mm,film_um`, parted by commas, semicolons or tabs,
 * with or without a byte order mark, lines ended either way. Rows may come in any order; empty ones are passed over.
 *
 * @param file what the text is called in messages.
 * @returns readings sorted by place, as `checkReadings` asks for them.
 * @throws CrosscoatError with row and column: `columns` for a header or row that does not fit, `unit` for an unknown
 *   unit, `range` for a value that is no number or below 0, `limit` for more than 5000 rows, and what `checkReadings` throws.
 */
export function parseReadings(text: string, file = 'readings'): CardReadings {
  const plain = text.replace(/^\uFEFF/, '');
  const separator = separatorOf(plain);
  const rows: (readonly [place_m: number, film: number, row: number])[] = [];
  let header: ReadingsHeader | null = null;
  dsvFormat(separator).parseRows(plain, (fields, index) => {
    if (fields.every((field) => field.trim() === '')) return null;
    if (header === null) header = headerOf(fields, file);
    else rows.push(readRow(fields, header, index + 1, file));
    if (rows.length > MOST_READINGS) throw new CrosscoatError('limit', `${file}: row ${index + 1} is past ${MOST_READINGS} readings, the most that a card takes; leave rows out or average neighbours`, { file, row: index + 1 });
    return null;
  });
  const { unit, film: { name } } = header ?? headerOf([], file);
  rows.sort((a, b) => a[0] - b[0]);
  const readings = { place_m: Float64Array.from(rows, ([place]) => place), film: Float64Array.from(rows, ([, film]) => film), unit };
  checkReadings(readings, file, { column: name, rows: rows.map(([, , row]) => row) });
  return readings;
}

function readRow(fields: readonly string[], { place, film, fieldCount }: ReadingsHeader, row: number, file: string): readonly [number, number, number] {
  const extra = fields.slice(fieldCount).some((field) => field.trim() !== '');
  if (fields.length < fieldCount || extra) {
    const hint = extra ? '; decimals need a point, not a comma' : '';
    throw new CrosscoatError('columns', `${file}: row ${row} has ${fields.length} fields and the header ${fieldCount}${hint}; give each row one value for each column`, { file, row });
  }
  return [numberIn(fields, place, row, file) * place.scale, numberIn(fields, film, row, file), row];
}

function numberIn(fields: readonly string[], { field, name }: { readonly field: number; readonly name: string }, row: number, file: string): number {
  const text = (fields[field] as string).trim();
  const value = decimalNumber(text, false);
  if (Number.isFinite(value)) return value;
  throw new CrosscoatError('range', `${file}: row ${row}, column ${name}: "${text.slice(0, 40)}" is not a finite number with a decimal point; mend the value or take the row out`, { file, row, column: name });
}
