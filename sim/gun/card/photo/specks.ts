import type { Grid } from '../../../base/grid.ts';

/** Cells to each side that a cell is set against. */
const REACH = 4;
const AROUND = (2 * REACH + 1) ** 2;
/** A cell is a speck when it stands off the middle value around it by more than this many standard deviations of what is around it. */
const SPECK_SIGMAS = 6;
/** Assumed: and by more absorbance than this, so that no even paper has specks. */
const LEAST_STEP = 0.03;
/** Standard deviations of a normal scatter in its median absolute deviation. */
const SIGMAS_PER_MAD = 1.4826;

/** A map without specks, and the share of cells that were, those by the edge not counted: the table beside the card is no dirt. */
export interface Mended {
  readonly cells: Float32Array;
  readonly speckFraction: number;
}

/**
 * Takes specks of dirt and pinpoint glare out: a cell that is an outlier among the 9 × 9 around it gets their middle
 * value. A film's own grain stands, since it is what a cell is set against. Dirt wider than about 6 cells stays,
 * and the very corner of a sharp-cornered film goes.
 */
export function mendSpecks(cells: Float32Array, { columns, rows }: Grid): Mended {
  const mended = cells.slice();
  const around = new Float32Array(AROUND);
  let specks = 0;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const cell = row * columns + column;
      if (isLikeAround(cells, columns, rows, column, row)) continue;
      let count = 0;
      for (let r = Math.max(0, row - REACH); r <= Math.min(rows - 1, row + REACH); r++) {
        for (let c = Math.max(0, column - REACH); c <= Math.min(columns - 1, column + REACH); c++) around[count++] = cells[r * columns + c] as number;
      }
      const value = cells[cell] as number;
      const middle = sortedMiddle(around, count);
      if (!(Math.abs(value - middle) > LEAST_STEP)) continue;
      for (let i = 0; i < count; i++) around[i] = Math.abs((around[i] as number) - middle);
      if (!(Math.abs(value - middle) > SPECK_SIGMAS * SIGMAS_PER_MAD * sortedMiddle(around, count))) continue;
      mended[cell] = middle;
      if (count === AROUND) specks++;
    }
  }
  return { cells: mended, speckFraction: specks / cells.length };
}

/** A quick look that spares nearly every cell the sorting: near the mean of the cells `REACH` to each side. */
function isLikeAround(cells: Float32Array, columns: number, rows: number, column: number, row: number): boolean {
  const left = row * columns + Math.max(0, column - REACH);
  const right = row * columns + Math.min(columns - 1, column + REACH);
  const low = Math.max(0, row - REACH) * columns + column;
  const high = Math.min(rows - 1, row + REACH) * columns + column;
  const mean = ((cells[left] as number) + (cells[right] as number) + (cells[low] as number) + (cells[high] as number)) / 4;
  return Math.abs((cells[row * columns + column] as number) - mean) <= LEAST_STEP;
}

/** The middle of the first `count` values, which are sorted in place: by insertion, the quickest for so few. */
function sortedMiddle(values: Float32Array, count: number): number {
  for (let i = 1; i < count; i++) {
    const value = values[i] as number;
    let j = i - 1;
    while (j >= 0 && (values[j] as number) > value) {
      values[j + 1] = values[j] as number;
      j--;
    }
    values[j + 1] = value;
  }
  return values[count >> 1] as number;
}
