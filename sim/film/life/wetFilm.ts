import type { CellBlock } from '../../base/grid.ts';
import { FILM_HEAT_J_M3_K, type FilmLaw } from '../law.ts';
import { TILE_COLUMNS, TILE_ROWS, type LivingFilm } from './state.ts';
import { bringForward } from './advance.ts';

/** What landed on a panel in a short while, cell by cell, and the block of cells that may hold it. */
export interface Landing extends CellBlock {
  readonly wet_m: Float32Array;
  readonly solids_m: Float32Array;
  readonly arrivedDry_m: Float32Array;
  /** Share of the arriving solvent that is fast: less than as mixed, since the fast leaves first in flight. */
  readonly fastFraction: number;
}

/**
 * Adds to a living film what landed by `film.time_s`.
 *
 * Fresh liquid on film that is still wet mixes with it; on film that has set it lies on top as a layer
 * of its own, the set film and its solvent staying beneath until the fresh layer has set too. That
 * solvent shut in, times the fresh liquid, is kept for the judgement of blisters, and what had been laid
 * of the same coat by then for that of dry laps. The drops arrive at the air's temperature (their cooling in flight is left out). The levelling already done is forgotten in
 * the share that the fresh liquid has of the film.
 */
export function wetFilm(film: LivingFilm, law: FilmLaw, landing: Landing): void {
  const { columns } = film.grid;
  wakeTiles(film, law, landing);
  const area_m2 = film.grid.cellSize_m ** 2;
  const { account } = film;
  for (let row = landing.lowRow; row < landing.highRow; row++) {
    for (let cell = row * columns + landing.lowColumn; cell < row * columns + landing.highColumn; cell++) {
      const wet = landing.wet_m[cell] as number;
      if (!(wet > 0) || film.inside[cell] === 0) continue;
      const solids = landing.solids_m[cell] as number;
      const fast = (wet - solids) * landing.fastFraction;
      const slow = wet - solids - fast;
      addToCell(film, law, cell, { wet, solids, fast, slow });
      film.arrivedDry_m[cell] = (film.arrivedDry_m[cell] as number) + (landing.arrivedDry_m[cell] as number);
      account.landedSolids_m3 += solids * area_m2;
      account.landedFast_m3 += fast * area_m2;
      account.landedSlow_m3 += slow * area_m2;
    }
  }
}

interface Arriving {
  readonly wet: number;
  readonly solids: number;
  readonly fast: number;
  readonly slow: number;
}

function addToCell(film: LivingFilm, law: FilmLaw, cell: number, arriving: Arriving): void {
  const { solids_m, fast_m, slow_m, temperature_K, levelling_m4, run_m } = film;
  let there = (solids_m[cell] as number) + (fast_m[cell] as number) + (slow_m[cell] as number);
  if (there > 0 && (solids_m[cell] as number) >= law.setFraction * there) {
    film.lapped_m[cell] = film.laid_m[cell] as number;
    layBeneath(film, cell);
    there = 0;
  }
  noteTrapped(film, cell, arriving.wet);
  const share = arriving.wet / (there + arriving.wet);
  const heat = law.backingHeat_J_m2_K + FILM_HEAT_J_M3_K * there;
  const fresh = FILM_HEAT_J_M3_K * arriving.wet;
  temperature_K[cell] = (heat * (temperature_K[cell] as number) + fresh * law.air.temperature_K) / (heat + fresh);
  levelling_m4[cell] = (levelling_m4[cell] as number) * (1 - share);
  run_m[cell] = (run_m[cell] as number) * (1 - share);
  solids_m[cell] = (solids_m[cell] as number) + arriving.solids;
  fast_m[cell] = (fast_m[cell] as number) + arriving.fast;
  slow_m[cell] = (slow_m[cell] as number) + arriving.slow;
  film.landed_m[cell] = (film.landed_m[cell] as number) + arriving.wet;
  film.laid_m[cell] = (film.laid_m[cell] as number) + arriving.solids;
  film.wettedAt_s[cell] = film.time_s;
  film.setAt_s[cell] = NaN;
  film.readyAt_s[cell] = NaN;
}

/** The film on a cell, having set, becomes what lies beneath the next one. */
export function layBeneath(film: LivingFilm, cell: number): void {
  const { solids_m, fast_m, slow_m, beneathSolids_m, beneathFast_m, beneathSlow_m } = film;
  beneathSolids_m[cell] = (beneathSolids_m[cell] as number) + (solids_m[cell] as number);
  beneathFast_m[cell] = (beneathFast_m[cell] as number) + (fast_m[cell] as number);
  beneathSlow_m[cell] = (beneathSlow_m[cell] as number) + (slow_m[cell] as number);
  solids_m[cell] = 0;
  fast_m[cell] = 0;
  slow_m[cell] = 0;
}

/** Film beneath that is thinner holds too little to lift a coat, m of solids: mist at a fan's edge sets at once. Assumed. */
const LEAST_SHEET_M = 2e-6;

/** Solvent share beneath times the fresh liquid over it. */
function noteTrapped(film: LivingFilm, cell: number, wet: number): void {
  const solids = film.beneathSolids_m[cell] as number;
  if (!(solids > LEAST_SHEET_M)) return;
  const solvent = (film.beneathFast_m[cell] as number) + (film.beneathSlow_m[cell] as number);
  film.trapped_m[cell] = (film.trapped_m[cell] as number) + (wet * solvent) / (solids + solvent);
}

/** Brings the tiles that are hit up to the film's time and sets their clocks back to the shortest step. */
function wakeTiles(film: LivingFilm, law: FilmLaw, landing: Landing): void {
  const { tiles } = film;
  const lastColumn = Math.min(tiles.columns - 1, Math.floor((landing.highColumn - 1) / TILE_COLUMNS));
  const lastRow = Math.min(tiles.rows - 1, Math.floor((landing.highRow - 1) / TILE_ROWS));
  for (let r = Math.floor(landing.lowRow / TILE_ROWS); r <= lastRow; r++) {
    for (let c = Math.floor(landing.lowColumn / TILE_COLUMNS); c <= lastColumn; c++) {
      const tile = r * tiles.columns + c;
      bringForward(film, law, tile);
      tiles.wettedAt_s[tile] = film.time_s;
      tiles.due_s[tile] = film.time_s;
    }
  }
}
