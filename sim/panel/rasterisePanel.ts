import { checkRange } from '../base/check.ts';
import { CrosscoatError } from '../base/errors.ts';
import type { Panel, Polygon } from './panel.ts';
import type { PanelGrid } from './panelGrid.ts';

/** Most cells of a grid: about 100 MB for one array of the film. */
export const MOST_CELLS = 25e6;

/** Covered shares below this are rounding left over by the sums. */
const ROUNDING = 1e-7;

/** Edges of all rings, cell units, sorted by their lower end. */
interface Edges {
  readonly x0: Float64Array;
  readonly y0: Float64Array;
  readonly x1: Float64Array;
  readonly y1: Float64Array;
  readonly order: Uint32Array;
}

/**
 * A panel on a grid of square cells: the exact share of each cell inside the outline and outside
 * the holes, by the signed area between each edge and the row's right end. Exact but for the
 * rounding of a 32-bit share, so `covered_m2` equals the panel's area within 1e-6 of it.
 * @param cellSize_m above 0. @throws CrosscoatError `limit` for more than `MOST_CELLS` cells.
 */
export function rasterisePanel(panel: Panel, cellSize_m: number): PanelGrid {
  checkRange({
    name: 'rasterisePanel: cellSize_m',
    value: cellSize_m,
    low: 1e-5,
    high: 1,
    unit: 'm',
    advice: 'give a cell of 1 to 10 mm',
  });
  const columns = cellsAlong(panel.width_m, cellSize_m);
  const rows = cellsAlong(panel.height_m, cellSize_m);
  if (columns * rows > MOST_CELLS) throw tooManyCells(panel, cellSize_m, columns * rows);
  const cover = new Float32Array(columns * rows);
  const rings = [panel.outline, ...panel.holes];
  fillCover(columns, rows, edgesByHeight(rings, cellSize_m), cover);
  let sum = 0;
  for (let cell = 0; cell < cover.length; cell++) sum += cover[cell] as number;
  return { grid: { columns, rows, cellSize_m }, cover, covered_m2: sum * cellSize_m * cellSize_m };
}

/** Whole cells that hold a length; a last cell thinner than rounding is none. */
function cellsAlong(length_m: number, cellSize_m: number): number {
  return Math.max(1, Math.ceil(length_m / cellSize_m - 1e-9));
}

function tooManyCells(panel: Panel, cellSize_m: number, cells: number): CrosscoatError {
  const enough_mm = Math.ceil(Math.sqrt((panel.width_m * panel.height_m) / MOST_CELLS) * 1.001 * 1e4) / 10;
  return new CrosscoatError(
    'limit',
    `rasterisePanel: a cell of ${cellSize_m * 1000} mm makes ${Math.round(cells / 1e6)} million cells of panel "${panel.name}" ` +
      `(${panel.width_m.toFixed(2)} m by ${panel.height_m.toFixed(2)} m), more than ${MOST_CELLS / 1e6} million; give a cell of ${enough_mm} mm or more`,
  );
}

function edgesByHeight(rings: readonly Polygon[], cellSize_m: number): Edges {
  const count = rings.reduce((sum, ring) => sum + ring.length / 2, 0);
  const x0 = new Float64Array(count);
  const y0 = new Float64Array(count);
  const x1 = new Float64Array(count);
  const y1 = new Float64Array(count);
  let i = 0;
  for (const ring of rings) {
    for (let k = 0; k < ring.length; k += 2, i++) {
      const next = k + 2 < ring.length ? k + 2 : 0;
      x0[i] = (ring[k] as number) / cellSize_m;
      y0[i] = (ring[k + 1] as number) / cellSize_m;
      x1[i] = (ring[next] as number) / cellSize_m;
      y1[i] = (ring[next + 1] as number) / cellSize_m;
    }
  }
  const lowEnd = (e: number): number => Math.min(y0[e] as number, y1[e] as number);
  const order = Uint32Array.from({ length: count }, (_, e) => e).sort((a, b) => lowEnd(a) - lowEnd(b));
  return { x0, y0, x1, y1, order };
}

/** Row by row, with only the edges that reach the row, so memory beyond `cover` is one row. */
function fillCover(columns: number, rows: number, edges: Edges, cover: Float32Array): void {
  const { x0, y0, x1, y1, order } = edges;
  const change = new Float64Array(columns + 1);
  const active = new Uint32Array(order.length);
  let activeCount = 0;
  let next = 0;
  for (let row = 0; row < rows; row++) {
    while (next < order.length) {
      const e = order[next] as number;
      if (Math.min(y0[e] as number, y1[e] as number) >= row + 1) break;
      active[activeCount++] = e;
      next++;
    }
    change.fill(0);
    let kept = 0;
    for (let k = 0; k < activeCount; k++) {
      const e = active[k] as number;
      addEdge(row, columns, x0[e] as number, y0[e] as number, x1[e] as number, y1[e] as number, change);
      if (Math.max(y0[e] as number, y1[e] as number) > row + 1) active[kept++] = e;
    }
    activeCount = kept;
    let share = 0;
    for (let column = 0, cell = row * columns; column < columns; column++, cell++) {
      share += change[column] as number;
      cover[cell] = share < ROUNDING ? 0 : share > 1 ? 1 : share;
    }
  }
}

/**
 * Adds one edge's part in a row to the row's changes of covered share. A rising edge of a
 * counter-clockwise ring ends the covered stretch, so it takes area from all that lies to its right.
 */
function addEdge(row: number, columns: number, x0: number, y0: number, x1: number, y1: number, change: Float64Array): void {
  if (y0 === y1) return;
  const low = Math.max(row, Math.min(y0, y1));
  const high = Math.min(row + 1, Math.max(y0, y1));
  if (!(high > low)) return;
  const slope = (x1 - x0) / (y1 - y0);
  const sign = y1 > y0 ? -1 : 1;
  const xLow = x0 + (low - y0) * slope;
  const xHigh = x0 + (high - y0) * slope;
  const left = Math.min(xLow, xHigh);
  const right = Math.max(xLow, xHigh);
  const height = sign * (high - low);
  const first = clamp(Math.floor(left), columns);
  const last = clamp(Math.floor(right), columns);
  if (first === last) {
    addPiece(first, height, (left + right) / 2, change);
    return;
  }
  const perColumn = height / (right - left);
  for (let column = first; column <= last; column++) {
    const from = column === first ? left : column;
    const to = column === last ? right : column + 1;
    addPiece(column, perColumn * (to - from), (from + to) / 2, change);
  }
}

function addPiece(column: number, height: number, middle: number, change: Float64Array): void {
  const here = height * (column + 1 - middle);
  change[column] = (change[column] as number) + here;
  change[column + 1] = (change[column + 1] as number) + height - here;
}

function clamp(column: number, columns: number): number {
  return column < 0 ? 0 : column >= columns ? columns - 1 : column;
}
