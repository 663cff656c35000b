import type { StrokeMeasures } from '../stroke/stroke.ts';
import { numberCell } from './csvCell.ts';

const DEGREES = 180 / Math.PI;

/** Columns of a file of technique measures and how each is read; strokes and passes from 1. */
const COLUMNS: readonly (readonly [name: string, value: (m: StrokeMeasures) => number])[] = [
  ['stroke', (m) => m.stroke + 1],
  ['pass', (m) => m.pass + 1],
  ['start_s', (m) => m.start_s],
  ['duration_s', (m) => m.duration_s],
  ['start_x_mm', (m) => m.start_m[0] * 1000],
  ['start_y_mm', (m) => m.start_m[1] * 1000],
  ['end_x_mm', (m) => m.end_m[0] * 1000],
  ['end_y_mm', (m) => m.end_m[1] * 1000],
  ['length_mm', (m) => m.length_m * 1000],
  ['direction_deg', (m) => m.direction_rad * DEGREES],
  ['speed_m_s', (m) => m.speed.mean_m_s],
  ['speed_cv', (m) => m.speed.cv],
  ['distance_mm', (m) => m.distance.mean_m * 1000],
  ['distance_cv', (m) => m.distance.cv],
  ['tilt_deg', (m) => m.tilt.mean_rad * DEGREES],
  ['tilt_worst_deg', (m) => m.tilt.worst_rad * DEGREES],
  ['overlap_percent', (m) => (m.overlap?.meanFraction ?? NaN) * 100],
  ['overlap_mm', (m) => (m.overlap?.mean_m ?? NaN) * 1000],
  ['overlap_worst_percent', (m) => (m.overlap?.worstFraction ?? NaN) * 100],
  ['overlap_worst_mm', (m) => (m.overlap?.worst_m ?? NaN) * 1000],
  ['trigger_on_mm', (m) => (m.triggerOn_m ?? NaN) * 1000],
  ['trigger_off_mm', (m) => (m.triggerOff_m ?? NaN) * 1000],
  ['stops', (m) => m.stops.length],
  ['stopped_s', (m) => m.stops.reduce((sum, stop) => sum + stop.duration_s, 0)],
];

/** Technique measures as CSV lines without line ends, header first; a cell with nothing to say is empty. */
export function* strokesCsvRows(measures: readonly StrokeMeasures[]): Generator<string> {
  yield COLUMNS.map(([name]) => name).join(',');
  for (const measure of measures) yield COLUMNS.map(([, value]) => numberCell(value(measure))).join(',');
}
