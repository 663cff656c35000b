/** A picture of cells that each belong to one of a few classes. */
export interface ClassedCells {
  readonly columns: number;
  readonly rows: number;
  /** Class of each cell, row-major from the lowest row; below 0 nothing is drawn. */
  readonly classes: Int16Array;
  /** Fill of each class: a colour, or `url(#…)` of a pattern that the page defines. */
  readonly fills: readonly string[];
}

/**
 * SVG paths, one a class, of a picture one unit a cell, y down as a screen has it. Neighbours of one class in a row
 * are one rectangle, so the text grows with the rims, not with the cells.
 */
export function classedPaths({ columns, rows, classes, fills }: ClassedCells): string {
  const paths = fills.map(() => '');
  for (let row = 0; row < rows; row++) {
    const y = rows - 1 - row;
    for (let column = 0; column < columns; ) {
      const own = classes[row * columns + column] as number;
      let end = column + 1;
      while (end < columns && classes[row * columns + end] === own) end++;
      if (own >= 0) paths[own] += `M${column},${y}h${end - column}v1h${column - end}z`;
      column = end;
    }
  }
  return paths.map((path, i) => (path === '' ? '' : `<path fill="${fills[i]}" d="${path}"/>`)).join('');
}
