import type { Amounts } from './amounts.ts';
import { passedAt, type SweepTable } from './sweepTable.ts';

/** A straight even stretch of a stroke: constant speed, distance and fan angle, gun square. */
export interface Sweep {
  readonly table: SweepTable;
  /** Distance over the footprint's own distance. */
  readonly scale: number;
  readonly startX_m: number;
  readonly startY_m: number;
  /** Unit direction of travel. */
  readonly travelX: number;
  readonly travelY: number;
  readonly length_m: number;
  readonly liquid_m3: number;
  readonly amounts: Amounts;
  readonly stroke: number;
}

/**
 * Flux summed over a sweep at one place per landing liquid, 1/m²: the running sum of the
 * footprint along the travel at the sweep's start less that at its end. Exact for the sampled
 * footprint up to the table's interpolation (about 1e-5 of the peak).
 */
export function sweepFlux(sweep: Sweep, x_m: number, y_m: number): number {
  const { scale, travelX, travelY, length_m } = sweep;
  const awayX = x_m - sweep.startX_m;
  const awayY = y_m - sweep.startY_m;
  const along_m = awayX * travelX + awayY * travelY;
  const offset_m = awayY * travelX - awayX * travelY;
  return swept(sweep.table, offset_m / scale, along_m / scale, length_m / scale) / (scale * length_m);
}

/** As `sweepFlux` in the table's own lengths, times scale · length. */
export function swept(table: SweepTable, offset_m: number, along_m: number, length_m: number): number {
  return passedAt(table, offset_m, along_m) - passedAt(table, offset_m, along_m - length_m);
}
