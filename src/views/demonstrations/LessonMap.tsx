import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { colourIndex, NO_FILM, type Field } from '../../../sim/index.ts';

export interface LessonMapProps {
  readonly field: Field;
  readonly values: Float32Array;
  readonly title: string;
}

/** A film map, one pixel a cell, top row first; cells without a value stay clear. The browser enlarges it. */
export function LessonMap({ field, values, title }: LessonMapProps): JSX.Element {
  const canvas = useRef<HTMLCanvasElement>(null);
  const { columns, rows } = field.grid;
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (context === null || context === undefined) return;
    context.putImageData(new ImageData(mapPixels(field, values), columns, rows), 0, 0);
  }, [field, values]);
  return <canvas ref={canvas} width={columns} height={rows} class="lesson-map" role="img" aria-label={`${title}: ${field.title}`} />;
}

/** RGBA bytes, row by row from the top. */
export function mapPixels(field: Field, values: Float32Array): Uint8ClampedArray<ArrayBuffer> {
  const { columns, rows } = field.grid;
  const whole: Field = { ...field, values };
  const pixels = new Uint8ClampedArray(columns * rows * 4);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const value = values[row * columns + column] as number;
      if (Number.isNaN(value) || value === NO_FILM) continue;
      const at = colourIndex(whole, value) * 4;
      pixels.set(field.colours.subarray(at, at + 4), ((rows - 1 - row) * columns + column) * 4);
    }
  }
  return pixels;
}
