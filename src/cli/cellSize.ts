import { CrosscoatError } from '../../sim/index.ts';

const MM_PER_UNIT: Readonly<Record<string, number>> = { '': 1, mm: 1, cm: 10, m: 1000, in: 25.4, '"': 25.4 };

/** The job's own limits for a cell, mm. */
const SMALLEST_mm = 1;
const LARGEST_mm = 10;

/** `2mm`, `0.2 cm`, `0.1in` or plain `2` as mm. @throws `unit` or `range`. */
export function parseCell_mm(text: string): number {
  const match = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(\D*?)\s*$/i.exec(text);
  if (match === null) {
    throw new CrosscoatError('unit', `--cell = "${text}" is not a length; give one from ${SMALLEST_mm}mm to ${LARGEST_mm}mm, such as 2mm`);
  }
  const unit = (match[2] ?? '').toLowerCase();
  const size = Object.hasOwn(MM_PER_UNIT, unit) ? MM_PER_UNIT[unit] : undefined;
  if (size === undefined) {
    throw new CrosscoatError('unit', `--cell = "${text}": "${match[2] ?? ''}" is not a unit of length that is known here; give mm, cm, m or in, such as 2mm`);
  }
  const cell_mm = Number(match[1]) * size;
  if (cell_mm >= SMALLEST_mm && cell_mm <= LARGEST_mm) return cell_mm;
  throw new CrosscoatError('range', `--cell = "${text}" is not from ${SMALLEST_mm} to ${LARGEST_mm} mm (finer costs time and gains nothing, coarser misses laps); give one between`);
}
