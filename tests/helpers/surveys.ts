import type { ReadingSpec, RuleSpec } from '../../sim/job/schema.ts';
import type { FilmReading } from '../../sim/survey/filmReading.ts';
import { filmReadings } from '../../sim/survey/filmReadings.ts';

const UM_PER_MIL = 25.4;

/** Gauge readings, µm. */
export function gaugeSpecs(films_um: readonly number[]): ReadingSpec[] {
  return films_um.map((dry_um) => ({ kind: 'metal', dry_um }));
}

/** Gauge readings as films. */
export function gauge(...films_um: readonly number[]): FilmReading[] {
  return filmReadings(gaugeSpecs(films_um), { dryDensity_kg_m3: null, solidsFraction: null });
}

/** Spot means, mil: a spot to each. */
export function spotsInMil(...films_mil: readonly number[]): FilmReading[] {
  return gauge(...films_mil.map((film) => film * UM_PER_MIL)).map((reading, i) => ({ ...reading, spot: String(i + 1) }));
}

/** Combs on a mix of so many solids. */
export function combs(solidsFraction: number, ...teeth_um: readonly (readonly [low: number, high?: number])[]): FilmReading[] {
  return filmReadings(teeth_um.map(([low_um, high_um]) => ({ kind: 'comb', low_um, ...(high_um === undefined ? {} : { high_um }) })), { dryDensity_kg_m3: null, solidsFraction });
}

/** The mean-and-80 % rule at 100 µm, changed where a test says so. */
export function meanEighty(changes: Partial<Extract<RuleSpec, { kind: 'mean-80' }>> = {}): RuleSpec {
  return { kind: 'mean-80', nominal_um: 100, low_percent: 80, share_percent: 20, boundary: 'strict', correction_um: 0, ...changes };
}

/** The spots-and-areas rule, limits in mil. */
export function spotsAreas(min_mil: number, max_mil: number | null, level = 3): RuleSpec {
  return { kind: 'spots-areas', min_um: min_mil * UM_PER_MIL, ...(max_mil === null ? {} : { max_um: max_mil * UM_PER_MIL }), level };
}

/** The 90/10 rule at 100 µm. */
export const NINETY_TEN: RuleSpec = { kind: 'ninety-ten', nominal_um: 100, low_percent: 90, share_percent: 10 };
