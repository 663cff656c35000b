import { CrosscoatError } from '../../sim/index.ts';
import { quantityOf } from './optionValues.ts';

/** The job's own limits for a cell, mm. */
const SMALLEST_mm = 1;
const LARGEST_mm = 10;

/** `2mm`, `0.2 cm`, `0.1in` or plain `2` as mm. @throws `unit` or `range`. */
export function parseCell_mm(text: string): number {
  const cell_mm = Number((quantityOf('--cell', text, ['length', 'mm', '2mm']) * 1000).toPrecision(12));
  if (cell_mm >= SMALLEST_mm && cell_mm <= LARGEST_mm) return cell_mm;
  throw new CrosscoatError('range', `--cell = "${text}" is not from ${SMALLEST_mm} to ${LARGEST_mm} mm (finer costs time and gains nothing, coarser misses laps); give one between`);
}
