import { viscosityOf, type FilmLaw } from '../law.ts';
import { filmNow } from './advance.ts';
import type { LivingFilm } from './state.ts';

/** A living film at one time, as pictures, reports and judgements read it. Arrays have one value a cell. */
export interface FilmMoment {
  readonly grid: LivingFilm['grid'];
  readonly time_s: number;
  /** All that lies there: fresh and beneath, solids and solvent. */
  readonly wet_m: Float32Array;
  readonly dry_m: Float32Array;
  /** Solids fraction of the uppermost layer; NaN where there is no film. */
  readonly solidsFraction: Float32Array;
  /** Of the uppermost layer at its own temperature; NaN where there is no film. */
  readonly viscosity_Pa_s: Float32Array;
  readonly temperature_K: Float32Array;
  readonly run_m: Float32Array;
  /** The film that the moment was taken of, brought to one time: its marks and account. */
  readonly film: LivingFilm;
}

/** A film at its time, without changing it. */
export function momentOf(living: LivingFilm, law: FilmLaw): FilmMoment {
  const film = filmNow(living, law);
  const cells = film.solids_m.length;
  const wet_m = new Float32Array(cells);
  const dry_m = new Float32Array(cells);
  const solidsFraction = new Float32Array(cells).fill(NaN);
  const viscosity_Pa_s = new Float32Array(cells).fill(NaN);
  for (let cell = 0; cell < cells; cell++) {
    const solids = film.solids_m[cell] as number;
    const fresh = solids + (film.fast_m[cell] as number) + (film.slow_m[cell] as number);
    const beneath = film.beneathSolids_m[cell] as number;
    wet_m[cell] = fresh + beneath + (film.beneathFast_m[cell] as number) + (film.beneathSlow_m[cell] as number);
    dry_m[cell] = solids + beneath;
    if (!(fresh > 0)) continue;
    solidsFraction[cell] = solids / fresh;
    viscosity_Pa_s[cell] = viscosityOf(law, solids / fresh, film.temperature_K[cell] as number);
  }
  return { grid: film.grid, time_s: film.time_s, wet_m, dry_m, solidsFraction, viscosity_Pa_s, temperature_K: film.temperature_K, run_m: film.run_m, film };
}
