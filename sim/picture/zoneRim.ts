import type { Grid } from '../base/grid.ts';

/** Right, up, left, down: the way along a cell's lower, right, upper, left side. */
const STEP_X = [1, 0, -1, 0] as const;
const STEP_Y = [0, 1, 0, -1] as const;

/**
 * The rim of a set of cells: closed polygons along the cells' sides, `x0, y0, x1, y1, …` in m,
 * corners only. The outside runs counter-clockwise, a hole clockwise. Cells that meet at a corner
 * only get loops of their own.
 *
 * Time and memory grow with the number of cells, not with the grid.
 */
export function zoneRim(cells: Uint32Array, grid: Grid): Float64Array[] {
  const sides = rimSides(cells, grid);
  const loops: Float64Array[] = [];
  for (const side of sides) {
    if (sides.has(side)) loops.push(takeLoop(side, sides, grid));
  }
  return loops;
}

/** A side is its first corner and its direction: `corner * 4 + direction`, the zone to its left. */
function rimSides(cells: Uint32Array, grid: Grid): Set<number> {
  const { columns, rows } = grid;
  const inside = new Set(cells);
  const across = columns + 1;
  const sides = new Set<number>();
  for (const cell of cells) {
    const column = cell % columns;
    const row = (cell - column) / columns;
    const corner = row * across + column;
    if (row === 0 || !inside.has(cell - columns)) sides.add(corner * 4);
    if (column === columns - 1 || !inside.has(cell + 1)) sides.add((corner + 1) * 4 + 1);
    if (row === rows - 1 || !inside.has(cell + columns)) sides.add((corner + across + 1) * 4 + 2);
    if (column === 0 || !inside.has(cell - 1)) sides.add((corner + across) * 4 + 3);
  }
  return sides;
}

/** Follows the rim from `first` until it closes, taking its sides out of `sides`. */
function takeLoop(first: number, sides: Set<number>, grid: Grid): Float64Array {
  const across = grid.columns + 1;
  const corners: number[] = [];
  let side = first;
  do {
    sides.delete(side);
    const direction = side % 4;
    const corner = (side - direction) / 4 + (STEP_X[direction] as number) + across * (STEP_Y[direction] as number);
    const next = nextSide(corner, direction, first, sides);
    if (next % 4 !== direction) {
      const column = corner % across;
      corners.push(column * grid.cellSize_m, ((corner - column) / across) * grid.cellSize_m);
    }
    side = next;
  } while (side !== first);
  return Float64Array.from(corners);
}

/** The sharpest left turn first: it stays on the same cell where two cells meet at a corner. */
function nextSide(corner: number, direction: number, first: number, sides: Set<number>): number {
  for (const turn of [1, 0, 3]) {
    const side = corner * 4 + ((direction + turn) % 4);
    if (side === first || sides.has(side)) return side;
  }
  return first;
}
