import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DirtyTiles } from '../../../src/canvas/spray/dirtyTiles.ts';
import type { Patch } from '../../../src/canvas/spray/patchTexture.ts';

interface Case {
  readonly columns: number;
  readonly rows: number;
  readonly patches: readonly Patch[];
}

const SIZE = fc.integer({ min: 1, max: 150 });
const CASES: fc.Arbitrary<Case> = fc.tuple(SIZE, SIZE).chain(([columns, rows]) => {
  const span = (most: number) => fc.tuple(fc.integer({ min: 0, max: most }), fc.integer({ min: 0, max: most })).filter(([a, b]) => a !== b).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
  const patch = fc.tuple(span(columns), span(rows)).map(([[lowColumn, highColumn], [lowRow, highRow]]) => ({ lowColumn, highColumn, lowRow, highRow }));
  return fc.record({ columns: fc.constant(columns), rows: fc.constant(rows), patches: fc.array(patch, { maxLength: 6 }) });
});

/** How often each cell of a grid lies in a list of blocks. */
function timesIn(patches: readonly Patch[], columns: number, rows: number): Uint8Array {
  const times = new Uint8Array(columns * rows);
  for (const { lowColumn, highColumn, lowRow, highRow } of patches) {
    for (let row = lowRow; row < highRow; row++) {
      for (let column = lowColumn; column < highColumn; column++) times[row * columns + column]!++;
    }
  }
  return times;
}

function taken(tiles: DirtyTiles): Patch[] {
  const sent: Patch[] = [];
  tiles.take((patch) => sent.push(patch));
  return sent;
}

describe('dirty tiles', () => {
  it('send every marked cell, none twice, inside the grid, and then forget', () => {
    fc.assert(
      fc.property(CASES, ({ columns, rows, patches }) => {
        const tiles = new DirtyTiles(columns, rows);
        for (const patch of patches) tiles.mark(patch);
        const sent = taken(tiles);
        for (const { lowColumn, highColumn, lowRow, highRow } of sent) {
          expect([lowColumn >= 0, lowColumn < highColumn, highColumn <= columns]).toEqual([true, true, true]);
          expect([lowRow >= 0, lowRow < highRow, highRow <= rows]).toEqual([true, true, true]);
        }
        const marked = timesIn(patches, columns, rows);
        const times = timesIn(sent, columns, rows);
        expect(marked.every((count, cell) => count === 0 || times[cell] === 1)).toBe(true);
        expect(times.every((count) => count <= 1)).toBe(true);
        // No tile that nobody touched: a cell that is sent has a marked one in its own 32 × 32.
        const near = timesIn(patches.map(({ lowColumn, highColumn, lowRow, highRow }) => ({
          lowColumn: lowColumn - (lowColumn % 32), highColumn: Math.min(columns, Math.ceil(highColumn / 32) * 32), lowRow: lowRow - (lowRow % 32), highRow: Math.min(rows, Math.ceil(highRow / 32) * 32),
        })), columns, rows);
        expect(times.every((count, cell) => count === 0 || near[cell]! > 0)).toBe(true);
        expect(taken(tiles)).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  it('send neighbours along a row as one block, and parts that lie apart as two', () => {
    const tiles = new DirtyTiles(160, 64);
    tiles.mark({ lowColumn: 10, highColumn: 90, lowRow: 0, highRow: 1 });
    expect(taken(tiles)).toEqual([{ lowColumn: 0, highColumn: 96, lowRow: 0, highRow: 32 }]);
    tiles.mark({ lowColumn: 0, highColumn: 1, lowRow: 40, highRow: 41 });
    tiles.mark({ lowColumn: 159, highColumn: 160, lowRow: 40, highRow: 41 });
    expect(taken(tiles)).toEqual([
      { lowColumn: 0, highColumn: 32, lowRow: 32, highRow: 64 },
      { lowColumn: 128, highColumn: 160, lowRow: 32, highRow: 64 },
    ]);
  });

  it('are marked again after they were taken', () => {
    const tiles = new DirtyTiles(40, 40);
    const patch = { lowColumn: 33, highColumn: 34, lowRow: 33, highRow: 34 };
    for (let i = 0; i < 3; i++) {
      tiles.mark(patch);
      tiles.mark(patch);
      expect(taken(tiles)).toEqual([{ lowColumn: 32, highColumn: 40, lowRow: 32, highRow: 40 }]);
    }
  });
});
