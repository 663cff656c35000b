import { amountsAt, type Amounts } from './amounts.ts';
import type { Deposit } from './deposit.ts';
import { isStraight, type FluidSlice } from './fluidSlices.ts';
import { liquidOf, poseBetween, stampCount, type Layer } from './pieces.ts';
import type { RowSpan } from './rowSpan.ts';
import { gunView, rowsReached } from './gunView.ts';
import { addAmounts } from './fluxRows.ts';
import { fluxRow } from './stamp.ts';
import { stampTable } from './stampTable.ts';

/** Below this many stamps a table is not worth making. */
const LEAST_STEPS = 8;

/** A table of flux around the gun's first place, and where its lower-left weight lies. */
interface StepTable {
  readonly weights: Float32Array;
  readonly columns: number;
  readonly rows: number;
  readonly column: number;
  readonly row: number;
}

/**
 * Lays a straight even slice that runs along the grid's rows or columns as stamps from one table:
 * whole-cell steps see the same sub-cell place each time, so the table is exact. The step is a
 * whole number of cells below the stamps' own, and the travel left over is laid as one more stamp.
 * Only asked of by the `stamp` method: `auto` has a closed form for the same slices.
 * @returns the liquid's amounts, or null where the slice does not fit (nothing is then laid).
 */
export function laySteps(deposit: Deposit, layer: Layer, slice: FluidSlice): Amounts | null {
  const { start, end } = slice;
  const { cellSize_m } = deposit.grid;
  if (layer.method !== 'stamp' || !isStraight(slice)) return null;
  const alongX_m = end.x_m - start.x_m;
  const alongY_m = end.y_m - start.y_m;
  if (Math.min(Math.abs(alongX_m), Math.abs(alongY_m)) > 1e-9) return null;
  const length_m = Math.hypot(alongX_m, alongY_m);
  const count = stampCount(layer, slice);
  const cells = Math.floor(length_m / count / cellSize_m + 1e-9);
  if (count < LEAST_STEPS || cells < 1) return null;
  const step_m = cells * cellSize_m;
  const steps = Math.floor(length_m / step_m + 1e-9);
  const liquid_m3 = (liquidOf(layer, slice) * step_m) / length_m;
  const first = tableAt(deposit, layer, slice, (0.5 * step_m) / length_m);
  if (first === null) return null;
  const alongColumns = Math.abs(alongX_m) > Math.abs(alongY_m);
  const toward = cells * Math.sign(alongColumns ? alongX_m : alongY_m);
  const last = first.row + (alongColumns ? 0 : (steps - 1) * toward);
  const strip = makeStrip(deposit, Math.min(first.row, last), Math.max(first.row, last) + first.rows);
  for (let i = 0; i < steps; i++) {
    const column = first.column + (alongColumns ? i * toward : 0);
    const row = first.row + (alongColumns ? 0 : i * toward);
    stampTable(strip.flux, deposit.grid.columns, strip.rows, first.weights, first.columns, first.rows, column, row - strip.firstRow);
  }
  const amounts = amountsAt(layer.spray, gunView(start, layer.tables).slant_m);
  addStrip(deposit, strip, liquid_m3, amounts);
  layRest(deposit, layer, slice, (steps * step_m) / length_m, amounts);
  return amounts;
}

/** Samples the flux of one pose over all that it reaches, also outside the grid. */
function tableAt(deposit: Deposit, layer: Layer, slice: FluidSlice, share: number): StepTable | null {
  const { cellSize_m } = deposit.grid;
  const { tables } = layer;
  const pose = poseBetween(slice, share);
  const scale = pose.z_m / tables.distance_m;
  const reach_m = scale * Math.hypot(tables.halfLength_m, tables.halfDepth_m);
  const side = 2 * Math.ceil(reach_m / cellSize_m) + 2;
  const column = Math.floor(pose.x_m / cellSize_m) - side / 2;
  const row = Math.floor(pose.y_m / cellSize_m) - side / 2;
  const local = { ...pose, x_m: pose.x_m - column * cellSize_m, y_m: pose.y_m - row * cellSize_m };
  const view = gunView(local, tables);
  const [low, high] = rowsReached(view, { columns: side, rows: side, cellSize_m }, tables, 1, 1);
  const spans: RowSpan = { low: 0, high: 0 };
  const wide = new Float32Array(side * (high - low));
  const line = new Float32Array(side);
  let left = side;
  let right = 0;
  for (let r = low; r < high; r++) {
    fluxRow(line, spans, view, tables, r, side, cellSize_m);
    if (spans.low >= spans.high) continue;
    wide.set(line.subarray(spans.low, spans.high), (r - low) * side + spans.low);
    left = Math.min(left, spans.low);
    right = Math.max(right, spans.high);
  }
  if (left >= right) return null;
  const columns = right - left;
  const weights = new Float32Array(columns * (high - low));
  for (let r = 0; r < high - low; r++) weights.set(wide.subarray(r * side + left, r * side + right), r * columns);
  return { weights, columns, rows: high - low, column: column + left, row: row + low };
}

/** Whole rows of the grid, from `firstRow`, on which flux is gathered before it is shared out. */
interface Strip {
  readonly firstRow: number;
  readonly rows: number;
  readonly flux: Float32Array;
}

function makeStrip(deposit: Deposit, low: number, high: number): Strip {
  const firstRow = Math.max(0, low);
  const rows = Math.max(0, Math.min(deposit.grid.rows, high) - firstRow);
  return { firstRow, rows, flux: new Float32Array(rows * deposit.grid.columns) };
}

function addStrip(deposit: Deposit, strip: Strip, liquid_m3: number, amounts: Amounts): void {
  const { flux } = strip;
  const offset = strip.firstRow * deposit.grid.columns;
  addAmounts(deposit, offset, flux, 0, flux.length, liquid_m3 * amounts.wet, liquid_m3 * amounts.solids, liquid_m3 * amounts.arrivedDry);
}

/** One stamp in the middle of the travel that whole-cell steps leave over. */
function layRest(deposit: Deposit, layer: Layer, slice: FluidSlice, from: number, amounts: Amounts): void {
  if (1 - from < 1e-9) return;
  const rest = tableAt(deposit, layer, slice, 0.5 * (1 + from));
  if (rest === null) return;
  const strip = makeStrip(deposit, rest.row, rest.row + rest.rows);
  stampTable(strip.flux, deposit.grid.columns, strip.rows, rest.weights, rest.columns, rest.rows, rest.column, rest.row - strip.firstRow);
  addStrip(deposit, strip, liquidOf(layer, slice) * (1 - from), amounts);
}
