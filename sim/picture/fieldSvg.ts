import type { PanelGrid } from '../panel/panelGrid.ts';
import { COLOUR_COUNT } from './colours.ts';
import { classedPaths } from './classedSvg.ts';
import { colourIndex, NO_FILM, type Field } from './field.ts';

/** Cells along the longer side of the picture: more are put together, so that a page stays small. */
const MOST_CELLS = 160;
/** Steps of colour: an eye tells no more apart on paper. */
const STEPS = 32;
/** Share of a cell that must be inside the panel. */
const LEAST_COVER = 0.5;

/** The classes of a field's cells, put together to at most `MOST_CELLS` along the longer side; a cell as its middle one. */
interface FieldCells {
  readonly columns: number;
  readonly rows: number;
  readonly classes: Int16Array;
  /** Cells of the field along a side of one of these. */
  readonly every: number;
}

/** A film field as the inside of an SVG, one unit a cell, with the size of its picture and the cells of the field that went into each. */
export function fieldSvg(field: Field, panelGrid: PanelGrid): { readonly columns: number; readonly rows: number; readonly every: number; readonly paths: string } {
  const cells = fieldCells(field, panelGrid);
  const fills = Array.from({ length: STEPS }, (_, step) => colourText(field.colours, Math.round(((step + 0.5) / STEPS) * COLOUR_COUNT)));
  return { columns: cells.columns, rows: cells.rows, every: cells.every, paths: classedPaths({ ...cells, fills }) };
}

function fieldCells(field: Field, { cover }: PanelGrid): FieldCells {
  const { grid, values } = field;
  const every = Math.max(1, Math.ceil(Math.max(grid.columns, grid.rows) / MOST_CELLS));
  const columns = Math.ceil(grid.columns / every);
  const rows = Math.ceil(grid.rows / every);
  const classes = new Int16Array(columns * rows).fill(-1);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const from = Math.min(grid.rows - 1, row * every + (every >> 1)) * grid.columns + Math.min(grid.columns - 1, column * every + (every >> 1));
      const value = values[from] as number;
      if ((cover[from] as number) < LEAST_COVER || value === NO_FILM || Number.isNaN(value)) continue;
      classes[row * columns + column] = Math.floor((colourIndex(field, value) * STEPS) / COLOUR_COUNT);
    }
  }
  return { columns, rows, classes, every };
}

/** `#rrggbb` of an entry of a colour table. */
export function colourText(colours: Uint8Array, index: number): string {
  const at = 4 * Math.min(COLOUR_COUNT - 1, Math.max(0, index));
  return `#${[0, 1, 2].map((channel) => (colours[at + channel] as number).toString(16).padStart(2, '0')).join('')}`;
}
