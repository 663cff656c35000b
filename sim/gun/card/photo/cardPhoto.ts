import type { Warning } from '../../../base/errors.ts';
import type { Grid } from '../../../base/grid.ts';
import type { CardReadings } from '../cardReadings.ts';

/** A photograph as pixels: row-major from the upper left, four bytes each (red, green, blue, and one that is not looked at), coded as sRGB. */
export interface CardPhoto {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray | Uint8Array;
}

/** A place on a photograph in pixels: x right from its left edge, y down from its upper edge; the middle of the first pixel is (½, ½). */
export type PixelPlace = readonly [x_px: number, y_px: number];

/** The corners of a rectangle on the card, as seen: lower left, lower right, upper right, upper left. */
export type CardCorners = readonly [PixelPlace, PixelPlace, PixelPlace, PixelPlace];

/** What a photograph does not say of itself. */
export interface PhotoTask {
  /** The rectangle that is read; the whole picture where they are left out. */
  readonly corners?: CardCorners;
  /** True width and height of that rectangle, m. */
  readonly size_m: readonly [width_m: number, height_m: number];
  /** A short burst of a standing gun, or a straight stroke. */
  readonly kind: 'burst' | 'stroke';
  /** Which side of the rectangle a stroke ran along; `x` where it is left out. A burst may lie at any angle. */
  readonly strokeAlong?: 'x' | 'y';
}

/** Relative film on the squared card: cells as `Grid` has them, row 0 the lowest. */
export interface FilmMap extends Grid {
  /** Absorbance against bare paper, proportional to film; about 0 on bare paper, a little below it by noise. */
  readonly film: Float32Array;
}

/** The shape of the fan as it stands on the card. */
export interface PhotoSpot {
  /** Full width along the fan's long axis, of the profile (1-u²)^e that is as wide at a half and at a tenth of its peak. */
  readonly width_m: number;
  /** Full depth of the double-beta fan (β2 = 3) with the same spread along its short axis; null for a stroke, which does not show it. */
  readonly depth_m: number | null;
  /** The fan's long axis from the card's x axis, counter-clockwise, above -π/4 and at most 3π/4: places rise to the right or upward. */
  readonly angle_rad: number;
  /** How far the centre line has bent at the fan's ends, in depths: a crescent. Above 0 towards the left of the long axis. Null for a stroke. */
  readonly bendFraction: number | null;
  /** Standard deviation of the width along the travel, about a straight line, share of its mean: flutter. Null for a burst. */
  readonly widthVariationFraction: number | null;
}

/** What a photograph says of a fan. */
export interface PhotoFan {
  /** Relative film across the fan at 81 even places, fewer on a coarse picture, from the spot's middle along its long axis, without unit; for a burst the mean over the spot's depth. */
  readonly readings: CardReadings;
  readonly spot: PhotoSpot;
  readonly map: FilmMap;
  /** Share of the spot that is so dark that film no longer shows in proportion (`FULL_ABSORBANCE`). */
  readonly fullFraction: number;
  readonly warnings: readonly Warning[];
}
