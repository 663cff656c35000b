import { MOVED_M } from './state.ts';
import type { FilmMoment } from './snapshot.ts';

/** What one line says of a film at one time: means over the cells that have film. */
export interface MomentFigures {
  readonly time_s: number;
  readonly meanWet_m: number;
  readonly meanDry_m: number;
  /** Volume share of solids in what lies there. */
  readonly solidsFraction: number;
  readonly meanFilm_K: number;
  /** Of the film that has not set, over the dew point; NaN where all has. */
  readonly leastMargin_K: number;
  /** Area whose film has run by more than `MOVED_M`. */
  readonly ranArea_m2: number;
  readonly longestRun_m: number;
  /** Whether anything still runs. */
  readonly isRunning: boolean;
}

/** Flow slower than this share of a cell in a second moves nothing that can be seen. */
const LEAST_MOVE = 1e-3;

/** The figures of a moment; NaN means without film. @param dewPoint_K of the room's air. */
export function momentFigures({ grid, time_s, wet_m, dry_m, run_m, temperature_K, film }: FilmMoment, dewPoint_K: number): MomentFigures {
  let count = 0;
  let wet = 0;
  let dry = 0;
  let warmth = 0;
  let coldest_K = Infinity;
  let ran = 0;
  let longest = 0;
  for (let cell = 0; cell < wet_m.length; cell++) {
    if (!((wet_m[cell] as number) > 0)) continue;
    count++;
    wet += wet_m[cell] as number;
    dry += dry_m[cell] as number;
    warmth += temperature_K[cell] as number;
    if (!((film.setAt_s[cell] as number) >= 0)) coldest_K = Math.min(coldest_K, temperature_K[cell] as number);
    if ((run_m[cell] as number) > MOVED_M) ran++;
    longest = Math.max(longest, run_m[cell] as number);
  }
  return {
    time_s,
    meanWet_m: wet / count,
    meanDry_m: dry / count,
    solidsFraction: dry / wet,
    meanFilm_K: warmth / count,
    leastMargin_K: coldest_K < Infinity ? coldest_K - dewPoint_K : NaN,
    ranArea_m2: ran * grid.cellSize_m ** 2,
    longestRun_m: longest,
    isRunning: film.tiles.wave_m_s.some((wave_m_s) => wave_m_s > LEAST_MOVE * grid.cellSize_m),
  };
}
