import type { Job, RuleSpec } from '../../job/schema.ts';
import { JUDGED_COVER } from '../../verdict/judged.ts';
import type { ChanceBelow, FilmBetween } from '../../survey/comparison.ts';
import { leastFilm_m } from '../../survey/leastFilm.ts';
import { conditionalDraws } from '../../survey/kriging/conditionalDraws.ts';
import type { FittedCovariance } from '../../survey/kriging/fitCovariance.ts';
import { makeKriging } from '../../survey/kriging/kriging.ts';
import { krigePlaces, MOST_WHOLE } from '../../survey/kriging/krigePlaces.ts';
import { thinned, type PlacedValues } from '../../survey/kriging/placedValues.ts';
import type { PredictedFilm } from './predictedFilm.ts';

/** Most places that are kriged; of a larger panel each stands for a block of cells. */
const MOST_PLACES = 8000;
/** Most places of a draw: the cost grows with their cube. */
const MOST_DRAWN = 150;
/** Draws: a chance of a tenth is then known within a hundredth. */
const DRAWS = 1000;

/** Differences from the plan times its ratio, kriged, and their law. */
export interface Differences {
  readonly values: PlacedValues;
  readonly fitted: FittedCovariance;
  readonly ratio: number;
}

/** The film between the readings: the plan times the mean ratio, plus the kriged difference from that. */
export function filmBetween({ panelGrid, dry_m }: PredictedFilm, { values, fitted, ratio }: Differences): FilmBetween {
  const { cells, every } = blocks(panelGrid, MOST_PLACES);
  const { columns, rows, cellSize_m } = panelGrid.grid;
  const kriged = krigePlaces(values, fitted.law, placesOf(cells, panelGrid.grid));
  const out = { difference_m: new Float32Array(dry_m.length).fill(NaN), error_m: new Float32Array(dry_m.length).fill(NaN), isGuess: new Uint8Array(dry_m.length) };
  cells.forEach((middle, i) => {
    const [row0, column0] = [Math.floor(Math.floor(middle / columns) / every) * every, Math.floor((middle % columns) / every) * every];
    for (let row = row0; row < Math.min(rows, row0 + every); row++) {
      for (let column = column0; column < Math.min(columns, column0 + every); column++) {
        const cell = row * columns + column;
        if ((panelGrid.cover[cell] as number) < JUDGED_COVER) continue;
        out.difference_m[cell] = (ratio - 1) * (dry_m[cell] as number) + (kriged.value_m[i] as number);
        out.error_m[cell] = kriged.error_m[i] as number;
        out.isGuess[cell] = (kriged.nearest_m[i] as number) > fitted.law.range_m + cellSize_m * 1e-6 ? 1 : 0;
      }
    }
  });
  return { law: fitted.law, origin: fitted.origin, fitted: fitted.used, isLocal: values.value_m.length > MOST_WHOLE, ...out };
}

/**
 * Chance that the film lies below the rule's least somewhere: draws of the film at a coarse set of places given the readings.
 * @returns null where the rule has no least film.
 */
export function chanceBelow(job: Job, rule: RuleSpec, { panelGrid, dry_m }: PredictedFilm, { values, fitted, ratio }: Differences): ChanceBelow | null {
  const limit_m = leastFilm_m(rule);
  if (limit_m === null) return null;
  const { cells, every } = blocks(panelGrid, MOST_DRAWN);
  const places_m = placesOf(cells, panelGrid.grid);
  const { draw, value_m, error_m } = conditionalDraws(makeKriging(thinned(values, MOST_WHOLE), fitted.law), places_m, job.seed);
  const room_m = Float64Array.from(cells, (cell) => ratio * (dry_m[cell] as number) - limit_m);
  const below = new Float64Array(cells.length);
  let anywhere = 0;
  for (let index = 0; index < DRAWS; index++) {
    const drawn = draw(index);
    let isBelow = false;
    for (let i = 0; i < drawn.length; i++) {
      if ((room_m[i] as number) + (drawn[i] as number) >= 0) continue;
      below[i] = (below[i] as number) + 1;
      isBelow = true;
    }
    if (isBelow) anywhere++;
  }
  const margin = (i: number) => ((room_m[i] as number) + (value_m[i] as number)) / Math.max(1e-12, error_m[i] as number);
  const worst = cells.reduce((least, _, i) => (margin(i) < margin(least) ? i : least), 0);
  return {
    limit_m, anywhere: anywhere / DRAWS, shareBelow: below.reduce((sum, count) => sum + count, 0) / DRAWS / cells.length, draws: DRAWS, places: cells.length,
    step_m: every * panelGrid.grid.cellSize_m, worstAt_m: [places_m[2 * worst] as number, places_m[2 * worst + 1] as number], worst: (below[worst] as number) / DRAWS,
  };
}

/** Square blocks of cells, as few as the most allows, each by a covered cell nearest its middle. */
function blocks({ grid: { columns, rows }, cover }: PredictedFilm['panelGrid'], most: number): { readonly cells: number[]; readonly every: number } {
  for (let every = 1; ; every++) {
    const cells: number[] = [];
    for (let row = 0; row < rows; row += every) {
      for (let column = 0; column < columns; column += every) {
        const cell = middleOf(row, column);
        if (cell >= 0) cells.push(cell);
      }
    }
    if (cells.length <= most) return { cells, every };

    function middleOf(row0: number, column0: number): number {
      let [best, least] = [-1, Infinity];
      const [rowEnd, columnEnd] = [Math.min(rows, row0 + every), Math.min(columns, column0 + every)];
      for (let row = row0; row < rowEnd; row++) {
        for (let column = column0; column < columnEnd; column++) {
          const away = Math.abs(2 * row - row0 - rowEnd + 1) + Math.abs(2 * column - column0 - columnEnd + 1);
          if ((cover[row * columns + column] as number) < JUDGED_COVER || away >= least) continue;
          [best, least] = [row * columns + column, away];
        }
      }
      return best;
    }
  }
}

function placesOf(cells: readonly number[], { columns, cellSize_m }: PredictedFilm['panelGrid']['grid']): Float64Array {
  return Float64Array.from(cells.flatMap((cell) => [((cell % columns) + 0.5) * cellSize_m, (Math.floor(cell / columns) + 0.5) * cellSize_m]));
}
