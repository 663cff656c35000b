import type { Film } from '../film/film.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import { JUDGED_COVER, judgedFilm, limitOf } from './judged.ts';
import type { Target } from './target.ts';
import type { FaultKind } from './verdict.ts';

/** Kind of fault of each code of `filmCodes`; code 0 is no fault. */
export const FILM_KINDS: readonly FaultKind[] = ['holiday', 'thin-lap', 'heavy-spot'];

/** Kind of fault of each code of `dryCodes`. */
export const DRY_KINDS: readonly FaultKind[] = ['dry-spray'];

/**
 * The film fault of every cell: 0 none, or 1 + its place in `FILM_KINDS`. A holiday is only a
 * holiday, not a thin lap as well. Cells less than half covered are not judged (0).
 */
export function filmCodes(film: Film, panelGrid: PanelGrid, target: Target): Uint8Array {
  const { cover } = panelGrid;
  const value_m = judgedFilm(film, target);
  const codes = new Uint8Array(cover.length);
  const holiday = limitOf('holiday', target);
  const least = limitOf('thin-lap', target);
  const most = limitOf('heavy-spot', target);
  for (let cell = 0; cell < cover.length; cell++) {
    if ((cover[cell] as number) < JUDGED_COVER) continue;
    const value = value_m[cell] as number;
    if (value < holiday) codes[cell] = 1;
    else if (value < least) codes[cell] = 2;
    else if (value > most) codes[cell] = 3;
  }
  return codes;
}

/**
 * 1 where more than the target's share of the film arrived dry and the cell is not a holiday
 * (next to nothing landed there: the holiday says it). A cell may be thin or heavy as well.
 */
export function dryCodes(
  film: Film,
  panelGrid: PanelGrid,
  target: Target,
  filmCode: Uint8Array,
): Uint8Array {
  const { cover } = panelGrid;
  const { wet_m, arrivedDry_m } = film;
  const { dryFraction } = target;
  const codes = new Uint8Array(cover.length);
  for (let cell = 0; cell < cover.length; cell++) {
    if ((cover[cell] as number) < JUDGED_COVER || filmCode[cell] === 1) continue;
    if ((arrivedDry_m[cell] as number) > dryFraction * (wet_m[cell] as number)) codes[cell] = 1;
  }
  return codes;
}
