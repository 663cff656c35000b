import { csvParseRows } from 'd3-dsv';
import { CrosscoatError } from '../base/errors.ts';
import { type Quantity, readHeader, RECORDING_DEFAULTS, type RecordingColumn, type RecordingHeader } from './recordingColumns.ts';
import { RecordingRows } from './recordingRows.ts';

/** Reads whole lines of one form of recorded file into rows. */
export interface LineReader {
  /** Whole lines, each with its line end. */
  read(lines: string): void;
  /** Null until the header is read. */
  readonly rows: RecordingRows | null;
  readonly columns: readonly RecordingColumn[];
  readonly ignored: readonly string[];
}

const TRIGGER_WORDS: Record<string, number> = { off: 0, air: 0.5, spray: 1 };

/** @returns NaN for anything but a plain decimal number. */
export function plainNumber(field: string): number {
  const text = field.trim();
  const second = text.charCodeAt(1) | 32;
  const isOtherBase = second === 120 || second === 98 || second === 111;
  return text === '' || isOtherBase ? NaN : Number(text);
}

/** Trigger as a number or a word; NaN for neither. */
export function triggerValue(field: string): number {
  const value = plainNumber(field);
  if (!Number.isNaN(value)) return value;
  const word = field.trim().toLowerCase();
  return Object.hasOwn(TRIGGER_WORDS, word) ? (TRIGGER_WORDS[word] as number) : NaN;
}

/** CSV by RFC 4180 with a header row. */
export class CsvLines implements LineReader {
  rows: RecordingRows | null = null;
  columns: readonly RecordingColumn[] = [];
  ignored: readonly string[] = [];
  private fieldCount = 0;
  private row = 0;
  private readonly values = new Float64Array(8);

  constructor(private readonly file: string) {}

  read(lines: string): void {
    csvParseRows(lines, (fields) => {
      this.row++;
      if (fields.length > 1 || (fields[0] as string).trim() !== '') this.readRow(fields);
      return null;
    });
  }

  private readRow(fields: readonly string[]): void {
    if (this.rows === null) {
      this.startRows(readHeader(fields, this.file));
      return;
    }
    this.checkFieldCount(fields);
    const { values, columns } = this;
    for (let i = 0; i < 8; i++) values[i] = this.valueOf(columns[i] as RecordingColumn, fields);
    this.rows.add(this.row, values[0] as number, values[1] as number, values[2] as number, values[3] as number, values[4] as number, values[5] as number, values[6] as number, values[7] as number);
  }

  private startRows(header: RecordingHeader): void {
    this.columns = header.columns;
    this.fieldCount = header.fieldCount;
    this.ignored = header.ignored;
    const names = Object.fromEntries(header.columns.map(({ quantity, name }) => [quantity, name ?? quantity]));
    this.rows = new RecordingRows(this.file, names as Record<Quantity, string>);
  }

  private checkFieldCount(fields: readonly string[]): void {
    const extra = fields.slice(this.fieldCount);
    if (fields.length >= this.fieldCount && extra.every((field) => field.trim() === '')) return;
    const hint = extra.length > 0 ? '; decimals need a point, not a comma' : '';
    throw new CrosscoatError('columns', `${this.file}: row ${this.row} has ${fields.length} fields and the header ${this.fieldCount}${hint}; give each row one value for each column`, { file: this.file, row: this.row });
  }

  private valueOf(column: RecordingColumn, fields: readonly string[]): number {
    if (column.field < 0) return RECORDING_DEFAULTS[column.quantity as keyof typeof RECORDING_DEFAULTS];
    const field = fields[column.field] as string;
    const value = column.quantity === 'trigger' ? triggerValue(field) : plainNumber(field);
    if (Number.isFinite(value)) return value * column.scale;
    const wanted = column.quantity === 'trigger' ? 'a number from 0 to 1, or off, air or spray' : 'a finite number with a decimal point';
    throw new CrosscoatError('range', `${this.file}: row ${this.row}, column ${column.name}: "${field.slice(0, 40)}" is not ${wanted}; mend the value or take the row out`, { file: this.file, row: this.row, column: column.name ?? '' });
  }
}
