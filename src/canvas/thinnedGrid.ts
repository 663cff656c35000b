/** Every n-th cell of a grid, for a GPU whose largest texture is smaller than the grid. */
export interface Thinning {
  /** 1 keeps every cell. */
  readonly step: number;
  readonly columns: number;
  readonly rows: number;
}

export function thinning(columns: number, rows: number, largest: number): Thinning {
  const step = Math.ceil(Math.max(columns, rows) / largest);
  return { step, columns: Math.ceil(columns / step), rows: Math.ceil(rows / step) };
}

/** The cell at the middle of each block of `step` × `step`; the grid itself when the step is 1. */
export function thinnedValues(
  columns: number, rows: number, values: Float32Array, thin: Thinning,
): Float32Array {
  if (thin.step === 1) return values;
  const out = new Float32Array(thin.columns * thin.rows);
  const middle = thin.step >> 1;
  for (let row = 0; row < thin.rows; row++) {
    const from = Math.min(rows - 1, row * thin.step + middle) * columns;
    for (let column = 0; column < thin.columns; column++) {
      const at = Math.min(columns - 1, column * thin.step + middle);
      out[row * thin.columns + column] = values[from + at] as number;
    }
  }
  return out;
}
