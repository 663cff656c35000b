import type { Grid } from '../../../base/grid.ts';

/** Blocks of cells along the longer side: small against a fan, large enough to average the grain of a picture away. */
const LONGER_SIDE_BLOCKS = 50;

/** A grid's cells in even blocks, row-major as the cells are; a block's sides differ by a cell at most. */
export interface Blocks {
  readonly columns: number;
  readonly rows: number;
}

/** The blocks of a grid: `LONGER_SIDE_BLOCKS` along its longer side, nearly square. */
export function blocksOf({ columns, rows }: Grid): Blocks {
  const side = Math.max(1, Math.max(columns, rows) / LONGER_SIDE_BLOCKS);
  return { columns: Math.max(1, Math.round(columns / side)), rows: Math.max(1, Math.round(rows / side)) };
}

/** By cell: the block that holds it. */
export function cellBlocks({ columns, rows }: Grid, blocks: Blocks): Uint32Array {
  const blockOfCell = new Uint32Array(columns * rows);
  for (let row = 0, cell = 0; row < rows; row++) {
    const first = blocks.columns * Math.floor(((row + 0.5) * blocks.rows) / rows);
    for (let column = 0; column < columns; column++, cell++) blockOfCell[cell] = first + Math.floor(((column + 0.5) * blocks.columns) / columns);
  }
  return blockOfCell;
}

/** The middle value of each block's cells: specks of dirt smaller than half a block do not move it. */
export function blockMedians(values: Float32Array, blockOfCell: Uint32Array, { columns, rows }: Blocks): Float64Array {
  const count = columns * rows;
  const start = new Uint32Array(count + 1);
  for (const block of blockOfCell) start[block + 1] = (start[block + 1] as number) + 1;
  for (let block = 0; block < count; block++) start[block + 1] = (start[block + 1] as number) + (start[block] as number);
  const packed = new Float32Array(values.length);
  const next = start.slice();
  for (let cell = 0; cell < values.length; cell++) {
    const block = blockOfCell[cell] as number;
    const at = next[block] as number;
    packed[at] = values[cell] as number;
    next[block] = at + 1;
  }
  return Float64Array.from({ length: count }, (_, block) => middleOf(packed.subarray(start[block], start[block + 1]).sort()));
}

function middleOf(sorted: Float32Array): number {
  const last = sorted.length - 1;
  return ((sorted[last >> 1] as number) + (sorted[(last + 1) >> 1] as number)) / 2;
}

/** The mean of each block's cells. */
export function blockMeans(values: Float32Array, blockOfCell: Uint32Array, { columns, rows }: Blocks): Float64Array {
  const sums = new Float64Array(columns * rows);
  const counts = new Float64Array(columns * rows);
  for (let cell = 0; cell < values.length; cell++) {
    const block = blockOfCell[cell] as number;
    sums[block] = (sums[block] as number) + (values[cell] as number);
    counts[block] = (counts[block] as number) + 1;
  }
  return sums.map((sum, block) => sum / (counts[block] as number));
}

/** Calls with every block that touches one by a side or a corner, and with itself. */
function eachNear({ columns, rows }: Blocks, block: number, take: (near: number) => void): void {
  const [column, row] = [block % columns, Math.floor(block / columns)];
  for (let r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
    for (let c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) take(r * columns + c);
  }
}

/** Marks the blocks that touch a marked one, and those marked. */
export function spread(marked: Uint8Array, blocks: Blocks): Uint8Array {
  const wider = marked.slice();
  for (let block = 0; block < marked.length; block++) if (marked[block] === 1) eachNear(blocks, block, (near) => (wider[near] = 1));
  return wider;
}
