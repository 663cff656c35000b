import { checkRange } from '../../../base/check.ts';
import { CrosscoatError } from '../../../base/errors.ts';
import type { CardCorners, CardPhoto, PhotoTask, PixelPlace } from './cardPhoto.ts';

/** Most pixels of a photograph: a hundred million, some four times what hand-held cameras give. */
const MOST_PIXELS = 100e6;
/** Assumed: sides of the rectangle, m. Smaller ones hold no fan; larger ones are no card. */
const LEAST_SIDE_M = 0.02;
const MOST_SIDE_M = 2;
/** Assumed: no card is longer than so many times its shorter side, and the light across a strip cannot be told from the fan. */
const MOST_SIDES_RATIO = 8;
/** Assumed: a rectangle of fewer pixels along a side shows a fan's edge too coarsely. */
const LEAST_SIDE_PX = 50;
/** Assumed: a corner of the rectangle seen under less than this, or more than 180° less this, is seen too much from the side. */
const LEAST_ANGLE_RAD = (20 * Math.PI) / 180;
const CORNER_NAMES = ['lower left', 'lower right', 'upper right', 'upper left'] as const;

/**
 * Checks a photograph and what is said of it.
 * @returns the corners, which are the picture's own where none are given.
 * @throws CrosscoatError `limit` for a picture that is too large or whose bytes do not fit its sides, `range` for sizes,
 *   `geometry` for corners outside the picture, crossed, in the wrong order, nearly in a line or too near each other.
 */
export function checkPhoto(photo: CardPhoto, { corners, size_m }: PhotoTask): CardCorners {
  checkPicture(photo);
  for (const [i, name] of (['width', 'height'] as const).entries()) {
    checkRange({ name: `photograph: ${name} between the corners`, value: size_m[i] as number, low: LEAST_SIDE_M, high: MOST_SIDE_M, unit: 'm', why: 'a card that shows a whole fan', advice: 'measure the card between the corners' });
  }
  checkRange({ name: 'photograph: longer side between the corners over the shorter', value: Math.max(...size_m) / Math.min(...size_m), low: 1, high: MOST_SIDES_RATIO, why: 'a strip shows too little bare paper beside the fan', advice: 'set the corners on a squarer part of the card' });
  const { width, height } = photo;
  if (corners === undefined) {
    const whole: CardCorners = [[0, height], [width, height], [width, 0], [0, 0]];
    checkSides(whole);
    return whole;
  }
  for (const [i, place] of corners.entries()) checkInside(place, `${CORNER_NAMES[i]} corner`, photo);
  checkOrder(corners);
  checkSides(corners);
  return corners;
}

function checkPicture({ width, height, rgba }: CardPhoto): void {
  const pixels = width * height;
  if (!(Number.isInteger(width) && Number.isInteger(height) && pixels > 0 && pixels <= MOST_PIXELS)) {
    throw new CrosscoatError('limit', `photograph: ${width} × ${height} pixels are not from 1 to ${MOST_PIXELS / 1e6} million; give a smaller copy`);
  }
  if (rgba.length !== 4 * pixels) {
    throw new CrosscoatError('limit', `photograph: ${rgba.length} bytes are not four for each of ${width} × ${height} pixels; decode the picture again`);
  }
}

function checkInside([x_px, y_px]: PixelPlace, name: string, { width, height }: CardPhoto): void {
  if (x_px >= 0 && x_px <= width && y_px >= 0 && y_px <= height) return;
  throw new CrosscoatError('geometry', `photograph: ${name} (${x_px}, ${y_px}) is outside the picture of ${width} × ${height} pixels; put it on the card's corner, or photograph the whole card`);
}

/** Going round as seen from lower left, every corner turns left; `y` grows downward, which is turned here. */
function checkOrder(corners: CardCorners): void {
  for (let i = 0; i < 4; i++) {
    const [before, here, after] = [corners[(i + 3) % 4], corners[i], corners[(i + 1) % 4]] as [PixelPlace, PixelPlace, PixelPlace];
    const [ax, ay, bx, by] = [here[0] - before[0], before[1] - here[1], after[0] - here[0], here[1] - after[1]];
    const turn_rad = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    if (turn_rad >= LEAST_ANGLE_RAD && turn_rad <= Math.PI - LEAST_ANGLE_RAD) continue;
    const fault = Math.abs(turn_rad) < LEAST_ANGLE_RAD || Math.abs(turn_rad) > Math.PI - LEAST_ANGLE_RAD
      ? 'lies nearly in a line with its neighbours'
      : 'is dented inward, crossed with a neighbour or out of order';
    throw new CrosscoatError('geometry', `photograph: the ${CORNER_NAMES[i]} corner (${here[0]}, ${here[1]}) ${fault}; put the corners on a rectangle of the card, as seen: ${CORNER_NAMES.join(', ')}`);
  }
}

function checkSides(corners: CardCorners): void {
  for (let i = 0; i < 4; i++) {
    const [here, after] = [corners[i], corners[(i + 1) % 4]] as [PixelPlace, PixelPlace];
    const side_px = Math.hypot(after[0] - here[0], after[1] - here[1]);
    if (side_px >= LEAST_SIDE_PX) continue;
    throw new CrosscoatError('geometry', `photograph: from the ${CORNER_NAMES[i]} to the ${CORNER_NAMES[(i + 1) % 4]} corner are ${side_px.toFixed(0)} pixels, fewer than ${LEAST_SIDE_PX} (too coarse to show a fan's edge); set the corners wider apart or take the picture from nearer`);
  }
}
