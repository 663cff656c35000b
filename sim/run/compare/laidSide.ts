import { layCoat } from '../lay.ts';
import type { CoatSetting, CoatStrokes, LaidCoat } from '../result.ts';
import { settleCoat } from '../settle.ts';
import { strokesOf } from '../strokes.ts';
import { filmLadder, ladderAt, type FilmLadder } from './filmLadder.ts';
import { laidValues, type LaidValues } from './laidValues.ts';
import { typicalPatch } from './patch.ts';
import { knownSetUp, laidWithin, type KnownSetUp } from './uncertainty.ts';

/** A side laid, with what its film's life is watched and told by. */
export interface LaidSide {
  readonly setting: CoatSetting;
  readonly strokes: CoatStrokes;
  readonly laid: LaidCoat;
  readonly values: LaidValues;
  readonly within: LaidValues;
  readonly known: KnownSetUp;
  readonly ladder: FilmLadder;
  /** When the heaviest film will have set, NaN where that is not seen. */
  readonly sets_s: number;
}

/** Side of the cells on which a coat is laid again with its numbers moved, at least, mm. Assumed: a fan of 200 mm is 25 of them wide. */
const MOVES_CELL_MM = 8;

/** Lays a side and works out how well its film is known. @throws CrosscoatError for strokes that cannot be planned; `cancelled`. */
export function laySide(setting: CoatSetting, shouldStop?: () => boolean): LaidSide {
  const stop = shouldStop === undefined ? {} : { shouldStop };
  const strokes = strokesOf(setting);
  const laid = layCoat(setting, strokes, stop);
  const values = laidValues(setting, laid);
  const known = knownSetUp(setting);
  const coarse = settleCoat(setting.job, setting.coat.id, { cell_mm: Math.max(MOVES_CELL_MM, setting.panelGrid.grid.cellSize_m * 1e3) });
  const within = laidWithin(coarse, strokes, known, shouldStop);
  const patch = typicalPatch(coarse, strokes, layCoat(coarse, strokes, stop), values.wet_m);
  const ladder = filmLadder(patch, setting.target.life.run_m, shouldStop);
  return { setting, strokes, laid, values, within, known, ladder, sets_s: ladderAt(ladder, values.heaviest_m, ({ setAt_s }) => setAt_s) };
}

/** Whether the coat is sprayed from a distance at which the set-up's fan was not measured. */
export function isOutsideRange({ setUp, plan }: CoatSetting): boolean {
  const [near, far] = setUp.distanceRange_m;
  return !(plan.distance_m >= near && plan.distance_m <= far);
}
