import { CrosscoatError } from '../base/errors.ts';
import type { ReadingSpec } from '../job/schema.ts';
import type { FilmReading } from './filmReading.ts';

const M_PER_UM = 1e-6;
const KG_PER_G = 1e-3;
const M2_PER_CM2 = 1e-4;
/** Digits behind the point of a difference, g or µm: finer than any balance or micrometer, coarser than what subtracting doubles leaves. */
const DIFFERENCE_DIGITS = 9;

/** What turns weight and wet film into dry film; null where nobody knows. */
export interface TakenForReadings {
  /** Of the dry film, for coupons, kg/m³. */
  readonly dryDensity_kg_m3: number | null;
  /** Of the mix as sprayed, by volume, for combs, 0 to 1. */
  readonly solidsFraction: number | null;
}

/**
 * Readings as dry film, m. A gauge says its film; a coupon its weight gain over its coated area and the density of the dry film; a
 * micrometer the difference; a comb that the wet film lies between its last wetted tooth and the next, dry one (ASTM D4414, as used),
 * times the solids. A film below zero is kept: it says that gauge or scale were not set to zero.
 *
 * @param readings as in the job's survey; their places are kept as `index`.
 * @throws CrosscoatError `range` where a coupon finds no density, or a comb no solids, naming the field of the survey to fill.
 */
export function filmReadings(readings: readonly ReadingSpec[], taken: TakenForReadings): FilmReading[] {
  return readings.map((reading, index) => {
    const [low_m, high_m] = filmOf(reading, index, taken);
    const { kind, x_mm, y_mm, area, spot } = reading;
    return { index, kind, low_m, high_m, at_m: x_mm === undefined || y_mm === undefined ? null : [x_mm / 1e3, y_mm / 1e3], area: area ?? null, spot: spot ?? null };
  });
}

function filmOf(reading: ReadingSpec, index: number, { dryDensity_kg_m3, solidsFraction }: TakenForReadings): readonly [low_m: number, high_m: number] {
  switch (reading.kind) {
    case 'metal':
      return both(reading.dry_um * M_PER_UM);
    case 'micrometer':
      return both(difference(reading.before_um, reading.after_um) * M_PER_UM);
    case 'coupon':
      if (dryDensity_kg_m3 === null) throw missing(index, 'coupon', 'dryDensity_kg_m3', 'the density of the dry film');
      return both((difference(reading.before_g, reading.after_g) * KG_PER_G) / (reading.area_cm2 * M2_PER_CM2) / dryDensity_kg_m3);
    case 'comb':
      if (solidsFraction === null) throw missing(index, 'comb', 'solids_percent', 'the solids of the mix as sprayed, by volume');
      return [reading.low_um * M_PER_UM * solidsFraction, reading.high_um === undefined ? Infinity : reading.high_um * M_PER_UM * solidsFraction];
  }
}

/** As a person subtracts what was typed: 100.13 less 100 is 0.13, so that a coupon exactly at a limit meets it. */
function difference(before: number, after: number): number {
  return Number((after - before).toFixed(DIFFERENCE_DIGITS));
}

function both(film_m: number): readonly [number, number] {
  return [film_m, film_m];
}

function missing(index: number, kind: string, field: string, what: string): CrosscoatError {
  return new CrosscoatError('range', `survey: reading ${index + 1} is a ${kind} and ${field} is not given; fill in ${what}, or name the coats whose mix has it`, { pointer: `/readings/${index}` });
}
