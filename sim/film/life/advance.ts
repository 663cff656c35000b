import { CrosscoatError } from '../../base/errors.ts';
import type { CellBlock } from '../../base/grid.ts';
import { dryBlock, type DryTally } from '../dry/dryBlock.ts';
import { flowBlock, flowLimit_s } from '../flow/flowBlock.ts';
import type { FilmLaw } from '../law.ts';
import { copyLivingFilm, TILE_COLUMNS, TILE_ROWS, type LivingFilm } from './state.ts';

/** Shortest step, taken while film is fresh or running, s. */
export const FRESH_STEP_S = 0.25;
/** Longest step of film that has long lain still, s. */
export const LONGEST_STEP_S = 64;
/** A tile's step is this share of the time since it was last wetted. */
const STEP_SHARE = 1 / 24;
/** Film that would move by less than this share of a cell in the shortest step stays where it is. */
const LEAST_MOVE = 1e-5;

/** How finely a film is carried forward, and how it is stopped. */
export interface AdvanceOptions {
  /** Multiplies every step, for convergence tests; 1 where not given. */
  readonly stepScale?: number;
  /** Asked once a step; true ends with a `cancelled` error. */
  readonly shouldStop?: () => boolean;
}

/**
 * Carries a living film forward to a time: it dries, cools, levels and runs.
 *
 * Tiles of `TILE_COLUMNS` × `TILE_ROWS` cells keep clocks of their own. Fresh film is visited every
 * `FRESH_STEP_S`; film that lies still every 1/24 of the time that it has lain, up to
 * `LONGEST_STEP_S`; a tile without film never. Where nothing runs, time leaps to the next visit. Where
 * something runs, the tiles that run are brought forward together, with as many sub-steps of flow as
 * the stability limit asks. So the cost follows the wet area and what happens in it.
 *
 * Tiles that are not yet due stay behind `film.time_s`; `filmNow` gives a copy with all at one time.
 * @throws CrosscoatError `cancelled`.
 */
export function advanceFilm(film: LivingFilm, law: FilmLaw, until_s: number, options: AdvanceOptions = {}): void {
  const steps = advanceSteps(film, law, until_s, options);
  while (steps.next().done !== true);
}

/**
 * As `advanceFilm`, in pieces: after each, the block of cells that it changed is given out and the caller
 * may leave off for a while. Only when it has ended is the film whole at its time.
 */
export function* advanceSteps(film: LivingFilm, law: FilmLaw, until_s: number, options: AdvanceOptions = {}): Generator<CellBlock, void> {
  const scale = options.stepScale ?? 1;
  const running = tilesDownhillFirst(film, law);
  while (film.time_s < until_s) {
    if (options.shouldStop?.() === true) throw new CrosscoatError('cancelled', 'advanceFilm: stopped on request; the film is part way, throw it away');
    const from_s = film.time_s;
    film.time_s = Math.min(until_s, nextEvent_s(film, from_s, scale));
    yield* visitDueTiles(film, law, scale);
    yield* runDownhill(film, law, running, film.time_s - from_s);
  }
}

/** A copy of a film with every tile brought to its time; the film itself is left as it is. */
export function filmNow(film: LivingFilm, law: FilmLaw): LivingFilm {
  const copy = copyLivingFilm(film);
  for (let tile = 0; tile < copy.tiles.at_s.length; tile++) bringForward(copy, law, tile);
  return copy;
}

/** The next time at which something is to be done: a short step where film runs, else the first tile due. */
function nextEvent_s(film: LivingFilm, from_s: number, scale: number): number {
  const { due_s, wave_m_s } = film.tiles;
  let next_s = Infinity;
  for (let tile = 0; tile < due_s.length; tile++) {
    if (moves(film, wave_m_s[tile] as number)) return from_s + FRESH_STEP_S * scale;
    next_s = Math.min(next_s, due_s[tile] as number);
  }
  return Math.max(next_s, from_s + FRESH_STEP_S * scale);
}

function* visitDueTiles(film: LivingFilm, law: FilmLaw, scale: number): Generator<CellBlock, void> {
  const { tiles, time_s } = film;
  for (let tile = 0; tile < tiles.due_s.length; tile++) {
    const isRunning = moves(film, tiles.wave_m_s[tile] as number);
    if ((tiles.due_s[tile] as number) > time_s && !isRunning) continue;
    bringForward(film, law, tile);
    const age_s = time_s - (tiles.wettedAt_s[tile] as number);
    const step_s = scale * Math.min(LONGEST_STEP_S, Math.max(FRESH_STEP_S, STEP_SHARE * age_s));
    tiles.due_s[tile] = time_s + step_s;
    yield blockOf(film, tile);
  }
}

const TALLY: DryTally = { fast_m: 0, slow_m: 0, wave_m_s: 0 };

/** Dries a tile up to the film's time, in one step, and notes how fast it would flow. */
export function bringForward(film: LivingFilm, law: FilmLaw, tile: number): void {
  const { tiles, account } = film;
  const step_s = film.time_s - (tiles.at_s[tile] as number);
  tiles.at_s[tile] = film.time_s;
  if (!(step_s > 0) || tiles.due_s[tile] === Infinity) return;
  const { cellSize_m } = film.grid;
  TALLY.fast_m = 0;
  TALLY.slow_m = 0;
  TALLY.wave_m_s = 0;
  dryBlock(film, law, blockOf(film, tile), step_s, 1, TALLY);
  account.evaporatedFast_m3 += TALLY.fast_m * cellSize_m * cellSize_m;
  account.evaporatedSlow_m3 += TALLY.slow_m * cellSize_m * cellSize_m;
  tiles.wave_m_s[tile] = TALLY.wave_m_s;
}

function blockOf(film: LivingFilm, tile: number): CellBlock {
  const { columns, rows } = film.grid;
  const row = Math.floor(tile / film.tiles.columns);
  const column = tile - row * film.tiles.columns;
  return {
    lowColumn: column * TILE_COLUMNS,
    highColumn: Math.min(columns, (column + 1) * TILE_COLUMNS),
    lowRow: row * TILE_ROWS,
    highRow: Math.min(rows, (row + 1) * TILE_ROWS),
  };
}

function moves(film: LivingFilm, wave_m_s: number): boolean {
  return wave_m_s * FRESH_STEP_S > LEAST_MOVE * film.grid.cellSize_m;
}

/** All tiles, the lowest along gravity first, so that film leaves a tile before more comes in. */
function tilesDownhillFirst(film: LivingFilm, law: FilmLaw): number[] {
  const { columns, rows } = film.tiles;
  const order: number[] = [];
  const alongDown = law.gravityY_m_s2 < 0;
  const acrossDown = law.gravityX_m_s2 < 0;
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) {
      order.push((alongDown ? r : rows - 1 - r) * columns + (acrossDown ? c : columns - 1 - c));
    }
  }
  return order;
}

/**
 * Lets the running tiles flow for a step, in as many sub-steps as the fastest asks for. The tiles next
 * downhill take part from the first one: they are brought forward and count as freshly wetted.
 */
function* runDownhill(film: LivingFilm, law: FilmLaw, order: readonly number[], step_s: number): Generator<CellBlock, void> {
  const { tiles } = film;
  const running = order.filter((tile) => moves(film, tiles.wave_m_s[tile] as number));
  if (running.length === 0) return;
  const awake = new Set(running.flatMap((tile) => [tile, ...tilesBelow(film, law, tile)]));
  for (const tile of awake) wake(film, law, tile);
  const taking = order.filter((tile) => awake.has(tile));
  for (let rest_s = step_s; rest_s > 0; ) {
    const fastest = taking.reduce((most, tile) => Math.max(most, tiles.wave_m_s[tile] as number), 0);
    if (fastest === 0) return;
    const sub_s = Math.min(rest_s, flowLimit_s(film, law, fastest));
    for (const tile of taking) {
      const block = blockOf(film, tile);
      tiles.wave_m_s[tile] = flowBlock(film, law, block, sub_s);
      yield block;
    }
    rest_s -= sub_s;
  }
}

function wake(film: LivingFilm, law: FilmLaw, tile: number): void {
  const { tiles, time_s } = film;
  bringForward(film, law, tile);
  tiles.due_s[tile] = Math.min(tiles.due_s[tile] as number, time_s + FRESH_STEP_S);
  tiles.wettedAt_s[tile] = time_s;
}

/** The tiles next to one on the sides to which gravity pulls. */
function tilesBelow({ tiles }: LivingFilm, law: FilmLaw, tile: number): number[] {
  const { columns, rows } = tiles;
  const row = Math.floor(tile / columns);
  const column = tile - row * columns;
  const across = column + Math.sign(law.gravityX_m_s2);
  const along = row + Math.sign(law.gravityY_m_s2);
  const below: number[] = [];
  if (across !== column && across >= 0 && across < columns) below.push(row * columns + across);
  if (along !== row && along >= 0 && along < rows) below.push(along * columns + column);
  return below;
}
