import type { Film } from '../film/film.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import { numberCell } from './csvCell.ts';

/** Columns of a film file; `cover` is the share of the cell's area inside the panel. */
export const FILM_CSV_HEADER = 'x_mm,y_mm,wet_um,dry_um,solids_at_impact,passes,cover';

/**
 * The film as CSV, one line for each cell with area inside the panel, header first, from the
 * lowest row up and from left to right, at cell centres. Lines have no line end.
 * `solids_at_impact` is a volume fraction, empty where there is no film.
 */
export function* filmCsvRows(film: Film, panelGrid: PanelGrid): Generator<string> {
  yield FILM_CSV_HEADER;
  const { columns, rows, cellSize_m } = film.grid;
  const { cover } = panelGrid;
  for (let row = 0; row < rows; row++) {
    const y = numberCell((row + 0.5) * cellSize_m * 1000);
    for (let column = 0; column < columns; column++) {
      const cell = row * columns + column;
      if (!((cover[cell] as number) > 0)) continue;
      const wet_m = film.wet_m[cell] as number;
      const dry_m = film.dry_m[cell] as number;
      yield [
        numberCell((column + 0.5) * cellSize_m * 1000),
        y,
        numberCell(wet_m * 1e6),
        numberCell(dry_m * 1e6),
        wet_m > 0 ? numberCell(dry_m / wet_m) : '',
        String(film.passes[cell]),
        numberCell(cover[cell] as number),
      ].join(',');
    }
  }
}
