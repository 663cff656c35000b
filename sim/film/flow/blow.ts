import type { CellBlock, Grid } from '../../base/grid.ts';
import { dryBlock, type DryTally } from '../dry/dryBlock.ts';
import { viscosityOf, type FilmLaw } from '../law.ts';
import { bringForward } from '../life/advance.ts';
import { TILE_COLUMNS, TILE_ROWS, type LivingFilm } from '../life/state.ts';

/** Air blown at a film: where it hits, how wide, how fast. */
export interface Blast {
  readonly x_m: number;
  readonly y_m: number;
  /** Direction of the fan's long axis. */
  readonly longX: number;
  readonly longY: number;
  readonly halfLength_m: number;
  readonly halfDepth_m: number;
  /** In the middle of the jet, where it meets the panel. */
  readonly speed_m_s: number;
}

/** Density of air, kg/m³ at 20 °C. */
const AIR_DENSITY_KG_M3 = 1.2;
/** Friction of a jet along the surface that it hits, over ½ρU². Assumed: 0.005 to 0.01 for turbulent wall jets (from memory). */
const FRICTION = 0.006;
/** The footprint of the air is this much larger than the fan's. Assumed. */
const AIR_REACH = 1.3;

const TALLY: DryTally = { fast_m: 0, slow_m: 0, wave_m_s: 0 };
/** One cell as a block, reused: a blast has thousands. */
const CELL = { lowColumn: 0, highColumn: 0, lowRow: 0, highRow: 0 };

/**
 * Air blown at a film for `step_s`: it carries vapour off faster, and where its drag is stronger than
 * the film holds it drags wet film outward.
 *
 * Mass and heat transfer grow as the square root of the air speed (laminar plate), so soft air sets a
 * film that is about to run. The drag is `½ c ρ U²`, none in the middle and most at about 0.7 of the
 * reach; above the film's yield stress the excess moves it by `τ h²/(2 µ)` (Couette flow), so hard
 * air makes a run wider. A model choice throughout: the shape of the drag, its friction and its reach
 * are Assumed, and only directions should be read from it.
 */
export function blowFilm(film: LivingFilm, law: FilmLaw, blast: Blast, step_s: number): void {
  const { grid } = film;
  const { lowRow, highRow, lowColumn, highColumn } = blastBlock(grid, blast);
  const moved: Moved[] = [];
  TALLY.fast_m = 0;
  TALLY.slow_m = 0;
  for (let row = lowRow; row < highRow; row++) {
    for (let column = lowColumn; column < highColumn; column++) {
      const cell = row * grid.columns + column;
      // Bare or dry, nothing there dries further or moves; most of a blast falls on such cells.
      if (!((film.fast_m[cell] as number) + (film.slow_m[cell] as number) > 0)) continue;
      const dx = (column + 0.5) * grid.cellSize_m - blast.x_m;
      const dy = (row + 0.5) * grid.cellSize_m - blast.y_m;
      const u = (dx * blast.longX + dy * blast.longY) / (AIR_REACH * blast.halfLength_m);
      const s = (dy * blast.longX - dx * blast.longY) / (AIR_REACH * blast.halfDepth_m);
      const away = u * u + s * s;
      if (away >= 1) continue;
      bringCellsTile(film, law, column, row);
      const speed_m_s = blast.speed_m_s * (1 - away);
      const ratio = Math.sqrt(Math.max(1, speed_m_s / Math.max(0.1, law.air.speed_m_s))) - 1;
      // Only what the air adds: the film levels in this time anyway, and that is counted when its tile is visited.
      const levelled_m4 = film.levelling_m4[cell] as number;
      CELL.lowColumn = column;
      CELL.highColumn = column + 1;
      CELL.lowRow = row;
      CELL.highRow = row + 1;
      dryBlock(film, law, CELL, step_s, ratio, TALLY);
      film.levelling_m4[cell] = levelled_m4;
      const push = pushOf(film, law, cell, FRICTION * 0.5 * AIR_DENSITY_KG_M3 * speed_m_s * speed_m_s * Math.min(1, 4 * away), step_s);
      if (push > 0) moved.push({ cell, push, outX: u * blast.longX - s * blast.longY, outY: u * blast.longY + s * blast.longX });
    }
  }
  film.account.evaporatedFast_m3 += TALLY.fast_m * grid.cellSize_m ** 2;
  film.account.evaporatedSlow_m3 += TALLY.slow_m * grid.cellSize_m ** 2;
  // All is taken before any is given, so that the order of the cells does not count.
  const parcels = moved.flatMap((one) => takenFrom(film, one));
  for (const parcel of parcels) give(film, law, parcel);
}

/** The cells that a blast may hit; what it pushes out goes one cell farther. */
export function blastBlock(grid: Grid, { x_m, y_m, halfLength_m, halfDepth_m }: Blast): CellBlock {
  const reach_m = AIR_REACH * Math.max(halfLength_m, halfDepth_m);
  return {
    lowRow: Math.max(0, Math.floor((y_m - reach_m) / grid.cellSize_m)),
    highRow: Math.min(grid.rows, Math.ceil((y_m + reach_m) / grid.cellSize_m)),
    lowColumn: Math.max(0, Math.floor((x_m - reach_m) / grid.cellSize_m)),
    highColumn: Math.min(grid.columns, Math.ceil((x_m + reach_m) / grid.cellSize_m)),
  };
}

/** A cell whose film is pushed: by how many cells' worth of itself, and which way. */
interface Moved {
  readonly cell: number;
  readonly push: number;
  readonly outX: number;
  readonly outY: number;
}

function tileOf(film: LivingFilm, column: number, row: number): number {
  return Math.floor(row / TILE_ROWS) * film.tiles.columns + Math.floor(column / TILE_COLUMNS);
}

function bringCellsTile(film: LivingFilm, law: FilmLaw, column: number, row: number): void {
  const tile = tileOf(film, column, row);
  if ((film.tiles.at_s[tile] as number) < film.time_s) bringForward(film, law, tile);
}

/** A tile whose film is moved must soon be looked at again; one that was asleep wakes, or what came would never dry. */
function wakeTile(film: LivingFilm, law: FilmLaw, column: number, row: number): void {
  const { tiles, time_s } = film;
  const tile = tileOf(film, column, row);
  bringCellsTile(film, law, column, row);
  if (tiles.due_s[tile] === Infinity) tiles.wettedAt_s[tile] = time_s;
  tiles.due_s[tile] = Math.min(tiles.due_s[tile] as number, time_s);
}

/** Share of a cell's film that the drag moves out of it in a step, 0 where it holds. */
function pushOf(film: LivingFilm, law: FilmLaw, cell: number, drag_Pa: number, step_s: number): number {
  const excess = drag_Pa - law.yieldStress_Pa;
  if (!(excess > 0)) return 0;
  const solids = film.solids_m[cell] as number;
  const wet = solids + (film.fast_m[cell] as number) + (film.slow_m[cell] as number);
  if (!(wet > 0) || solids >= law.setFraction * wet) return 0;
  const viscosity = viscosityOf(law, solids / wet, film.temperature_K[cell] as number);
  const distance_m = ((excess * wet) / (2 * viscosity)) * step_s;
  film.blown_m[cell] = (film.blown_m[cell] as number) + distance_m;
  return Math.min(0.5, distance_m / film.grid.cellSize_m);
}

/** Film on its way from one cell to another. */
interface Parcel {
  readonly to: number;
  readonly solids_m: number;
  readonly fast_m: number;
  readonly slow_m: number;
}

/** Takes from a cell what goes to the neighbours outward of the blast, each in its part of the direction. */
function takenFrom(film: LivingFilm, { cell, push, outX, outY }: Moved): Parcel[] {
  const { columns } = film.grid;
  const column = cell % columns;
  const row = Math.floor(cell / columns);
  const length = Math.abs(outX) + Math.abs(outY);
  if (!(length > 0)) return [];
  const across = insideCell(film, column + Math.sign(outX), row);
  const along = insideCell(film, column, row + Math.sign(outY));
  const acrossShare = across < 0 ? 0 : (push * Math.abs(outX)) / length;
  const alongShare = along < 0 ? 0 : (push * Math.abs(outY)) / length;
  const total = acrossShare + alongShare;
  if (!(total > 0)) return [];
  const [solids_m, fast_m, slow_m] = [film.solids_m, film.fast_m, film.slow_m].map((amount) => {
    const there = amount[cell] as number;
    amount[cell] = there * (1 - total);
    // The difference of what is stored, so that a cell's loss is its neighbours' gain.
    return there - amount[cell];
  }) as [number, number, number];
  film.gathered_m[cell] = (film.gathered_m[cell] as number) - solids_m - fast_m - slow_m;
  return [
    { to: across, share: acrossShare / total },
    { to: along, share: alongShare / total },
  ].flatMap(({ to, share }) => (share > 0 ? [{ to, solids_m: share * solids_m, fast_m: share * fast_m, slow_m: share * slow_m }] : []));
}

/** The cell there, or -1: nothing goes over the outline, where the drag would only pile it. */
function insideCell({ grid, inside }: LivingFilm, column: number, row: number): number {
  if (column < 0 || column >= grid.columns || row < 0 || row >= grid.rows) return -1;
  const cell = row * grid.columns + column;
  return inside[cell] === 0 ? -1 : cell;
}

function give(film: LivingFilm, law: FilmLaw, { to, solids_m, fast_m, slow_m }: Parcel): void {
  const { columns } = film.grid;
  wakeTile(film, law, to % columns, Math.floor(to / columns));
  film.solids_m[to] = (film.solids_m[to] as number) + solids_m;
  film.fast_m[to] = (film.fast_m[to] as number) + fast_m;
  film.slow_m[to] = (film.slow_m[to] as number) + slow_m;
  film.gathered_m[to] = (film.gathered_m[to] as number) + solids_m + fast_m + slow_m;
}
