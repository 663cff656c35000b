import type { ReadingSpec } from '../../job/schema.ts';
import { optionalCell } from '../csvCell.ts';

type Loose = Readonly<Record<string, string | number | undefined>>;

/** Columns in their order: name, key of the reading, and the kind that alone has it. */
const COLUMNS: readonly (readonly [name: string, key: string, kind: ReadingSpec['kind'] | null])[] = [
  ['timestamp', 'at', null],
  ['area_id', 'area', null],
  ['spot_id', 'spot', null],
  ['x_mm', 'x_mm', null],
  ['y_mm', 'y_mm', null],
  ['dft_um', 'dry_um', 'metal'],
  ['before_g', 'before_g', 'coupon'],
  ['after_g', 'after_g', 'coupon'],
  ['area_cm2', 'area_cm2', 'coupon'],
  ['before_um', 'before_um', 'micrometer'],
  ['after_um', 'after_um', 'micrometer'],
  ['wft_low_um', 'low_um', 'comb'],
  ['wft_high_um', 'high_um', 'comb'],
  ['note', 'note', null],
];

/** Figures that a job's number keeps: enough to read it back as it was. */
const DIGITS = 17;

/**
 * Readings as CSV (RFC 4180), one a row in their order, the unit in each column's name, as `parseSurveyReadings` reads them back. Only
 * columns that hold something are written. A comb whose every tooth was wetted has no `wft_high_um`. Words are safe from spreadsheet
 * formulas: an apostrophe goes before a first letter that would begin one.
 * @param readings as in the job: µm, mm, g, cm².
 */
export function readingsCsv(readings: readonly ReadingSpec[]): string {
  const loose = readings as unknown as readonly Loose[];
  const used = COLUMNS.filter(([, key, kind]) => loose.some((reading) => belongs(reading, kind) && reading[key] !== undefined));
  const columns = used.length === 0 ? COLUMNS.filter(([name]) => name === 'dft_um') : used;
  const rows = loose.map((reading) => columns.map(([, key, kind]) => (belongs(reading, kind) ? optionalCell(reading[key], DIGITS) : '')).join(','));
  return `${[columns.map(([name]) => name).join(','), ...rows].join('\r\n')}\r\n`;
}

function belongs(reading: Loose, kind: ReadingSpec['kind'] | null): boolean {
  return kind === null || reading['kind'] === kind;
}
