import type { Band } from './bands.ts';
import type { Deposit } from './deposit.ts';
import { addAmounts } from './fluxRows.ts';
import { keepBelowZero, type RowSpan } from './rowSpan.ts';
import { swept, type Sweep } from './sweep.ts';
import { profileAt, type SweepTable } from './sweepTable.ts';

/** A travel counts as running with the grid below this slope: over 10 m it is off by 10 nm. */
const WITH_GRID = 1e-9;

/**
 * A sweep on a grid, in the footprint's own lengths (divided by the sweep's scale). At column c
 * of a row, along = along0 + c·alongStep and offset = offset0 + c·offsetStep.
 */
interface RowFrame {
  along0: number;
  alongStep: number;
  offset0: number;
  offsetStep: number;
}

/**
 * Lays one sweep, one visit a cell. Where it runs with the grid its inside is handed to `bands`,
 * to be laid with all the others by `layBands`; the rest is laid at once.
 * @param row working memory, one grid row.
 */
export function laySweep(deposit: Deposit, sweep: Sweep, bands: Band[], row: Float32Array): void {
  const { columns, rows, cellSize_m } = deposit.grid;
  const inside = insideBand(deposit, sweep);
  if (inside !== null) bands.push(inside);
  const [firstRow, endRow] = rowsSwept(sweep, rows, cellSize_m);
  const length = sweep.length_m / sweep.scale;
  const liquid = sweep.liquid_m3 / (sweep.scale * sweep.length_m);
  const span: RowSpan = { low: 0, high: 0 };
  const core: RowSpan = { low: 0, high: 0 };
  for (let r = firstRow; r < endRow; r++) {
    const frame = rowFrame(sweep, r, cellSize_m);
    span.low = 0;
    span.high = columns;
    keepOffsets(span, frame, sweep.table.halfAcross_m);
    keepAlong(span, frame, -sweep.table.halfAlong_m, length + sweep.table.halfAlong_m);
    if (span.low >= span.high) continue;
    if (inside === null) coreSpan(core, span, frame, sweep, length);
    else bandSpan(core, span, inside, r);
    endsRow(row, span.low, core.low, sweep.table, frame, length);
    endsRow(row, core.high, span.high, sweep.table, frame, length);
    if (inside === null) profileRow(row, core.low, core.high, sweep.table, frame);
    if (inside !== null) {
      addThree(deposit, sweep, r, row, span.low, core.low, liquid);
      addThree(deposit, sweep, r, row, core.high, span.high, liquid);
    } else addThree(deposit, sweep, r, row, span.low, span.high, liquid);
  }
}

/** The columns of a row that see the whole footprint pass; empty at `span.high` where none do. */
function coreSpan(core: RowSpan, span: RowSpan, frame: RowFrame, sweep: Sweep, length: number): void {
  core.low = span.low;
  core.high = span.high;
  keepAlong(core, frame, sweep.table.halfAlong_m, length - sweep.table.halfAlong_m);
  if (core.low >= core.high) {
    core.low = span.high;
    core.high = span.high;
  }
}

/** The columns of a row that a band already holds; empty at `span.high` in rows outside the band. */
function bandSpan(core: RowSpan, span: RowSpan, band: Band, row: number): void {
  const holds = row >= band.lowRow && row < band.highRow;
  core.low = holds ? Math.max(span.low, band.lowColumn) : span.high;
  core.high = holds ? Math.min(span.high, band.highColumn) : span.high;
}

function rowFrame(sweep: Sweep, row: number, cellSize_m: number): RowFrame {
  const { scale, travelX, travelY } = sweep;
  const awayX = 0.5 * cellSize_m - sweep.startX_m;
  const awayY = (row + 0.5) * cellSize_m - sweep.startY_m;
  return {
    along0: (awayX * travelX + awayY * travelY) / scale,
    alongStep: (cellSize_m * travelX) / scale,
    offset0: (awayY * travelX - awayX * travelY) / scale,
    offsetStep: (-cellSize_m * travelY) / scale,
  };
}

function keepOffsets(span: RowSpan, frame: RowFrame, half: number): void {
  keepBelowZero(span, frame.offset0 - half, frame.offsetStep);
  keepBelowZero(span, -frame.offset0 - half, -frame.offsetStep);
}

function keepAlong(span: RowSpan, frame: RowFrame, low: number, high: number): void {
  keepBelowZero(span, frame.along0 - high, frame.alongStep);
  keepBelowZero(span, low - frame.along0, -frame.alongStep);
}

/** Rows that the swept rectangle can reach. */
function rowsSwept(sweep: Sweep, rows: number, cellSize_m: number): readonly [number, number] {
  const { table, scale, travelX, travelY, startY_m } = sweep;
  const endY_m = startY_m + sweep.length_m * travelY;
  const reach_m = scale * (table.halfAcross_m * Math.abs(travelX) + table.halfAlong_m * Math.abs(travelY));
  const low = Math.ceil((Math.min(startY_m, endY_m) - reach_m) / cellSize_m - 0.5);
  const high = Math.floor((Math.max(startY_m, endY_m) + reach_m) / cellSize_m - 0.5) + 1;
  return [Math.max(0, low), Math.min(rows, high)];
}

/** Cells that see the whole footprint pass. */
function profileRow(out: Float32Array, from: number, to: number, table: SweepTable, frame: RowFrame): void {
  const { profile, steps } = table;
  const perNode = (0.5 * steps) / table.halfAcross_m;
  const place0 = frame.offset0 * perNode + 0.5 * steps;
  const placeStep = frame.offsetStep * perNode;
  for (let c = from; c < to; c++) {
    const place = Math.min(steps, Math.max(0, place0 + c * placeStep));
    const i = place | 0;
    const low = profile[i] as number;
    out[c] = low + (place - i) * ((profile[i + 1] as number) - low);
  }
}

/** Cells near an end of the sweep, which see part of it. */
function endsRow(out: Float32Array, from: number, to: number, table: SweepTable, frame: RowFrame, length: number): void {
  for (let c = from; c < to; c++) {
    out[c] = swept(table, frame.offset0 + c * frame.offsetStep, frame.along0 + c * frame.alongStep, length);
  }
}

function addThree(deposit: Deposit, sweep: Sweep, r: number, row: Float32Array, from: number, to: number, liquid: number): void {
  const { amounts } = sweep;
  addAmounts(deposit, r * deposit.grid.columns, row, from, to, liquid * amounts.wet, liquid * amounts.solids, liquid * amounts.arrivedDry);
}

/** The inside of a sweep that runs with the grid; null where it slants or is shorter than the fan. */
function insideBand(deposit: Deposit, sweep: Sweep): Band | null {
  const { columns, rows, cellSize_m } = deposit.grid;
  const { travelX, travelY, table, scale } = sweep;
  const alongRows = Math.abs(travelY) < WITH_GRID;
  if (!alongRows && Math.abs(travelX) >= WITH_GRID) return null;
  const start_m = alongRows ? sweep.startX_m : sweep.startY_m;
  const travel = alongRows ? travelX : travelY;
  const end_m = start_m + travel * sweep.length_m;
  const centre_m = alongRows ? sweep.startY_m : sweep.startX_m;
  const along = cellsBetween(Math.min(start_m, end_m) + scale * table.halfAlong_m, Math.max(start_m, end_m) - scale * table.halfAlong_m, cellSize_m, alongRows ? columns : rows);
  const across = cellsBetween(centre_m - scale * table.halfAcross_m, centre_m + scale * table.halfAcross_m, cellSize_m, alongRows ? rows : columns);
  if (along[0] >= along[1] || across[0] >= across[1]) return null;
  const liquid = sweep.liquid_m3 / (scale * sweep.length_m);
  const liquid_m = new Float64Array(across[1] - across[0]);
  const left = alongRows ? travelX : -travelY;
  for (let i = 0; i < liquid_m.length; i++) {
    const offset_m = ((across[0] + i + 0.5) * cellSize_m - centre_m) * left;
    liquid_m[i] = liquid * profileAt(table, offset_m / scale);
  }
  const [columnsSpan, rowsSpan] = alongRows ? [along, across] : [across, along];
  return {
    along: alongRows ? 'rows' : 'columns',
    lowColumn: columnsSpan[0],
    highColumn: columnsSpan[1],
    lowRow: rowsSpan[0],
    highRow: rowsSpan[1],
    liquid_m,
    wet: sweep.amounts.wet,
    solids: sweep.amounts.solids,
    arrivedDry: sweep.amounts.arrivedDry,
  };
}

/** Cells `[low, high)` whose centres lie between two places. */
function cellsBetween(low_m: number, high_m: number, cellSize_m: number, count: number): readonly [number, number] {
  const low = Math.max(0, Math.ceil(low_m / cellSize_m - 0.5));
  return [low, Math.min(count, Math.floor(high_m / cellSize_m - 0.5) + 1)];
}
