import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { COLOUR_COUNT, colourTable, type FilmMap } from '../../../../sim/index.ts';

/** Film on the squared card, one pixel a cell; the browser enlarges it. Dark is bare paper, light the most film. */
export function FilmMapPicture({ map }: { readonly map: FilmMap }): JSX.Element {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    context?.putImageData(new ImageData(filmMapPixels(map), map.columns, map.rows), 0, 0);
  }, [map]);
  return <canvas ref={canvas} width={map.columns} height={map.rows} class="photo-map" role="img" aria-label="Relative film on the card, squared up and with the light evened out" />;
}

/** RGBA bytes, row by row from the top; the colours run from no film to the most. */
function filmMapPixels({ film, columns, rows }: Pick<FilmMap, 'film' | 'columns' | 'rows'>): Uint8ClampedArray<ArrayBuffer> {
  const colours = colourTable('film');
  const most = film.reduce((high, value) => Math.max(high, value), 0);
  const pixels = new Uint8ClampedArray(columns * rows * 4);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const share = most > 0 ? Math.max(0, film[row * columns + column] as number) / most : 0;
      const at = Math.min(COLOUR_COUNT - 1, Math.round(share * (COLOUR_COUNT - 1))) * 4;
      pixels.set(colours.subarray(at, at + 4), ((rows - 1 - row) * columns + column) * 4);
    }
  }
  return pixels;
}
