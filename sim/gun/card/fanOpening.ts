import { CrosscoatError, type Warning } from '../../base/errors.ts';
import type { Measured } from './measured.ts';
import { studentQuantile } from '../../base/studentQuantile.ts';

/** A fan's full width, read at a distance from the nozzle. */
export interface WidthReading {
  readonly distance_m: number;
  readonly width_m: number;
}

/** How a fan opens: straight rays, `width = slope · (distance - origin)`. */
export interface FanOpening {
  readonly slope: Measured;
  /** Full angle between the fan's edges, `2 atan(slope/2)`, rad. */
  readonly angle_rad: Measured;
  /** Where the rays seem to start, in front of the nozzle (behind it if negative), m. */
  readonly origin_m: Measured;
  /** Nearest and farthest distance that was read: the line is believed between them. */
  readonly range_m: readonly [near: number, far: number];
  /** The line's middle: the mean distance, and the width there. */
  readonly middle: { readonly distance_m: number; readonly width_m: Measured };
  readonly warnings: readonly Warning[];
}

/** Assumed: a tape on a fan's soft edge is right within this, both edges together, m. */
export const WIDTH_WITHIN_M = 5e-3;
/** Assumed: distances read by hand that differ by less are the same. */
const LEAST_APART_M = 0.01;
/** Between the origin and the nearest distance, as a set-up asks for it; and the farthest that an origin may lie behind the nozzle. */
const LEAST_RAY_M = 5e-3;
const FARTHEST_BEHIND_M = 0.5;

/**
 * Opening angle and virtual origin by the fan's width at two distances or more: a straight line by least squares, all widths
 * counting alike. Intervals: `within_m` carried through the line; with three or more also by what the line leaves
 * over, with Student's t, and the wider of the two is taken. Distances are taken as exact.
 *
 * @param within_m half 95 % interval of a width; 5 mm (assumed) where nothing is said.
 * @throws CrosscoatError `geometry` for fewer than two distances 10 mm apart, a fan that does not widen, or an origin beyond
 *   what a set-up takes; `range` for a width or distance that is not above 0.
 */
export function fanOpening(readings: readonly WidthReading[], within_m: number = WIDTH_WITHIN_M): FanOpening {
  checkWidths(readings);
  const count = readings.length;
  const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / count;
  const distance_m = meanOf(readings.map((reading) => reading.distance_m));
  const width_m = meanOf(readings.map((reading) => reading.width_m));
  const sum = (of: (reading: WidthReading) => number) => readings.reduce((total, reading) => total + of(reading), 0);
  const squares_m2 = sum((reading) => (reading.distance_m - distance_m) ** 2);
  const slope = sum((reading) => (reading.distance_m - distance_m) * reading.width_m) / squares_m2;
  checkSlope(slope);
  const left = readings.map((reading) => reading.width_m - width_m - slope * (reading.distance_m - distance_m));
  const each_m = Math.max(within_m, scatterWithin(left));
  const slopeWithin = each_m / Math.sqrt(squares_m2);
  const widthWithin_m = each_m / Math.sqrt(count);
  const origin_m = distance_m - width_m / slope;
  const distances = readings.map((reading) => reading.distance_m);
  const range_m = [Math.min(...distances), Math.max(...distances)] as const;
  checkOrigin(origin_m, range_m[0]);
  return {
    slope: { value: slope, within: slopeWithin },
    angle_rad: { value: 2 * Math.atan(slope / 2), within: slopeWithin / (1 + (slope / 2) ** 2) },
    origin_m: { value: origin_m, within: Math.hypot(widthWithin_m / slope, (width_m * slopeWithin) / slope ** 2) },
    range_m,
    middle: { distance_m, width_m: { value: width_m, within: widthWithin_m } },
    warnings: bendWarnings(left, within_m),
  };
}

/** The fan's full width by the line at a distance. Outside `range_m` it is drawn on, which the caller says. */
export function openedWidth({ slope, middle }: FanOpening, distance_m: number): Measured {
  const away_m = distance_m - middle.distance_m;
  return { value: middle.width_m.value + slope.value * away_m, within: Math.hypot(middle.width_m.within, slope.within * away_m) };
}

/** Half 95 % interval of one width by what the line leaves over; 0 with two widths, which leave nothing. */
function scatterWithin(left: readonly number[]): number {
  const freedom = left.length - 2;
  if (freedom < 1) return 0;
  return studentQuantile(0.975, freedom) * Math.sqrt(left.reduce((sum, value) => sum + value * value, 0) / freedom);
}

function checkWidths(readings: readonly WidthReading[]): void {
  readings.forEach(({ distance_m, width_m }, i) => {
    if (distance_m > 0 && width_m > 0 && Number.isFinite(distance_m + width_m)) return;
    throw new CrosscoatError('range', `widths: row ${i + 1} says ${width_m * 1000} mm at ${distance_m * 1000} mm; give a width and a distance above 0`, { row: i + 1 });
  });
  const distances = readings.map(({ distance_m }) => distance_m);
  const apart_m = readings.length === 0 ? 0 : Math.max(...distances) - Math.min(...distances);
  if (apart_m >= LEAST_APART_M) return;
  throw new CrosscoatError('geometry', `widths: the distances lie ${(apart_m * 1000).toFixed(1)} mm apart, and two that are at least ${LEAST_APART_M * 1000} mm apart are needed to say how a fan opens; read the width nearer and farther, say at 150 and 250 mm`);
}

function checkSlope(slope: number): void {
  if (slope > 0) return;
  throw new CrosscoatError('geometry', `widths: the fan does not widen with the distance (${slope.toFixed(3)} m a metre), which no fan of straight rays does; look whether the rows are the right way round, and read again`);
}

function checkOrigin(origin_m: number, nearest_m: number): void {
  if (origin_m >= -FARTHEST_BEHIND_M && origin_m <= nearest_m - LEAST_RAY_M) return;
  const at = `${(origin_m * 1000).toFixed(0)} mm in front of the nozzle`;
  throw new CrosscoatError('geometry', `widths: the fan's edges meet ${at}, which is not from ${-FARTHEST_BEHIND_M * 1000} to ${((nearest_m - LEAST_RAY_M) * 1000).toFixed(0)} mm (before the nearest distance read); read the widths again, at distances farther apart`);
}

function bendWarnings(left: readonly number[], within_m: number): Warning[] {
  const most_m = Math.max(...left.map(Math.abs));
  if (left.length < 3 || most_m <= 2 * within_m) return [];
  return [{ code: 'model-limit', text: `A width lies ${(most_m * 1000).toFixed(0)} mm off a straight line, more than it is said to be right within: the fan may not open in straight rays over these distances, or a row is wrong.`, place: {} }];
}
