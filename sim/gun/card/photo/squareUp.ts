import type { Grid } from '../../../base/grid.ts';
import type { CardCorners, CardPhoto } from './cardPhoto.ts';
import { homography, type Homography } from './homography.ts';

/** Cells along the longer side, unless the photograph is coarser. Assumed: a fan's width is then some 200 to 300 cells, and a 12-megapixel picture is read in a fraction of a second. */
export const LONGER_SIDE_CELLS = 400;
/** Samples a cell and axis: two at least, so that a cell between pixels sees both; more than this many photographs do not repay. */
const LEAST_SAMPLES = 2;
const MOST_SAMPLES = 12;
const WHITE = 255;

/** One colour of the squared card. */
export interface Channel {
  /** Mean linear light by cell, 1 = the brightest that the picture can hold. */
  readonly light: Float32Array;
  /** Share of a cell's samples that are as bright, and as dark, as the picture can hold. */
  readonly white: Float32Array;
  readonly black: Float32Array;
}

/** The card seen square from the front. */
export interface SquaredCard extends Grid {
  readonly channels: readonly [red: Channel, green: Channel, blue: Channel];
  /** Where its cells stand on the photograph. */
  readonly view: CardView;
}

/** Where a squared card's places stand on its photograph. */
export interface CardView {
  readonly homography: Homography;
  /** The grid's lower left, and a cell's sides, as shares of the rectangle between the corners. */
  readonly start: readonly [u: number, v: number];
  readonly step: readonly [u: number, v: number];
  /** The picture's middle and half its diagonal, px. */
  readonly middle_px: readonly [x: number, y: number];
  readonly halfDiagonal_px: number;
}

/**
 * Squares the card up: perspective is undone, colour values become linear light, and each square cell holds the mean
 * light of what it covers (the nearest pixel at even samples, as many along a side as pixels). What is less than a
 * cell at the shorter side is left out, half at each end.
 *
 * Left out: the lens' distortion, and what a camera makes of the light beyond sRGB (its own contrast curve).
 *
 * @param corners checked by `checkPhoto`. @param longerSideCells most cells along the longer side; fewer where pixels are fewer.
 */
export function squareUp(photo: CardPhoto, corners: CardCorners, [width_m, height_m]: readonly [number, number], longerSideCells = LONGER_SIDE_CELLS): SquaredCard {
  const longest_px = longestSide_px(corners);
  const cellSize_m = Math.max(width_m, height_m) / Math.min(longerSideCells, Math.ceil(longest_px));
  const [columns, rows] = [width_m, height_m].map((side_m) => Math.max(1, Math.floor(side_m / cellSize_m + 1e-9))) as [number, number];
  const [du, dv] = [cellSize_m / width_m, cellSize_m / height_m];
  const view: CardView = {
    homography: homography(corners),
    start: [(1 - columns * du) / 2, (1 - rows * dv) / 2],
    step: [du, dv],
    middle_px: [photo.width / 2, photo.height / 2],
    halfDiagonal_px: Math.hypot(photo.width, photo.height) / 2,
  };
  const samples = Math.min(MOST_SAMPLES, Math.max(LEAST_SAMPLES, Math.ceil(longest_px / Math.max(columns, rows))));
  return { columns, rows, cellSize_m, channels: sampledChannels(photo, view, columns, rows, samples), view };
}

function longestSide_px(corners: CardCorners): number {
  const sides = corners.map(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % 4] as readonly [number, number];
    return Math.hypot(nextX - x, nextY - y);
  });
  return Math.max(...sides);
}

/** Where a place of the grid, in cells from its lower left, stands on the photograph: from the picture's middle in half diagonals. */
export function photoPlace({ homography: [a, b, c, d, e, f, g, h], start, step, middle_px, halfDiagonal_px }: CardView, column: number, row: number): readonly [x: number, y: number] {
  const u = start[0] + column * step[0];
  const v = start[1] + row * step[1];
  const scale = 1 / (g * u + h * v + 1);
  return [((a * u + b * v + c) * scale - middle_px[0]) / halfDiagonal_px, ((d * u + e * v + f) * scale - middle_px[1]) / halfDiagonal_px];
}

function sampledChannels(photo: CardPhoto, view: CardView, columns: number, rows: number, samples: number): SquaredCard['channels'] {
  const cells = columns * rows;
  const channel = (): Channel => ({ light: new Float32Array(cells), white: new Float32Array(cells), black: new Float32Array(cells) });
  const channels = [channel(), channel(), channel()] as const;
  const pixels = new Int32Array(samples * samples);
  const linear = linearLight();
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      pixelsOfCell(photo, view, column, row, samples, pixels);
      const cell = row * columns + column;
      for (let i = 0; i < 3; i++) averageCell(photo.rgba, pixels, i, linear, channels[i] as Channel, cell);
    }
  }
  return channels;
}

/** Where in the photograph's bytes each sample of a cell stands. */
function pixelsOfCell({ width, height }: CardPhoto, { homography: [a, b, c, d, e, f, g, h], start, step }: CardView, column: number, row: number, samples: number, out: Int32Array): void {
  for (let j = 0, at = 0; j < samples; j++) {
    const v = start[1] + (row + (j + 0.5) / samples) * step[1];
    for (let i = 0; i < samples; i++, at++) {
      const u = start[0] + (column + (i + 0.5) / samples) * step[0];
      const scale = 1 / (g * u + h * v + 1);
      // Corners lie inside the picture: a place falls short of its edge, or past it, by rounding only.
      const x = Math.min(width - 1, Math.max(0, ((a * u + b * v + c) * scale) | 0));
      const y = Math.min(height - 1, Math.max(0, ((d * u + e * v + f) * scale) | 0));
      out[at] = 4 * (y * width + x);
    }
  }
}

function averageCell(rgba: CardPhoto['rgba'], pixels: Int32Array, offset: number, linear: Float64Array, channel: Channel, cell: number): void {
  const count = pixels.length;
  let sum = 0;
  let white = 0;
  let black = 0;
  for (let i = 0; i < count; i++) {
    const value = rgba[(pixels[i] as number) + offset] as number;
    sum += linear[value] as number;
    if (value === WHITE) white++;
    else if (value === 0) black++;
  }
  channel.light[cell] = sum / count;
  channel.white[cell] = white / count;
  channel.black[cell] = black / count;
}

/** Linear light of each byte: the sRGB curve of IEC 61966-2-1:1999. */
export function linearLight(): Float64Array {
  return Float64Array.from({ length: WHITE + 1 }, (_, byte) => {
    const value = byte / WHITE;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
}
