import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { Field } from '../../../../sim/index.ts';
import { useWidth } from '../../../charts/useWidth.ts';
import { mapPixels } from '../../demonstrations/LessonMap.tsx';
import { cellBox, type Box } from './mapBox.ts';

/** Places of the panel in the picture, px. */
export interface Placing {
  readonly x: (x_m: number) => number;
  readonly y: (y_m: number) => number;
  /** What is drawn over the map is as large on every screen. */
  readonly pixels_per_m: number;
}

export interface FilmMapProps {
  readonly field: Field;
  /** Inside share of each cell: those less than half on the panel stay clear. */
  readonly cover: Float32Array;
  readonly box: Box;
  /** What the picture shows, for who does not see it. */
  readonly label: string;
  /** Height at most, px. */
  readonly most_px: number;
  /** Lines drawn over the map. */
  readonly over?: (place: Placing) => ComponentChildren;
}

/** Share of a cell from which on it is on the panel. */
const ON_PANEL = 0.5;

/** A part of a film map, one pixel a cell and enlarged by the browser, with lines over it. */
export function FilmMap({ field, cover, box: shown, label, most_px, over }: FilmMapProps): JSX.Element {
  const { box, width_px } = useWidth(320);
  const canvas = useRef<HTMLCanvasElement>(null);
  const { grid } = field;
  const { column, row, columns, rows } = cellBox(shown, grid);
  const values = useMemo(() => onPanel(field.values, cover), [field.values, cover]);
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (context === null || context === undefined) return;
    context.clearRect(0, 0, columns, rows);
    context.putImageData(new ImageData(mapPixels(field, values), grid.columns, grid.rows), -column, row + rows - grid.rows);
  }, [field, values, column, row, columns, rows]);
  const wide_px = Math.min(width_px, (most_px * columns) / rows);
  const pixels_per_m = wide_px / (columns * grid.cellSize_m);
  const high_px = (wide_px * rows) / columns;
  const place: Placing = {
    x: (x_m) => (x_m - column * grid.cellSize_m) * pixels_per_m,
    y: (y_m) => high_px - (y_m - row * grid.cellSize_m) * pixels_per_m,
    pixels_per_m,
  };
  return (
    <div ref={box} class="film-map">
      <div class="film-map-sheet" role="img" aria-label={label} style={{ '--wide': `${wide_px}px`, '--aspect': columns / rows }}>
        <canvas ref={canvas} width={columns} height={rows} />
        {over === undefined ? null : <svg viewBox={`0 0 ${wide_px} ${high_px}`} aria-hidden="true">{over(place)}</svg>}
      </div>
    </div>
  );
}

/** Film off the panel is no film; another grid's cover says nothing of it. */
function onPanel(values: Float32Array, cover: Float32Array): Float32Array {
  if (cover.length !== values.length) return values;
  return values.map((value, cell) => ((cover[cell] as number) >= ON_PANEL ? value : NaN));
}
