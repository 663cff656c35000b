import type { Grid } from '../base/grid.ts';
import type { FanTables } from './fanTables.ts';
import type { GunPose } from './fluidSlices.ts';
import { gunView, rowsReached } from './gunView.ts';
import { keepBelowZero, keepInCone, type RowSpan } from './rowSpan.ts';

/** A straight travel of the gun with fluid on (start = end for a stamp), for counting passes. */
export interface Reach {
  readonly start: GunPose;
  readonly end: GunPose;
  readonly stroke: number;
}

/**
 * Counts one pass for each cell that came inside the fan's stated width and depth during each
 * stroke (an ellipse, whatever the family; fluid outside every stroke counts for none).
 *
 * Strokes of one straight reach are counted together, one visit a cell; the rest are marked reach
 * by reach.
 */
export function countPasses(passes: Uint16Array, grid: Grid, tables: FanTables, reaches: readonly Reach[]): void {
  const owned = reaches.filter((reach) => reach.stroke >= 0);
  const perStroke = new Map<number, number>();
  for (const { stroke } of owned) perStroke.set(stroke, (perStroke.get(stroke) ?? 0) + 1);
  const straight: ReachSpans[] = [];
  const marked: Uint32Array | null = owned.some((reach) => (perStroke.get(reach.stroke) as number) > 1) ? new Uint32Array(passes.length) : null;
  for (const reach of owned) {
    const spans = reachSpans(reach, grid, tables);
    if (marked === null || perStroke.get(reach.stroke) === 1) straight.push(spans);
    else markReach(passes, marked, grid, spans, reach.stroke + 1);
  }
  countStraight(passes, grid, straight);
}

/** One span of columns a row: a swept ellipse is convex. */
interface ReachSpans {
  readonly firstRow: number;
  readonly endRow: number;
  readonly fill: (row: number, span: RowSpan) => void;
}

function reachSpans(reach: Reach, grid: Grid, tables: FanTables): ReachSpans {
  const start = ellipseSpans(reach.start, grid, tables);
  if (reach.start.x_m === reach.end.x_m && reach.start.y_m === reach.end.y_m) return start;
  const end = ellipseSpans(reach.end, grid, tables);
  const between = betweenSpans(reach, grid, tables);
  const part: RowSpan = { low: 0, high: 0 };
  return {
    firstRow: Math.min(start.firstRow, end.firstRow),
    endRow: Math.max(start.endRow, end.endRow),
    fill: (row, span) => {
      span.low = grid.columns;
      span.high = 0;
      for (const one of [start, between, end]) {
        one.fill(row, part);
        if (part.low >= part.high) continue;
        span.low = Math.min(span.low, part.low);
        span.high = Math.max(span.high, part.high);
      }
    },
  };
}

/** The fan's stated ellipse thrown on the panel from one pose; none where it does not close. */
function ellipseSpans(pose: GunPose, grid: Grid, tables: FanTables): ReachSpans {
  const view = gunView(pose, tables);
  const perU = tables.halfLength_m / tables.nominalHalfWidth_m;
  const perS = tables.halfDepth_m / tables.nominalHalfDepth_m;
  const [firstRow, endRow] = rowsReached(view, grid, tables, 1 / perU, 1 / perS);
  const cell = grid.cellSize_m;
  return {
    firstRow,
    endRow,
    fill: (row, span) => {
      const x_m = 0.5 * cell;
      const y_m = (row + 0.5) * cell;
      span.low = 0;
      span.high = grid.columns;
      const closes = keepInCone(
        span,
        perU * (view.u0 + view.ux * x_m + view.uy * y_m), perU * view.ux * cell,
        perS * (view.s0 + view.sx * x_m + view.sy * y_m), perS * view.sx * cell,
        view.z0 + view.zx * x_m + view.zy * y_m, view.zx * cell,
      );
      if (!closes) span.high = span.low;
    },
  };
}

/** The parallelogram between the first and last ellipse's points of tangency (a square gun's sweep). */
function betweenSpans(reach: Reach, grid: Grid, tables: FanTables): ReachSpans {
  const { start, end } = reach;
  const scale = start.z_m / tables.distance_m;
  const a = scale * tables.nominalHalfWidth_m;
  const b = scale * tables.nominalHalfDepth_m;
  const length_m = Math.hypot(end.x_m - start.x_m, end.y_m - start.y_m);
  const tx = (end.x_m - start.x_m) / length_m;
  const ty = (end.y_m - start.y_m) / length_m;
  const turn = start.fan_rad - Math.atan2(ty, tx) - Math.PI / 2;
  const half_m = Math.hypot(a * Math.cos(turn), b * Math.sin(turn));
  const lean = (-(a * a - b * b) * Math.sin(turn) * Math.cos(turn)) / (half_m * half_m);
  const cell = grid.cellSize_m;
  return {
    firstRow: 0,
    endRow: grid.rows,
    fill: (row, span) => {
      const awayX = 0.5 * cell - start.x_m;
      const awayY = (row + 0.5) * cell - start.y_m;
      const offset0 = awayY * tx - awayX * ty;
      const offsetStep = -cell * ty;
      const along0 = awayX * tx + awayY * ty - lean * offset0;
      const alongStep = cell * tx - lean * offsetStep;
      span.low = 0;
      span.high = grid.columns;
      keepBelowZero(span, offset0 - half_m, offsetStep);
      keepBelowZero(span, -offset0 - half_m, -offsetStep);
      keepBelowZero(span, along0 - length_m, alongStep);
      keepBelowZero(span, -along0, -alongStep);
    },
  };
}

/** Adds all spans of a row as differences, then one running sum a row. */
function countStraight(passes: Uint16Array, grid: Grid, all: readonly ReachSpans[]): void {
  if (all.length === 0) return;
  const change = new Int32Array(grid.columns + 1);
  const span: RowSpan = { low: 0, high: 0 };
  for (let row = 0; row < grid.rows; row++) {
    let any = false;
    for (const spans of all) {
      if (row < spans.firstRow || row >= spans.endRow) continue;
      spans.fill(row, span);
      if (span.low >= span.high) continue;
      any = true;
      change[span.low] = (change[span.low] as number) + 1;
      change[span.high] = (change[span.high] as number) - 1;
    }
    if (any) addCounts(passes, row * grid.columns, change, grid.columns);
  }
}

function addCounts(passes: Uint16Array, offset: number, change: Int32Array, columns: number): void {
  let level = 0;
  for (let c = 0; c < columns; c++) {
    level += change[c] as number;
    change[c] = 0;
    passes[offset + c] = (passes[offset + c] as number) + level;
  }
  change[columns] = 0;
}

/** Counts cells not yet marked for this stroke. */
function markReach(passes: Uint16Array, marked: Uint32Array, grid: Grid, spans: ReachSpans, mark: number): void {
  const span: RowSpan = { low: 0, high: 0 };
  for (let row = spans.firstRow; row < spans.endRow; row++) {
    spans.fill(row, span);
    const end = row * grid.columns + span.high;
    for (let cell = row * grid.columns + span.low; cell < end; cell++) {
      if (marked[cell] === mark) continue;
      marked[cell] = mark;
      passes[cell] = (passes[cell] as number) + 1;
    }
  }
}
