import { dsvFormat } from 'd3-dsv';
import { decimalNumber, readEachRow, separatorOf } from '../base/columns.ts';
import { counted } from '../base/counted.ts';
import { CrosscoatError, type ErrorCode, type Warning } from '../base/errors.ts';
import { localTimeOf, minutesOf } from '../base/localTime.ts';
import { CELSIUS_0_K } from '../base/units.ts';
import type { HourSpec } from '../job/schema.ts';
import { hoursHeader, type FoundColumn, type HoursHeader } from './hoursHeader.ts';
import { saturationPressure_Pa } from './psychrometrics.ts';

/** Rows that a job keeps. */
export const MOST_HOURS_KEPT = 2000;
/** Letters of a file that are read: a row a second for a day and more. */
export const LONGEST_HOURS = 8_000_000;
/** Rows of a file that are read. */
const MOST_ROWS = 200_000;

/** A logger's file as hours of a job. */
export interface HoursRead {
  readonly hours: readonly HourSpec[];
  readonly warnings: readonly Warning[];
}

interface RowRead {
  readonly row: number;
  readonly minute: number;
  readonly temperature_C: number;
  readonly humidity_percent: number;
  readonly hasOffset: boolean;
}

/**
 * Reads what a logger or a hand has written: CSV (RFC 4180) with a header such as
 * `time,temperature_C,humidity_percent`, parted by commas, semicolons or tabs. Units come from the
 * header, °F too; a dew point stands in for a missing humidity. Times are ISO 8601, `T` or a space
 * between day and hour, seconds cut to the minute; behind an offset the wall clock is kept, with a
 * warning. Rows of one minute: the first is kept. More than 2000 rows are thinned to the first of each hour, and said.
 *
 * @param file what the text is called in messages.
 * @returns hours rising in time; nothing is left out without a warning.
 * @throws CrosscoatError with row and column: `columns` for a header or rows that do not fit, `unit` for a temperature
 *   without °C or °F and a humidity that may be a share, `time`, `range`, `limit`; several bad rows are named at once.
 */
export function readHours(text: string, file = 'hours'): HoursRead {
  if (text.length > LONGEST_HOURS) throw new CrosscoatError('limit', `${file} has ${text.length} letters, more than ${LONGEST_HOURS}; cut it into parts`, { file });
  const plain = text.replace(/^\uFEFF/, '');
  const lines = dsvFormat(separatorOf(plain)).parseRows(plain, (fields, index) => (fields.every((field) => field.trim() === '') ? null : { fields, row: index + 1 }));
  const [first, ...data] = lines;
  if (first === undefined) throw new CrosscoatError('columns', `${file} is empty; give a header such as time,temperature_C,humidity_percent and a row for each hour`, { file });
  const header = hoursHeader(first.fields, file);
  if (data.length === 0) throw new CrosscoatError('columns', `${file} has a header and no rows; give a row for each hour`, { file });
  if (data.length > MOST_ROWS) throw new CrosscoatError('limit', `${file} has ${data.length} rows, more than ${MOST_ROWS}; cut it into parts`, { file });
  const rows = readEachRow(data, file, ({ fields, row }) => [readRow(fields, header, row, file)]);
  checkHumidity(rows, header, file);
  checkTimes(rows, header.time.name, file);
  return keptHours(rows, header, file);
}

function readRow(fields: readonly string[], header: HoursHeader, row: number, file: string): RowRead {
  const extra = fields.slice(header.fieldCount).some((field) => field.trim() !== '');
  if (fields.length < header.fieldCount || extra) {
    const hint = extra ? '; decimals need a point, or semicolons between the columns' : '';
    throw new CrosscoatError('columns', `${file}: row ${row} has ${fields.length} fields and the header ${header.fieldCount}${hint}`, { file, row });
  }
  const read = (column: FoundColumn) => numberIn(fields, column, row, file);
  const { minute, hasOffset } = timeIn((fields[header.time.field] as string).trim(), header.time, row, file);
  const temperature_C = celsiusIn(header.temperature, read, row, file);
  return { row, minute, hasOffset, temperature_C, humidity_percent: humidityIn(header, read, temperature_C, row, file) };
}

function celsiusIn(column: FoundColumn, read: (column: FoundColumn) => number, row: number, file: string): number {
  const value = read(column);
  const celsius = column.isFahrenheit ? (value - 32) / 1.8 : value;
  if (celsius >= -20 && celsius <= 60) return tidy(celsius);
  const limits = column.isFahrenheit ? '-4 to 140 °F' : '-20 to 60 °C';
  throw rowError('range', `${value} is not from ${limits}; check the unit in the header`, column, row, file);
}

function humidityIn({ humidity, dewPoint }: HoursHeader, read: (column: FoundColumn) => number, temperature_C: number, row: number, file: string): number {
  if (humidity !== null) {
    const value = read(humidity);
    const percent = humidity.humidityUnit === 'fraction' ? value * 100 : value;
    if (percent >= 0 && percent <= 100) return tidy(percent);
    throw rowError('range', humidity.humidityUnit === 'fraction' ? `${value} is not from 0 to 1` : `${value} is not from 0 to 100 %`, humidity, row, file);
  }
  const column = dewPoint as FoundColumn;
  const dew_C = column.isFahrenheit ? (read(column) - 32) / 1.8 : read(column);
  // Loggers round: a dew point a tenth above the air is fog.
  if (!(dew_C >= -60 && dew_C <= temperature_C + 0.1)) throw rowError('range', `${read(column)} is not from -60 °C (-76 °F) to the air’s temperature`, column, row, file);
  return tidy(Math.min(1, saturationPressure_Pa(dew_C + CELSIUS_0_K) / saturationPressure_Pa(temperature_C + CELSIUS_0_K)) * 100);
}

/** A humidity of at most 1 in every row may be a share of one, which is never guessed. */
function checkHumidity(rows: readonly RowRead[], { humidity }: HoursHeader, file: string): void {
  if (humidity === null || humidity.humidityUnit === 'fraction' || rows.some(({ humidity_percent }) => humidity_percent > 1)) return;
  const row = rows.find(({ humidity_percent }) => humidity_percent > 0);
  if (row === undefined) return;
  throw rowError('unit', `${row.humidity_percent} may mean ${row.humidity_percent} % or ${tidy(row.humidity_percent * 100)} %, and no row is above 1; name the column humidity_fraction for shares of one, or write per cent, such as ${tidy(row.humidity_percent * 100)}`, humidity, row.row, file);
}

function checkTimes(rows: readonly RowRead[], column: string, file: string): void {
  const fall = rows.findIndex(({ minute }, i) => i > 0 && minute < (rows[i - 1] as RowRead).minute);
  if (fall < 0) return;
  const [before, after] = [rows[fall - 1] as RowRead, rows[fall] as RowRead];
  throw new CrosscoatError('time', `${file}: row ${after.row}, column ${column}: ${localTimeOf(after.minute)} is before the ${localTimeOf(before.minute)} of the row before it; sort the rows by time, or cut the file where the clock was put back`, { file, row: after.row, column });
}

function keptHours(rows: readonly RowRead[], { ignored }: HoursHeader, file: string): HoursRead {
  const minutes = rows.filter(({ minute }, i) => minute !== rows[i - 1]?.minute);
  const kept = minutes.length <= MOST_HOURS_KEPT ? minutes : minutes.filter(({ minute }, i) => Math.floor(minute / 60) !== Math.floor((minutes[i - 1]?.minute ?? -Infinity) / 60));
  if (kept.length > MOST_HOURS_KEPT) throw new CrosscoatError('limit', `${file} covers ${kept.length} hours, more than the ${MOST_HOURS_KEPT} that a job keeps; cut it to the days of the job`, { file });
  const warnings: Warning[] = [];
  const warn = (code: Warning['code'], text: string) => warnings.push({ code, text: `${file}: ${text}`, place: { file } });
  if (rows.length > minutes.length) warn('row-dropped', `${counted(rows.length - minutes.length, 'row')} of a minute that has one already; the first is kept`);
  if (minutes.length > kept.length) warn('row-dropped', `${minutes.length} rows are more than the ${MOST_HOURS_KEPT} that a job keeps; the first of each hour is kept, ${kept.length} in all`);
  if (rows.some(({ hasOffset }) => hasOffset)) warn('defaults-used', 'the times name an offset from world time; their wall clock is kept as it stands');
  if (ignored.length > 0) warn('column-ignored', `columns passed over: ${ignored.slice(0, 10).join(', ')}`);
  return { hours: kept.map(({ minute, temperature_C, humidity_percent }) => ({ at: localTimeOf(minute), temperature_C, humidity_percent })), warnings };
}

/** Day, `T` or a space, hour and minute; seconds and an offset may follow. */
const TIME = /^(\d{4}-\d\d-\d\d)[T ](\d\d:\d\d)(?::\d\d(?:[.,]\d+)?)?\s*(Z|[+-]\d\d:?\d\d)?$/i;

function timeIn(text: string, column: FoundColumn, row: number, file: string): { readonly minute: number; readonly hasOffset: boolean } {
  const parts = TIME.exec(text);
  try {
    if (parts !== null) return { minute: minutesOf(`${parts[1]}T${parts[2]}`), hasOffset: parts[3] !== undefined };
  } catch {
    // Named below with its row.
  }
  throw rowError('time', `"${text.slice(0, 40)}" is not a date and time such as 2026-05-04T08:00`, column, row, file);
}

function numberIn(fields: readonly string[], column: FoundColumn, row: number, file: string): number {
  const text = (fields[column.field] as string).trim().replace(/\s*%$/, '');
  // Where columns are parted by semicolons a comma is a decimal one.
  const value = decimalNumber(text, true);
  if (Number.isFinite(value)) return value;
  throw rowError('range', `"${text.slice(0, 40)}" is not a number`, column, row, file);
}

function rowError(code: ErrorCode, what: string, { name }: FoundColumn, row: number, file: string): CrosscoatError {
  return new CrosscoatError(code, `${file}: row ${row}, column ${name}: ${what}`, { file, row, column: name });
}

/** Without the last digits that changing the unit leaves. */
function tidy(value: number): number {
  return Number(value.toPrecision(6));
}
