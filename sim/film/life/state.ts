import type { Grid } from '../../base/grid.ts';

/**
 * Cells of a tile, the piece of the panel that sleeps or wakes as one. Wider than high: memory is read a
 * row at a time, and a long row is fetched ahead.
 */
export const TILE_COLUMNS = 64;
export const TILE_ROWS = 32;

/**
 * A film that lives: what lies on each cell now and what it has been through. The arrays are changed
 * in place by `wetFilm` and `advanceFilm`; every array has one value a cell unless said.
 *
 * Amounts are in double precision, because a film takes thousands of small steps and what landed
 * must equal what lies, ran off and evaporated to rounding. A cell is either whole inside the
 * outline (half covered or more) or takes no film.
 */
export interface LivingFilm {
  readonly grid: Grid;
  /** 1 inside the outline, 0 outside. */
  readonly inside: Uint8Array;
  /** Since the first row of the path. */
  time_s: number;
  readonly solids_m: Float64Array;
  /** Fast and slow solvents, as thickness. */
  readonly fast_m: Float64Array;
  readonly slow_m: Float64Array;
  /** Solids and solvents of film that had set before fresh liquid landed on it; it joins again when that sets. */
  readonly beneathSolids_m: Float64Array;
  readonly beneathFast_m: Float64Array;
  readonly beneathSlow_m: Float64Array;
  readonly temperature_K: Float32Array;
  /** ∫ σ h³/(3 µ) dt since the film was last wetted, m⁴. */
  readonly levelling_m4: Float32Array;
  /** Mean distance that the film now in the cell has run, m. */
  readonly run_m: Float32Array;
  /** How far blown air has pushed the film, in all, m. */
  readonly blown_m: Float32Array;
  /** Film gained by running, less film lost by it, m. */
  readonly gathered_m: Float32Array;
  /** When film first moved here by more than `MOVED_M`; NaN where it has not. */
  readonly movedAt_s: Float32Array;
  /** When liquid last landed; NaN where none has. */
  readonly wettedAt_s: Float32Array;
  /** When the film last set, and when it was ready for another coat; NaN while it is not. */
  readonly setAt_s: Float32Array;
  readonly readyAt_s: Float32Array;
  /** Of this coat, as landed: wet film, its solids, and the part of the wet film that came in dry drops. */
  readonly landed_m: Float32Array;
  readonly laid_m: Float32Array;
  readonly arrivedDry_m: Float32Array;
  /** Solids of this coat that had set when more of it landed on them, m. */
  readonly lapped_m: Float32Array;
  /** Lowest film temperature less the dew point while wet, K; +Infinity before the first film. */
  readonly margin_K: Float32Array;
  /** Solvent beneath, as a share of the film beneath, when fresh liquid landed on it, times that fresh liquid, m. */
  readonly trapped_m: Float32Array;
  /** Largest evaporation over diffusion, E h/D, just before the film set. */
  readonly skin: Float32Array;
  readonly tiles: Tiles;
  /** Volumes in m³, since the film began. */
  readonly account: LifeAccount;
}

/** Where film that landed has gone: landed = what lies + evaporated + ran off. */
export interface LifeAccount {
  landedSolids_m3: number;
  landedFast_m3: number;
  landedSlow_m3: number;
  evaporatedFast_m3: number;
  evaporatedSlow_m3: number;
  ranOffSolids_m3: number;
  ranOffFast_m3: number;
  ranOffSlow_m3: number;
}

/** The clocks of the tiles: each is brought forward on its own, the longer its film has lain the more seldom. */
export interface Tiles {
  readonly columns: number;
  readonly rows: number;
  /** Time to which each tile has been brought. */
  readonly at_s: Float64Array;
  /** When each tile must next be visited; Infinity for one without film. */
  readonly due_s: Float64Array;
  /** When liquid last landed on, or ran into, each tile. */
  readonly wettedAt_s: Float64Array;
  /** Fastest wave of flow in each tile, m/s; 0 where nothing moves. */
  readonly wave_m_s: Float64Array;
}

/** Film that has moved by more than this has begun to run, m. Assumed: a millimetre can be seen. */
export const MOVED_M = 1e-3;

/** An empty film at a temperature, on the cells that are inside. */
export function emptyLivingFilm(grid: Grid, inside: Uint8Array, temperature_K: number): LivingFilm {
  const cells = grid.columns * grid.rows;
  const columns = Math.ceil(grid.columns / TILE_COLUMNS);
  const rows = Math.ceil(grid.rows / TILE_ROWS);
  const count = columns * rows;
  const amount = () => new Float64Array(cells);
  const mark = (value = 0) => new Float32Array(cells).fill(value);
  return {
    grid,
    inside,
    time_s: 0,
    solids_m: amount(),
    fast_m: amount(),
    slow_m: amount(),
    beneathSolids_m: amount(),
    beneathFast_m: amount(),
    beneathSlow_m: amount(),
    temperature_K: mark(temperature_K),
    levelling_m4: mark(),
    run_m: mark(),
    blown_m: mark(),
    gathered_m: mark(),
    movedAt_s: mark(NaN),
    wettedAt_s: mark(NaN),
    setAt_s: mark(NaN),
    readyAt_s: mark(NaN),
    landed_m: mark(),
    laid_m: mark(),
    arrivedDry_m: mark(),
    lapped_m: mark(),
    margin_K: mark(Infinity),
    trapped_m: mark(),
    skin: mark(),
    tiles: {
      columns,
      rows,
      at_s: new Float64Array(count),
      due_s: new Float64Array(count).fill(Infinity),
      wettedAt_s: new Float64Array(count),
      wave_m_s: new Float64Array(count),
    },
    account: { landedSolids_m3: 0, landedFast_m3: 0, landedSlow_m3: 0, evaporatedFast_m3: 0, evaporatedSlow_m3: 0, ranOffSolids_m3: 0, ranOffFast_m3: 0, ranOffSlow_m3: 0 },
  };
}

/** A film that shares nothing with the one it was copied from. */
export function copyLivingFilm(film: LivingFilm): LivingFilm {
  const { tiles, account, inside, grid, time_s, ...arrays } = film;
  const copied = Object.fromEntries(Object.entries(arrays).map(([key, array]) => [key, array.slice()])) as typeof arrays;
  return {
    ...copied,
    grid,
    inside,
    time_s,
    tiles: { ...tiles, at_s: tiles.at_s.slice(), due_s: tiles.due_s.slice(), wettedAt_s: tiles.wettedAt_s.slice(), wave_m_s: tiles.wave_m_s.slice() },
    account: { ...account },
  };
}
