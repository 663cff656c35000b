import { dsvFormat } from 'd3-dsv';
import { decimalNumber, firstLine, separatorOf, type TableRow } from '../../../base/columns.ts';

/** Rows of a text that holds readings, whatever parts its columns. */
export interface ReadingTable {
  /** Null where the first row holds numbers already. */
  readonly header: readonly string[] | null;
  readonly rows: readonly TableRow[];
  /** Something else than a comma parts the columns. */
  readonly mayHaveComma: boolean;
}

/** Commas, semicolons or tabs; or spaces, where none of them is there: columns pasted from a window. Empty rows are passed over. */
export function readingTable(text: string): ReadingTable {
  const plain = text.replace(/^\uFEFF/, '');
  const separator = separatorOf(plain);
  const isSpaced = separator === ',' && !firstLine(plain).includes(',') && hasSpacedFields(plain);
  const mayHaveComma = separator !== ',' || isSpaced;
  const rows = isSpaced ? spacedRows(plain) : dsvFormat(separator).parseRows(plain, (fields, index) => (fields.every((field) => field.trim() === '') ? null : { fields, row: index + 1 }));
  const [first, ...rest] = rows;
  if (first === undefined) return { header: null, rows: [], mayHaveComma };
  const isHeadless = first.fields.every((field) => field.trim() === '' || !Number.isNaN(decimalNumber(field, mayHaveComma)));
  return isHeadless ? { header: null, rows, mayHaveComma } : { header: first.fields, rows: rest, mayHaveComma };
}

/** Whether some line begins with a number and goes on behind spaces. */
function hasSpacedFields(text: string): boolean {
  return /^[^\S\r\n]*[+-]?\d[\d.,]*[^\S\r\n]+[^\s,]/m.test(text);
}

/** A unit in brackets stays with its name. */
function spacedRows(text: string): TableRow[] {
  return text.split(/\r\n|\r|\n/).flatMap((line, index) => (line.trim() === '' ? [] : [{ fields: line.trim().split(/\s+(?![([])/), row: index + 1 }]));
}
