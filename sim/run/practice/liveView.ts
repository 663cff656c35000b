import type { CellBlock } from '../../base/grid.ts';
import type { Deposit } from '../../deposit/deposit.ts';
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

/** Writes one block of cells of a live film as it is now, what landed in this moment included. */
export function writeShown(live: LiveSpray, block: CellBlock, kind: LiveValue, target: Target, shown: ShownFilm): void {
  const { film } = live;
  const pending = live.pending();
  const valueAt = kind === 'wet-now' ? wetNow : targetShare(target);
  const { columns } = film.grid;
  for (let row = block.lowRow; row < block.highRow; row++) {
    const end = row * columns + block.highColumn;
    for (let cell = row * columns + block.lowColumn; cell < end; cell++) {
      if (film.inside[cell] === 0) continue;
      gather(live, pending, cell);
      shown.value[cell] = valueAt(AT);
      shown.look[cell] = lookOf(live, cell, target.dryFraction);
    }
  }
}

/** A cell's film with what has just landed on it. */
interface CellFilm {
  solids: number;
  fresh: number;
  beneath: number;
  landed: number;
  laid: number;
  dust: number;
}

const AT: CellFilm = { solids: 0, fresh: 0, beneath: 0, landed: 0, laid: 0, dust: 0 };

function gather({ film }: LiveSpray, pending: readonly Deposit[], cell: number): void {
  let solids = film.solids_m[cell] as number;
  let fresh = solids + (film.fast_m[cell] as number) + (film.slow_m[cell] as number);
  let landed = film.landed_m[cell] as number;
  let laid = film.laid_m[cell] as number;
  let dust = film.arrivedDry_m[cell] as number;
  for (const deposit of pending) {
    const wet = deposit.wet_m[cell] as number;
    const dry = deposit.solids_m[cell] as number;
    solids += dry;
    laid += dry;
    fresh += wet;
    landed += wet;
    dust += deposit.arrivedDry_m[cell] as number;
  }
  AT.solids = solids;
  AT.fresh = fresh;
  AT.beneath = (film.beneathSolids_m[cell] as number) + (film.beneathFast_m[cell] as number) + (film.beneathSlow_m[cell] as number);
  AT.landed = landed;
  AT.laid = laid;
  AT.dust = dust;
}

function wetNow({ fresh, beneath }: CellFilm): number {
  return fresh + beneath;
}

function targetShare({ film, thickness_m }: Target): (at: CellFilm) => number {
  return film === 'wet' ? ({ landed }) => landed / thickness_m : ({ laid }) => laid / thickness_m;
}

function lookOf({ film, law }: LiveSpray, cell: number, dustFraction: number): number {
  const { landed, dust, fresh, solids } = AT;
  if (landed > 0 && dust > dustFraction * landed) return -dust / landed;
  const wetness = fresh > 0 ? Math.max(0, 1 - solids / (fresh * law.setFraction)) : 0;
  return wetness + ((film.run_m[cell] as number) > SHOWN_RUN_M && wetness > 0 ? RUNNING : 0);
}
