import type { Film } from '../film/film.ts';
import type { FilmMoment } from '../film/life/snapshot.ts';

/** What had landed by a moment, as the film of a coat on a bare panel. Passes are not counted. */
export function landedFilm({ grid, time_s, film }: FilmMoment): Film {
  return { grid, time_s, wet_m: film.landed_m, dry_m: film.laid_m, arrivedDry_m: film.arrivedDry_m, passes: new Uint16Array(film.landed_m.length) };
}
