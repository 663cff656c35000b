/** Figures of the published rules that films are held to; the rules themselves are in `sim/survey/rules`. */

/** A maximum where the specification gives none, as a multiple of the nominal film (ISO 12944, advice, from memory). */
export const USUAL_MAXIMUM = 3;

/** What is specified of a film, as it is stated. */
export interface SpecifiedFilm {
  readonly min_um: number;
  readonly max_um?: number | undefined;
  /** Restriction level, 1 to 5. */
  readonly level: number;
}

/** What the mean of a spot, and of an area, is held to; null for no limit. */
export interface SpotLimits {
  readonly spotMin_m: number;
  readonly spotMax_m: number | null;
  readonly areaMin_m: number;
  readonly areaMax_m: number | null;
}

/** One restriction level: shares of the specified limits for a spot, in whole per cent; null for no limit. */
interface Level {
  readonly low_percent: number;
  readonly high_percent: number | null;
  readonly areaHasMax: boolean;
}

/** SSPC-PA 2 (2012 on), table 1, from memory; that level 3 goes by 80 and 120 % was read. Single gauge readings are held to nothing. */
const LEVELS: Readonly<Record<number, Level>> = {
  1: { low_percent: 100, high_percent: 100, areaHasMax: true },
  2: { low_percent: 100, high_percent: 120, areaHasMax: true },
  3: { low_percent: 80, high_percent: 120, areaHasMax: true },
  4: { low_percent: 80, high_percent: 150, areaHasMax: true },
  5: { low_percent: 80, high_percent: null, areaHasMax: false },
};

/** A single specified film stands for it and so much to each side (SSPC-PA 2, 2012 on, as quoted by others). */
const SINGLE_VALUE_SHARE_PERCENT = 20;

/** The limits that a restriction level draws from the specified ones. @param rule level 1 to 5; without `max_um` nothing has a most. */
export function spotLimits({ min_um, max_um, level }: SpecifiedFilm): SpotLimits {
  const { low_percent, high_percent, areaHasMax } = LEVELS[level] as Level;
  return {
    spotMin_m: metresOf((min_um * low_percent) / 100),
    spotMax_m: max_um === undefined || high_percent === null ? null : metresOf((max_um * high_percent) / 100),
    areaMin_m: metresOf(min_um),
    areaMax_m: max_um === undefined || !areaHasMax ? null : metresOf(max_um),
  };
}

/** The range that a single specified film stands for: 20 % to each side of it. */
export function singleValueRange(nominal_um: number): { readonly min_um: number; readonly max_um: number } {
  // Limits that people read: without the last digits of binary rounding.
  const at = (percent: number): number => Number(((nominal_um * percent) / 100).toPrecision(12));
  return { min_um: at(100 - SINGLE_VALUE_SHARE_PERCENT), max_um: at(100 + SINGLE_VALUE_SHARE_PERCENT) };
}

/** Micrometres as stated in a job, m. */
export function metresOf(film_um: number): number {
  return film_um * 1e-6;
}
