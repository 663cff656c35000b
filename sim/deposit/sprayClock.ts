import type { CellBlock } from '../base/grid.ts';
import type { Spray } from '../gun/spray.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import type { Path } from '../stroke/path.ts';
import type { Stroke } from '../stroke/stroke.ts';
import { layBands } from './bands.ts';
import type { Deposit } from './deposit.ts';
import { emptyDeposit } from './emptyDeposit.ts';
import { fluidSlices, type FluidSlice } from './fluidSlices.ts';
import { gunView, rowsReached } from './gunView.ts';
import { checkPath } from './layPath.ts';
import { laySlice, startRun } from './laySlice.ts';
import { makeLayer, poseBetween, type Layer } from './pieces.ts';

/** A spray that is laid little by little, in the time of its path. */
export interface SprayClock {
  /** What landed since the last `sprayUntil`, on an otherwise empty panel; `passes` are not counted. */
  readonly landed: Deposit;
  readonly layer: Layer;
  readonly slices: readonly FluidSlice[];
  /** Slices before this one are laid. */
  next: number;
  /** Time of the path up to which all is laid. */
  at_s: number;
}

/** What is sprayed and on what. */
export interface SprayClockParts {
  readonly panelGrid: PanelGrid;
  readonly path: Path;
  readonly strokes: readonly Stroke[];
  readonly spray: Spray;
}

/** A clock at the first row of a path. @throws CrosscoatError `range` as `layPath` does. */
export function startSprayClock({ panelGrid, path, strokes, spray }: SprayClockParts): SprayClock {
  checkPath(path);
  return {
    landed: emptyDeposit(panelGrid.grid),
    layer: makeLayer(spray, 'auto'),
    slices: [...fluidSlices(path, strokes, spray, Infinity)],
    next: 0,
    at_s: path.t_s[0] ?? 0,
  };
}

/**
 * Lays what the path sprays up to `until_s` (time of the path) into `clock.landed`, after clearing
 * what an earlier call left there, and gives the block of cells that holds it; null where nothing
 * landed. The parts of a path laid one after another add up to
 * what `layPath` lays: in all to rounding, cell by cell to the stamps' own 0.1 %, as they stand elsewhere.
 */
export function sprayUntil(clock: SprayClock, cleared: CellBlock | null, until_s: number): CellBlock | null {
  const { landed, layer, slices } = clock;
  if (cleared !== null) clearBlock(landed, cleared);
  const run = startRun(layer, landed);
  let lowRow = landed.grid.rows;
  let highRow = 0;
  for (; clock.next < slices.length; clock.next++) {
    const slice = slices[clock.next] as FluidSlice;
    if (slice.start_s >= until_s) break;
    const part = partOf(slice, clock.at_s, until_s);
    if (part !== null) {
      laySlice(run, part, undefined);
      for (const pose of [part.start, part.end]) {
        const [low, high] = rowsReached(gunView(pose, layer.tables), landed.grid, layer.tables, 1, 1);
        lowRow = Math.min(lowRow, low);
        highRow = Math.max(highRow, high);
      }
    }
    if (slice.start_s + slice.duration_s > until_s) break;
  }
  layBands(landed, run.bands);
  clock.at_s = Math.max(clock.at_s, until_s);
  return lowRow < highRow ? blockWithin(landed, lowRow, highRow) : null;
}

/** The part of a slice between two times, null where it has none. */
export function partOf(slice: FluidSlice, from_s: number, until_s: number): FluidSlice | null {
  const { start_s, duration_s } = slice;
  const low = Math.max(0, (from_s - start_s) / duration_s);
  const high = Math.min(1, (until_s - start_s) / duration_s);
  if (!(high > low)) return null;
  if (low === 0 && high === 1) return slice;
  return { ...slice, start: poseBetween(slice, low), end: poseBetween(slice, high), start_s: start_s + low * duration_s, duration_s: (high - low) * duration_s };
}

/** A row more on each side than the ends of the travel reach: a gun that turns between them reaches a little farther. */
const SPARE_ROWS = 2;

/** The block of cells with film among some rows, null where there is none. */
export function blockWithin({ wet_m, grid }: Deposit, low: number, high: number): CellBlock | null {
  const lowRow = Math.max(0, low - SPARE_ROWS);
  const highRow = Math.min(grid.rows, high + SPARE_ROWS);
  let lowColumn = grid.columns;
  let highColumn = 0;
  for (let row = lowRow; row < highRow; row++) {
    const start = row * grid.columns;
    for (let column = 0; column < lowColumn; column++) if ((wet_m[start + column] as number) > 0) lowColumn = column;
    for (let column = grid.columns - 1; column >= highColumn; column--) if ((wet_m[start + column] as number) > 0) highColumn = column + 1;
  }
  return lowColumn < highColumn ? { lowColumn, highColumn, lowRow, highRow } : null;
}

/** Empties a block of a deposit. */
export function clearBlock({ wet_m, solids_m, arrivedDry_m, grid }: Deposit, block: CellBlock): void {
  for (let row = block.lowRow; row < block.highRow; row++) {
    const low = row * grid.columns + block.lowColumn;
    const high = row * grid.columns + block.highColumn;
    wet_m.fill(0, low, high);
    solids_m.fill(0, low, high);
    arrivedDry_m.fill(0, low, high);
  }
}
