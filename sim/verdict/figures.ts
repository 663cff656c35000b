import { weightedSum } from '../base/sums.ts';
import type { Film } from '../film/film.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import { JUDGED_COVER, judgedFilm } from './judged.ts';
import type { Target } from './target.ts';
import type { FilmFigures } from './verdict.ts';

/**
 * Mean, extremes and coefficient of variation of a film over the panel's inside.
 *
 * Mean and deviation are weighted by each cell's covered area with compensated sums, in two
 * passes (about the mean, so that an even film has a deviation of rounding only). Least and most
 * are taken over cells at least half covered, as the faults are.
 * @param thickness_m one value a cell. @returns zeros for a panel without area; cv 0 for no film.
 */
export function filmFigures(thickness_m: Float32Array, panelGrid: PanelGrid): FilmFigures {
  const { cover } = panelGrid;
  const count = cover.length;
  const squares = new Float64Array(count);
  let area = 0;
  let low = Infinity;
  let high = -Infinity;
  for (let cell = 0; cell < count; cell++) {
    const share = cover[cell] as number;
    area += share;
    if (share < JUDGED_COVER) continue;
    const value = thickness_m[cell] as number;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (!(area > 0)) return { mean_m: 0, min_m: 0, max_m: 0, cv: 0 };
  const mean = weightedSum(thickness_m, cover) / area;
  for (let cell = 0; cell < count; cell++) {
    const off = (thickness_m[cell] as number) - mean;
    squares[cell] = off * off;
  }
  const deviation = Math.sqrt(weightedSum(squares, cover) / area);
  return {
    mean_m: mean,
    min_m: low <= high ? low : mean,
    max_m: low <= high ? high : mean,
    cv: mean > 0 ? deviation / mean : 0,
  };
}

/**
 * Share of the panel's area whose film lies between the target's limits (both included) and is
 * not dry-sprayed, 0 to 1, over cells at least half covered, weighted by cover.
 */
export function inTargetFraction(film: Film, panelGrid: PanelGrid, target: Target): number {
  const { cover } = panelGrid;
  const value_m = judgedFilm(film, target);
  const { wet_m, arrivedDry_m } = film;
  const least = target.minFraction * target.thickness_m;
  const most = target.maxFraction * target.thickness_m;
  const { dryFraction } = target;
  let area = 0;
  let good = 0;
  for (let cell = 0; cell < cover.length; cell++) {
    const share = cover[cell] as number;
    if (share < JUDGED_COVER) continue;
    area += share;
    const value = value_m[cell] as number;
    if (value < least || value > most) continue;
    if ((arrivedDry_m[cell] as number) > dryFraction * (wet_m[cell] as number)) continue;
    good += share;
  }
  return area > 0 ? good / area : 0;
}
