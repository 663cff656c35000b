import { dryBlock, type DryTally } from '../../film/dry/dryBlock.ts';
import type { FilmLaw } from '../../film/law.ts';
import { FRESH_STEP_S } from '../../film/life/advance.ts';
import { emptyLivingFilm } from '../../film/life/state.ts';
import { wetFilm } from '../../film/life/wetFilm.ts';

/** An even film laid at once on a bare backing. */
export interface EvenFilm {
  readonly law: FilmLaw;
  readonly wet_m: number;
  /** Volume solids as it lies. */
  readonly solidsFraction: number;
  /** Share of its solvent that is fast, by volume. */
  readonly fastFraction: number;
}

/** How an even film dries. */
export interface EvenFilmDrying {
  /** Dry to touch, and little enough solvent left for the next coat, s after it was laid; null where not reached in `LONGEST_DRYING_S`. */
  readonly touchDry_s: number | null;
  readonly recoat_s: number | null;
  /** Solvents left at some times, in order of time; the first row is as laid, the last at the end of the watch. */
  readonly left: readonly SolventLeft[];
}

/** Solvent in the film at one time, as thickness. */
export interface SolventLeft {
  readonly time_s: number;
  readonly fast_m: number;
  readonly slow_m: number;
}

/** An even film is watched for two days at most, s. */
export const LONGEST_DRYING_S = 48 * 3600;
/** A step is at most this share of the time since the film was laid. */
const STEP_SHARE = 1 / 24;
const TALLY: DryTally = { fast_m: 0, slow_m: 0, wave_m_s: 0 };
const CELL = { lowColumn: 0, highColumn: 1, lowRow: 0, highRow: 1 };

/**
 * The life of one cell of even film until it is ready for another coat, by a panel's own drying kernel. Steps of a quarter
 * second, then a twenty-fourth of the time that the film has lain, as on a panel. Left out: the time that
 * laying takes, flow, the gun's air, a coat beneath.
 * @param forAtLeast_s watches so long even where the film is ready before.
 */
export function dryEvenFilm({ law, wet_m, solidsFraction, fastFraction }: EvenFilm, forAtLeast_s = 0): EvenFilmDrying {
  const film = emptyLivingFilm({ columns: 1, rows: 1, cellSize_m: 1 }, Uint8Array.of(1), law.air.temperature_K);
  const landing = { ...CELL, wet_m: Float32Array.of(wet_m), solids_m: Float32Array.of(wet_m * solidsFraction), arrivedDry_m: new Float32Array(1), fastFraction };
  wetFilm(film, law, landing);
  const left: SolventLeft[] = [];
  const note = () => left.push({ time_s: film.time_s, fast_m: film.fast_m[0] as number, slow_m: film.slow_m[0] as number });
  note();
  const isReady = () => (film.readyAt_s[0] as number) >= 0 && film.time_s >= forAtLeast_s;
  while (wet_m > 0 && !isReady() && film.time_s < LONGEST_DRYING_S) {
    const step_s = Math.min(LONGEST_DRYING_S - film.time_s, Math.max(FRESH_STEP_S, STEP_SHARE * film.time_s));
    film.time_s += step_s;
    dryBlock(film, law, CELL, step_s, 1, TALLY);
    note();
  }
  return { touchDry_s: reached(film.setAt_s), recoat_s: reached(film.readyAt_s), left };
}

function reached(at_s: Float32Array): number | null {
  const [time_s = NaN] = at_s;
  return time_s >= 0 ? time_s : null;
}
