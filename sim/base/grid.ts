/**
 * A regular grid laid over a panel's bounding box.
 *
 * Row-major, `cell = row * columns + column`. Cell centres stand at
 * `x = (column + ½) cellSize_m`, `y = (row + ½) cellSize_m`; row 0 is the lowest (y up).
 */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly cellSize_m: number;
}

/** How many cells `grid` has. */
export function cellCount(grid: Grid): number {
  return grid.columns * grid.rows;
}

/**
 * The cell that holds a place, or -1 outside the grid.
 * @param x_m from the panel's left edge, @param y_m from its lower edge.
 */
export function cellAt(grid: Grid, x_m: number, y_m: number): number {
  const column = Math.floor(x_m / grid.cellSize_m);
  const row = Math.floor(y_m / grid.cellSize_m);
  if (column < 0 || row < 0 || column >= grid.columns || row >= grid.rows) return -1;
  return row * grid.columns + column;
}

/** A block of cells, upper ends left out. */
export interface CellBlock {
  readonly lowColumn: number;
  readonly highColumn: number;
  readonly lowRow: number;
  readonly highRow: number;
}

/** The smallest block that holds two. */
export function blockHull(a: CellBlock, b: CellBlock): CellBlock {
  return {
    lowColumn: Math.min(a.lowColumn, b.lowColumn),
    highColumn: Math.max(a.highColumn, b.highColumn),
    lowRow: Math.min(a.lowRow, b.lowRow),
    highRow: Math.max(a.highRow, b.highRow),
  };
}
