import type { Patch } from './patchTexture.ts';

/** Cells along a side of a tile: small enough that a stroke's block is not the whole panel, large enough that a frame sends few. */
const TILE = 32;

/** Which parts of a grid have changed since they were last taken, in tiles. */
export class DirtyTiles {
  private readonly tileColumns: number;
  private readonly tileRows: number;
  private readonly dirty: Uint8Array;
  private count = 0;

  constructor(private readonly columns: number, private readonly rows: number) {
    this.tileColumns = Math.ceil(columns / TILE);
    this.tileRows = Math.ceil(rows / TILE);
    this.dirty = new Uint8Array(this.tileColumns * this.tileRows);
  }

  mark({ lowColumn, highColumn, lowRow, highRow }: Patch): void {
    const lastRow = Math.min(this.tileRows - 1, Math.floor((highRow - 1) / TILE));
    const lastColumn = Math.min(this.tileColumns - 1, Math.floor((highColumn - 1) / TILE));
    for (let row = Math.floor(lowRow / TILE); row <= lastRow; row++) {
      for (let column = Math.floor(lowColumn / TILE); column <= lastColumn; column++) {
        const tile = row * this.tileColumns + column;
        if (this.dirty[tile] === 0) this.count++;
        this.dirty[tile] = 1;
      }
    }
  }

  /** Gives out what has changed, neighbours along a row as one block, and forgets it. */
  take(send: (patch: Patch) => void): void {
    if (this.count === 0) return;
    for (let row = 0; row < this.tileRows; row++) {
      for (let column = 0; column < this.tileColumns; column++) {
        if (this.dirty[row * this.tileColumns + column] === 0) continue;
        const first = column;
        while (column < this.tileColumns && this.dirty[row * this.tileColumns + column] === 1) this.dirty[row * this.tileColumns + column++] = 0;
        send({
          lowColumn: first * TILE,
          highColumn: Math.min(this.columns, column * TILE),
          lowRow: row * TILE,
          highRow: Math.min(this.rows, (row + 1) * TILE),
        });
      }
    }
    this.count = 0;
  }
}
