import { counted } from './counted.ts';
import { CrosscoatError } from './errors.ts';

/** What readers of tables have in common: which sign parts the columns, names of columns, numbers, and errors of rows. */

/** A row of a table: its fields, and its number in the file, from 1. */
export interface TableRow {
  readonly fields: readonly string[];
  readonly row: number;
}

/** Bad rows named one by one. */
const MOST_NAMED = 5;

/** Whichever of tab and semicolon the first line that is not empty holds; a comma otherwise. */
export function separatorOf(text: string): string {
  const first = firstLine(text);
  return ['\t', ';'].find((sign) => first.includes(sign)) ?? ',';
}

/** The first line with anything on it; empty where there is none. */
export function firstLine(text: string): string {
  return /[^\r\n]*\S[^\r\n]*/.exec(text)?.[0] ?? '';
}

/** A column's name in small letters, digits and underscores: `Dew Point (°C)` is `dew_point_c`, `DFT (µm)` is `dft_um`, a per cent sign `percent`. */
export function plainColumnName(name: string): string {
  return name.normalize('NFKC').toLowerCase().replaceAll('%', '_percent_').replaceAll('μ', 'u').replaceAll(/[^a-z0-9]+/g, '_').replaceAll(/^_+|_+$/g, '');
}

/** A decimal number; NaN for any other text. @param mayHaveComma a comma is a decimal one, since something else parts the columns. */
export function decimalNumber(text: string, mayHaveComma: boolean): number {
  const plain = text.trim().replace('−', '-');
  const pattern = mayHaveComma ? /^[+-]?(?:\d+[.,]?\d*|[.,]\d+)(?:e[+-]?\d+)?$/i : /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
  const value = pattern.test(plain) ? Number(plain.replace(',', '.')) : NaN;
  return Number.isFinite(value) ? value : NaN;
}

/** What every row gives, or one error that names the bad rows, five at most one by one. */
export function readEachRow<T>(rows: readonly TableRow[], file: string, read: (row: TableRow) => readonly T[]): T[] {
  const bad: CrosscoatError[] = [];
  const all: T[] = [];
  for (const row of rows) {
    try {
      all.push(...read(row));
    } catch (error) {
      if (!(error instanceof CrosscoatError)) throw error;
      bad.push(error);
    }
  }
  const [first] = bad;
  if (first === undefined) return all;
  const named = bad.slice(0, MOST_NAMED).map(({ message }, i) => (i === 0 ? message : message.replace(`${file}: `, '')));
  const more = bad.length > MOST_NAMED ? `; and ${counted(bad.length - MOST_NAMED, 'more bad row')}` : '';
  throw new CrosscoatError(first.code, `${named.join('; ')}${more}`, first.place);
}
