import type { FilmLaw } from '../law.ts';
import { filmNow } from './advance.ts';
import { emptyLivingFilm, type LivingFilm } from './state.ts';
import { layBeneath } from './wetFilm.ts';

/**
 * The film as the next coat finds it: what lies there stays, with its temperature, its clock set to 0
 * and everything that the coat beneath went through forgotten. Film that has set lies beneath; film
 * that is still wet will mix with the fresh coat.
 */
export function filmForNextCoat(film: LivingFilm, law: FilmLaw): LivingFilm {
  const old = filmNow(film, law);
  const next = emptyLivingFilm(old.grid, old.inside, law.air.temperature_K);
  next.solids_m.set(old.solids_m);
  next.fast_m.set(old.fast_m);
  next.slow_m.set(old.slow_m);
  next.beneathSolids_m.set(old.beneathSolids_m);
  next.beneathFast_m.set(old.beneathFast_m);
  next.beneathSlow_m.set(old.beneathSlow_m);
  next.temperature_K.set(old.temperature_K);
  const area_m2 = old.grid.cellSize_m ** 2;
  for (let cell = 0; cell < next.solids_m.length; cell++) {
    const solids = next.solids_m[cell] as number;
    const fast = next.fast_m[cell] as number;
    const slow = next.slow_m[cell] as number;
    next.account.landedSolids_m3 += (solids + (next.beneathSolids_m[cell] as number)) * area_m2;
    next.account.landedFast_m3 += (fast + (next.beneathFast_m[cell] as number)) * area_m2;
    next.account.landedSlow_m3 += (slow + (next.beneathSlow_m[cell] as number)) * area_m2;
    if (solids > 0 && solids >= law.setFraction * (solids + fast + slow)) layBeneath(next, cell);
  }
  for (let tile = 0; tile < next.tiles.due_s.length; tile++) {
    if ((old.tiles.due_s[tile] as number) < Infinity) next.tiles.due_s[tile] = 0;
  }
  return next;
}
