import { checkRange } from '../base/check.ts';
import { CrosscoatError } from '../base/errors.ts';
import type { PanelGrid } from '../panel/panelGrid.ts';
import type { FaultKind } from '../verdict/verdict.ts';
import { COLOUR_COUNT } from './colours.ts';
import { NO_FILM, colourIndex, type Field } from './field.ts';
import { isHatched } from './hatch.ts';
import { fieldLegend, type ThicknessUnit } from './legend.ts';

/** A zone to hatch. */
export interface HatchedZone {
  readonly kind: FaultKind;
  readonly cells: Uint32Array;
}

/** How large, on what ground, with which zones and ticks. */
export interface PictureOptions {
  /** Side of a cell, a whole number from 1 to 32. */
  readonly pixelsPerCell: number;
  /** Red, green, blue, alpha bytes of the ground. */
  readonly background: readonly [number, number, number, number];
  readonly zones?: readonly HatchedZone[];
  /** Unit whose round numbers get the tick marks. */
  readonly thickness: ThicknessUnit;
}

/** A part of a picture, in pixels from its upper left. */
export interface PictureBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** RGBA bytes, row by row from the top. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
  /** Where the panel's grid lies. */
  readonly panel: PictureBox;
  /** The colour bar, first colour at the bottom. */
  readonly bar: PictureBox;
}

const MARGIN = 16;
const BAR_WIDTH = 20;
const TICK_LENGTH = 8;
const INK: readonly [number, number, number, number] = [24, 24, 24, 255];
const PAPER: readonly [number, number, number, number] = [255, 255, 255, 255];
/** 268 MB of bytes: above this a picture helps nobody. */
const MOST_PIXELS = 67_108_864;

/**
 * A film field as pixels: the panel with y up, the zones hatched by kind (ink on light colours,
 * paper on dark ones) and a colour bar with tick marks to its right. Cells with less than half
 * their area inside the panel, and cells without film where the field is a share of the film,
 * keep the ground. There is no text: `fieldLegend` gives it as data.
 *
 * @throws `range` for a cell size that is not from 1 to 32, `limit` above 67 million pixels.
 */
export function filmPicture(field: Field, panelGrid: PanelGrid, options: PictureOptions): Picture {
  checkRange({
    name: 'filmPicture: pixelsPerCell',
    value: options.pixelsPerCell,
    low: 1,
    high: 32,
    advice: 'give a whole number from 1 to 32',
  });
  const picture = emptyPicture(field, Math.floor(options.pixelsPerCell), options.background);
  paintCells(picture, field, panelGrid.cover);
  for (const zone of options.zones ?? []) paintHatching(picture, zone, field.grid.columns);
  paintBar(picture, field, options.thickness);
  return picture;
}

function emptyPicture(field: Field, pixelsPerCell: number, background: PictureOptions['background']): Picture {
  const panel = {
    left: MARGIN,
    top: MARGIN,
    width: field.grid.columns * pixelsPerCell,
    height: field.grid.rows * pixelsPerCell,
  };
  const bar = { left: panel.left + panel.width + MARGIN, top: MARGIN, width: BAR_WIDTH, height: Math.max(panel.height, 64) };
  const width = bar.left + bar.width + TICK_LENGTH + MARGIN;
  const height = bar.height + 2 * MARGIN;
  if (!(width * height <= MOST_PIXELS)) {
    throw new CrosscoatError(
      'limit',
      `filmPicture: ${width} × ${height} pixels is more than ${MOST_PIXELS}; give fewer pixels per cell or larger cells`,
    );
  }
  const rgba = new Uint8Array(width * height * 4);
  for (let i = 0; i < width * height; i++) rgba.set(background, i * 4);
  return { width, height, rgba, panel, bar };
}

function paintCells(picture: Picture, field: Field, cover: Float32Array): void {
  const { columns, rows } = field.grid;
  const size = picture.panel.width / columns;
  const isBelow = field.domain[0] > NO_FILM;
  for (let row = 0; row < rows; row++) {
    const top = picture.panel.top + (rows - 1 - row) * size;
    for (let column = 0; column < columns; column++) {
      const cell = row * columns + column;
      const value = field.values[cell] as number;
      if (!((cover[cell] as number) >= 0.5) || Number.isNaN(value) || (value === NO_FILM && isBelow)) continue;
      const at = colourIndex(field, value) * 4;
      paintBox(picture, picture.panel.left + column * size, top, size, size, field.colours.subarray(at, at + 4));
    }
  }
}

function paintBox(picture: Picture, left: number, top: number, width: number, height: number, colour: ArrayLike<number>): void {
  for (let y = top; y < top + height; y++) {
    for (let x = left; x < left + width; x++) picture.rgba.set(colour, (y * picture.width + x) * 4);
  }
}

function paintHatching(picture: Picture, zone: HatchedZone, columns: number): void {
  const size = picture.panel.width / columns;
  const rows = picture.panel.height / size;
  for (const cell of zone.cells) {
    const column = cell % columns;
    const left = picture.panel.left + column * size;
    const top = picture.panel.top + (rows - 1 - (cell - column) / columns) * size;
    for (let y = top; y < top + size; y++) {
      for (let x = left; x < left + size; x++) if (isHatched(zone.kind, x, y)) inkPixel(picture, x, y);
    }
  }
}

/** Ink on a light pixel, paper on a dark one (luma of ITU-R BT.601). */
function inkPixel(picture: Picture, x: number, y: number): void {
  const at = (y * picture.width + x) * 4;
  const [red = 0, green = 0, blue = 0] = picture.rgba.subarray(at, at + 3);
  picture.rgba.set(0.299 * red + 0.587 * green + 0.114 * blue > 110 ? INK : PAPER, at);
}

function paintBar(picture: Picture, field: Field, thickness: ThicknessUnit): void {
  const { left, top, width, height } = picture.bar;
  for (let y = 0; y < height; y++) {
    const index = Math.floor(((height - 1 - y) * COLOUR_COUNT) / height);
    paintBox(picture, left, top + y, width, 1, field.colours.subarray(index * 4, index * 4 + 4));
  }
  for (const { place } of fieldLegend(field, thickness).ticks) {
    paintBox(picture, left + width, top + Math.round((1 - place) * (height - 1)), TICK_LENGTH, 1, INK);
  }
}
