/** A block of cells, upper ends left out. */
export interface CellBlock {
  readonly lowColumn: number;
  readonly highColumn: number;
  readonly lowRow: number;
  readonly highRow: number;
}
