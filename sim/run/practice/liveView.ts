import type { CellBlock } from '../../base/grid.ts';
import type { Deposit } from '../../deposit/deposit.ts';
import type { LivingFilm } from '../../film/life/state.ts';
import type { Target } from '../../verdict/target.ts';
import type { LiveSpray } from './liveSpray.ts';

/** What a picture of a film under the hand shows of each cell. */
export interface ShownFilm {
  /** By `LiveValue`. */
  readonly value: Float32Array;
  /**
   * How the film looks: 0 set or bare, up to 1 the wetter it is; `RUNNING` more where it has run; below 0
   * where it arrived as dust, by the share that did.
   */
  readonly look: Float32Array;
}

/**
 * `target`: this coat's film as landed, of the kind that the target means, as a share of the target;
 * it stays while the film dries. `wet-now`: all that lies there at this moment, m.
 */
export type LiveValue = 'target' | 'wet-now';

/** Added to the look of film that has run. */
export const RUNNING = 2;
/** Film is shown as running once it has moved so far, m. Assumed: a third of what counts as a run. */
const SHOWN_RUN_M = 1e-3;

/** Pictures for a panel of so many cells, empty. */
export function emptyShownFilm(cells: number): ShownFilm {
  return { value: new Float32Array(cells), look: new Float32Array(cells) };
}

/** Working memory for one row of cells: what lies there with what has just landed on it. Reused, so that a frame allocates nothing. */
interface Row {
  solids_m: Float64Array;
  fresh_m: Float64Array;
  landed_m: Float64Array;
  laid_m: Float64Array;
  dust_m: Float64Array;
}

let row: Row = makeRow(0);

function makeRow(columns: number): Row {
  const column = (): Float64Array => new Float64Array(columns);
  return { solids_m: column(), fresh_m: column(), landed_m: column(), laid_m: column(), dust_m: column() };
}

/** Writes one block of cells of a live film as it is now, what landed in this moment included. */
export function writeShown(live: LiveSpray, block: CellBlock, kind: LiveValue, target: Target, shown: ShownFilm): void {
  const { film, law } = live;
  const pending = live.pendingOn(block);
  const { columns } = film.grid;
  const width = block.highColumn - block.lowColumn;
  if (row.solids_m.length < width) row = makeRow(width);
  for (let r = block.lowRow; r < block.highRow; r++) {
    const first = r * columns + block.lowColumn;
    gatherFilm(film, first, width);
    for (const deposit of pending) addLanded(deposit, first, width);
    if (kind === 'wet-now') writeWet(film, first, width, shown.value);
    else writeShare(target.film === 'wet' ? row.landed_m : row.laid_m, target.thickness_m, first, width, shown.value);
    writeLook(film, law.setFraction, target.dryFraction, first, width, shown.look);
  }
}

function gatherFilm(film: LivingFilm, first: number, width: number): void {
  const { solids_m, fresh_m, landed_m, laid_m, dust_m } = row;
  const { solids_m: solids, fast_m, slow_m, landed_m: landed, laid_m: laid, arrivedDry_m } = film;
  for (let i = 0; i < width; i++) {
    const cell = first + i;
    const dry = solids[cell] as number;
    solids_m[i] = dry;
    fresh_m[i] = dry + (fast_m[cell] as number) + (slow_m[cell] as number);
    landed_m[i] = landed[cell] as number;
    laid_m[i] = laid[cell] as number;
    dust_m[i] = arrivedDry_m[cell] as number;
  }
}

function addLanded(deposit: Deposit, first: number, width: number): void {
  const { solids_m, fresh_m, landed_m, laid_m, dust_m } = row;
  const { wet_m, solids_m: solids, arrivedDry_m } = deposit;
  for (let i = 0; i < width; i++) {
    const cell = first + i;
    const wet = wet_m[cell] as number;
    const dry = solids[cell] as number;
    solids_m[i] = (solids_m[i] as number) + dry;
    laid_m[i] = (laid_m[i] as number) + dry;
    fresh_m[i] = (fresh_m[i] as number) + wet;
    landed_m[i] = (landed_m[i] as number) + wet;
    dust_m[i] = (dust_m[i] as number) + (arrivedDry_m[cell] as number);
  }
}

function writeWet({ beneathSolids_m, beneathFast_m, beneathSlow_m, inside }: LivingFilm, first: number, width: number, value: Float32Array): void {
  const { fresh_m } = row;
  for (let i = 0; i < width; i++) {
    const cell = first + i;
    const all = (fresh_m[i] as number) + (beneathSolids_m[cell] as number) + (beneathFast_m[cell] as number) + (beneathSlow_m[cell] as number);
    value[cell] = inside[cell] === 0 ? 0 : all;
  }
}

function writeShare(film_m: Float64Array, thickness_m: number, first: number, width: number, value: Float32Array): void {
  for (let i = 0; i < width; i++) value[first + i] = (film_m[i] as number) / thickness_m;
}

function writeLook({ run_m, inside }: LivingFilm, setFraction: number, dustFraction: number, first: number, width: number, look: Float32Array): void {
  const { solids_m, fresh_m, landed_m, dust_m } = row;
  for (let i = 0; i < width; i++) {
    const cell = first + i;
    const landed = landed_m[i] as number;
    const dust = dust_m[i] as number;
    if (landed > 0 && dust > dustFraction * landed) {
      look[cell] = -dust / landed;
      continue;
    }
    const fresh = fresh_m[i] as number;
    const wetness = fresh > 0 && inside[cell] !== 0 ? Math.max(0, 1 - (solids_m[i] as number) / (fresh * setFraction)) : 0;
    look[cell] = wetness > 0 && (run_m[cell] as number) > SHOWN_RUN_M ? wetness + RUNNING : wetness;
  }
}
