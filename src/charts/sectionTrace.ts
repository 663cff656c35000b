import type { Grid } from '../../sim/index.ts';

/** Film along a line: samples at even steps, NaN off the panel. */
export interface Trace {
  readonly length_m: number;
  readonly step_m: number;
  readonly wet_m: Float32Array;
  readonly dry_m: Float32Array;
}

export interface TracedFilm {
  readonly grid: Grid;
  readonly wet_m: Float32Array;
  readonly dry_m: Float32Array;
}

/** No more points than a wide screen can show. */
const MOST_SAMPLES = 800;

/**
 * Film along the line from (x0, y0) to (x1, y1), m: the cell under each sample, about one sample a
 * cell. Cells with less than half their area on the panel have none.
 */
export function traceFilm(film: TracedFilm, cover: Float32Array, line: readonly [number, number, number, number]): Trace {
  const [x0, y0, x1, y1] = line;
  const { columns, rows, cellSize_m } = film.grid;
  const length_m = Math.hypot(x1 - x0, y1 - y0);
  const count = Math.max(2, Math.min(MOST_SAMPLES, Math.ceil(length_m / cellSize_m) + 1));
  const wet_m = new Float32Array(count).fill(NaN);
  const dry_m = new Float32Array(count).fill(NaN);
  for (let i = 0; i < count; i++) {
    const share = i / (count - 1);
    const column = Math.floor((x0 + (x1 - x0) * share) / cellSize_m);
    const row = Math.floor((y0 + (y1 - y0) * share) / cellSize_m);
    if (column < 0 || row < 0 || column >= columns || row >= rows) continue;
    const cell = row * columns + column;
    if (!((cover[cell] as number) >= 0.5)) continue;
    wet_m[i] = film.wet_m[cell] as number;
    dry_m[i] = film.dry_m[cell] as number;
  }
  return { length_m, step_m: length_m / (count - 1), wet_m, dry_m };
}

/** SVG path of the samples, broken where there are none. */
export function tracePath(values: Float32Array, x: (sample: number) => number, y: (value: number) => number): string {
  let path = '';
  let isOpen = false;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (Number.isNaN(value)) {
      isOpen = false;
      continue;
    }
    path += `${isOpen ? 'L' : 'M'}${x(i).toFixed(1)},${y(value).toFixed(1)}`;
    isOpen = true;
  }
  return path;
}
