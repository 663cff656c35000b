import { checkRange } from '../base/check.ts';
import type { WindowFault, WindowMap, WindowPlace } from '../verdict/workingWindow.ts';
import { isHatched } from './hatch.ts';
import { INSIDE_COLOUR, UNMEASURED_SHARE, WINDOW_COLOURS } from './windowColours.ts';

/** A window's map as RGBA bytes, row by row from the top: x to the right, y up, without words. */
export interface WindowPixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
}

/** How large a window's picture is, and which places are marked in it. */
export interface WindowPictureOptions {
  /** Side of a point, a whole number from 1 to 32. */
  readonly pixelsPerPoint: number;
  /** Marked by a ring, where given, as `cross` is by a cross. */
  readonly ring?: WindowPlace;
  readonly cross?: WindowPlace;
}

const INK = [24, 24, 24] as const;
/** Half the size of a mark. */
const MARK_PIXELS = 9;

/**
 * The regions of a window: paper where nothing is at fault, elsewhere the ground of the worst fault with its
 * hatching in ink; distances that were not measured lie under a veil.
 * @throws `range` for a point's size that is not from 1 to 32.
 */
export function windowPicture(map: WindowMap, options: WindowPictureOptions): WindowPixels {
  const { pixelsPerPoint: size } = options;
  checkRange({ name: 'windowPicture: pixelsPerPoint', value: size, low: 1, high: 32, advice: 'give a whole number from 1 to 32' });
  const width = map.x.count * size;
  const height = map.y.count * size;
  const pixels = { width, height, rgba: new Uint8ClampedArray(4 * width * height) };
  for (let y = 0; y < height; y++) {
    const row = map.y.count - 1 - Math.floor(y / size);
    for (let x = 0; x < width; x++) setPixel(pixels, x, y, pointColour(map, row * map.x.count + Math.floor(x / size), x, y));
  }
  if (options.ring !== undefined) paintMark(pixels, pixelOf(map, options.ring, size), (dx, dy) => Math.abs(Math.hypot(dx, dy) - MARK_PIXELS + 1.5) < 1.5);
  if (options.cross !== undefined) paintMark(pixels, pixelOf(map, options.cross, size), (dx, dy) => Math.abs(Math.abs(dx) - Math.abs(dy)) < 1.5);
  return pixels;
}

type Colour = readonly [number, number, number];

function pointColour({ faults, codes, inRange }: WindowMap, at: number, x: number, y: number): Colour {
  const fault = faults[(codes[at] as number) - 1];
  const ground = fault === undefined ? INSIDE : (GROUNDS.get(fault) as Colour);
  const colour = fault !== undefined && isHatched(fault, x, y) ? INK : ground;
  return inRange[at] === 1 ? colour : (colour.map((channel, i) => channel + UNMEASURED_SHARE * ((INK[i] as number) - channel)) as unknown as Colour);
}

const INSIDE = colourOf(INSIDE_COLOUR);
const GROUNDS = new Map(Object.entries(WINDOW_COLOURS).map(([fault, colour]) => [fault as WindowFault, colourOf(colour)]));

function colourOf(hex: string): Colour {
  return [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)) as unknown as Colour;
}

function setPixel({ rgba, width }: WindowPixels, x: number, y: number, [red, green, blue]: Colour): void {
  const at = 4 * (y * width + x);
  rgba[at] = red;
  rgba[at + 1] = green;
  rgba[at + 2] = blue;
  rgba[at + 3] = 255;
}

/** Middle of the pixel that shows a place. */
function pixelOf({ x, y }: WindowMap, place: WindowPlace, size: number): readonly [number, number] {
  const column = ((place.x - x.low) / (x.high - x.low)) * (x.count - 1);
  const row = ((place.y - y.low) / (y.high - y.low)) * (y.count - 1);
  return [(column + 0.5) * size, (y.count - 0.5 - row) * size];
}

function paintMark(pixels: WindowPixels, [atX, atY]: readonly [number, number], isInked: (dx: number, dy: number) => boolean): void {
  for (let dy = -MARK_PIXELS; dy <= MARK_PIXELS; dy++) {
    for (let dx = -MARK_PIXELS; dx <= MARK_PIXELS; dx++) {
      const x = Math.round(atX + dx);
      const y = Math.round(atY + dy);
      if (isInked(dx, dy) && x >= 0 && y >= 0 && x < pixels.width && y < pixels.height) setPixel(pixels, x, y, INK);
    }
  }
}
