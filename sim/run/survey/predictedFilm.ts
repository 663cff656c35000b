import { weightedSum } from '../../base/sums.ts';
import type { Job } from '../../job/schema.ts';
import type { PanelGrid } from '../../panel/panelGrid.ts';
import { layCoat } from '../lay.ts';
import { filmsAtPlaces } from '../placeFilms.ts';
import { recordingOf } from '../recordingOf.ts';
import type { CoatSetting, CoatStrokes } from '../result.ts';
import { settleCoat } from '../settle.ts';
import { strokesOf } from '../strokes.ts';

/** Side of a cell, mm. Assumed: a fan of 200 mm is 20 of them wide; means agree with 2 mm cells to 0.5 % (tested with the schemes). */
const CELL_MM = 10;

/** One coat of a predicted film. */
export interface PredictedCoat {
  readonly setting: CoatSetting;
  readonly strokes: CoatStrokes;
  /** Mean wet film over the panel, m. */
  readonly wetMean_m: number;
}

/** The film that some coats should have laid on a panel: their sum as laid. */
export interface PredictedFilm {
  readonly panelGrid: PanelGrid;
  /** Dry, m, one value a cell. */
  readonly dry_m: Float32Array;
  readonly mean_m: number;
  /** At least one. */
  readonly coats: readonly PredictedCoat[];
}

/** What the coats laid at one place. */
export interface PredictedPlace {
  readonly dry_m: number;
  /** Sum over the strokes of dry film times their place in the coat's order, 0 for the first to 1 for the last, m. */
  readonly orderMoment_m: number;
  /** Wet film of the last coat, m. */
  readonly lastWet_m: number;
}

/**
 * The dry film of some coats of a job by its recorded strokes, or by the plan where a coat has none, on cells of 10 mm. As laid:
 * runs, levelling and sanding are left out; so is all that was brushed.
 * @param coatIds at least one, all on one panel, in the order sprayed.
 * @throws CrosscoatError for a coat that cannot be settled or planned.
 */
export function predictedFilm(job: Job, coatIds: readonly string[]): PredictedFilm {
  const laid = coatIds.map((id) => {
    const setting = settleCoat(job, id, { cell_mm: CELL_MM });
    const strokes = strokesOf(setting, recordingOf(job, setting.coat));
    return { setting, strokes, film: layCoat(setting, strokes).film };
  });
  const panelGrid = (laid[0] as (typeof laid)[number]).setting.panelGrid;
  const dry_m = new Float32Array(panelGrid.cover.length);
  for (const { film } of laid) for (let cell = 0; cell < dry_m.length; cell++) dry_m[cell] = (dry_m[cell] as number) + (film.dry_m[cell] as number);
  return {
    panelGrid,
    dry_m,
    mean_m: coveredMean(dry_m, panelGrid),
    coats: laid.map(({ setting, strokes, film }) => ({ setting, strokes, wetMean_m: coveredMean(film.wet_m, panelGrid) })),
  };
}

/** The same at places, by the model itself and not from the cells. */
export function predictedAt({ coats }: PredictedFilm, places_m: readonly (readonly [number, number])[]): PredictedPlace[] {
  const flat = Float64Array.from(places_m.flat());
  const sums = places_m.map(() => ({ dry_m: 0, orderMoment_m: 0, lastWet_m: 0 }));
  for (const { setting, strokes } of coats) {
    const films = filmsAtPlaces(setting, strokes, flat);
    const last = Math.max(1, ...strokes.strokes.map(({ index }) => index));
    sums.forEach((sum, i) => {
      sum.dry_m += films.solids_m[i] as number;
      sum.lastWet_m = films.wet_m[i] as number;
      for (const [stroke, part] of films.parts) sum.orderMoment_m += (part.solids_m[i] as number) * (stroke / last);
    });
  }
  return sums;
}

function coveredMean(film_m: Float32Array, { cover }: PanelGrid): number {
  const area = cover.reduce((sum, share) => sum + share, 0);
  return area > 0 ? weightedSum(film_m, cover) / area : 0;
}
