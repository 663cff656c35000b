/**
 * Adds a table of weights to a grid with its lower-left weight on cell (column, row), clipped at
 * the grid's edges: exact wherever the gun stands at whole-cell steps from where the table was made.
 *
 * @param out `outColumns · outRows`, row-major. @param table `tableColumns · tableRows`, row-major.
 * Four cells a turn, which is up to twice as fast as one.
 */
export function stampTable(out: Float32Array, outColumns: number, outRows: number, table: Float32Array, tableColumns: number, tableRows: number, column: number, row: number): void {
  const firstColumn = Math.max(0, -column);
  const endColumn = Math.min(tableColumns, outColumns - column);
  const firstRow = Math.max(0, -row);
  const endRow = Math.min(tableRows, outRows - row);
  const unrolledEnd = firstColumn + ((endColumn - firstColumn) & ~3);
  for (let r = firstRow; r < endRow; r++) {
    let to = (row + r) * outColumns + column + firstColumn;
    let from = r * tableColumns + firstColumn;
    let c = firstColumn;
    for (; c < unrolledEnd; c += 4) {
      out[to] = (out[to] as number) + (table[from] as number);
      out[to + 1] = (out[to + 1] as number) + (table[from + 1] as number);
      out[to + 2] = (out[to + 2] as number) + (table[from + 2] as number);
      out[to + 3] = (out[to + 3] as number) + (table[from + 3] as number);
      to += 4;
      from += 4;
    }
    for (; c < endColumn; c++) {
      out[to] = (out[to] as number) + (table[from] as number);
      to++;
      from++;
    }
  }
}
