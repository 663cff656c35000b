import type { ComparedFigure } from '../../report/reportedComparison.ts';
import type { LifeFigures } from '../../verdict/lifeVerdict.ts';
import type { LifeLimits } from '../../verdict/target.ts';
import { ladderAt, type FilmLadder } from './filmLadder.ts';
import type { LaidValues } from './laidValues.ts';
import type { PatchLife } from './patch.ts';
import { halfInterval } from './spread.ts';

/** Figures of a film's life. */
export type LifeName = 'runMarginFraction' | 'holdMarginFraction' | 'holdMargin_m' | 'peel_m' | 'blushMargin_K';
/** A figure with its half interval. */
export type LifeFigure = Omit<ComparedFigure, 'isOutsideRange'>;

/** What the figures of a life are worked out of. */
export interface LifeParts {
  readonly figures: LifeFigures;
  readonly ladder: FilmLadder;
  readonly limits: LifeLimits;
  /** Figures of the coat as laid, and their half intervals. */
  readonly laid: LaidValues;
  readonly within: LaidValues;
}

/**
 * The figures of a film's life with their half 95 % intervals.
 *
 * The values are those of the whole panel's life. The intervals come of the film alone: it is moved by its
 * own half interval down and up, and a ladder of lives of one patch says what that changes; the
 * heaviest film counts for the margin to a run, the mean one for ripple and cold. The film that just
 * holds is itself taken as known, as are the mix's viscosity and yield.
 */
export function lifeFigures({ figures, ladder, limits, laid, within }: LifeParts): Readonly<Record<LifeName, LifeFigure>> {
  const moved = (film_m: number, by_m: number, mark: (life: PatchLife) => number) =>
    halfInterval(ladderAt(ladder, film_m - by_m, mark), ladderAt(ladder, film_m, mark), ladderAt(ladder, film_m + by_m, mark));
  const ofHeaviest = (of: (heaviest_m: number) => number): LifeFigure => {
    const { heaviest_m } = laid;
    const value = of(heaviest_m);
    // An endless margin is endless whatever the film.
    return { value, within: Number.isFinite(value) ? halfInterval(of(heaviest_m - within.heaviest_m), value, of(heaviest_m + within.heaviest_m)) : 0 };
  };
  return {
    runMarginFraction: { value: 1 - figures.longestRun_m / limits.run_m, within: moved(laid.heaviest_m, within.heaviest_m, ({ run_m }) => run_m) / limits.run_m },
    holdMarginFraction: ofHeaviest((heaviest_m) => ladder.holdUp_m / heaviest_m - 1),
    holdMargin_m: ofHeaviest((heaviest_m) => ladder.holdUp_m - heaviest_m),
    peel_m: { value: figures.peel_m, within: moved(laid.wet_m, within.wet_m, ({ peel_m }) => peel_m) },
    blushMargin_K: { value: figures.blushMargin_K, within: moved(laid.wet_m, within.wet_m, ({ margin_K }) => margin_K) },
  };
}
