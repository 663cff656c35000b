/** Values along a level line through one side's map. */
export interface SideSection {
  readonly name: string;
  /** From the left edge, and the value there; NaN outside the panel or without film. */
  readonly values: Float32Array;
}

/** The row of a grid nearest to a height, share of the grid from below. */
export function sectionValues(values: Float32Array, columns: number, rows: number, height: number): Float32Array {
  const row = Math.min(rows - 1, Math.max(0, Math.floor(height * rows)));
  return values.slice(row * columns, (row + 1) * columns);
}

/** SVG path of one side's values, broken where there is none. */
export function sectionPath(values: Float32Array, x: (column: number) => number, y: (value: number) => number): string {
  let path = '';
  let isOpen = false;
  values.forEach((value, column) => {
    if (!Number.isFinite(value) || value < 0) {
      isOpen = false;
      return;
    }
    path += `${isOpen ? 'L' : 'M'}${x(column).toFixed(1)},${y(value).toFixed(1)}`;
    isOpen = true;
  });
  return path;
}
