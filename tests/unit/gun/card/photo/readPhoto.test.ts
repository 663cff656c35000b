import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../../../../sim/base/errors.ts';
import { fitFan } from '../../../../../sim/gun/card/fitFan.ts';
import type { CardPhoto, PhotoTask } from '../../../../../sim/gun/card/photo/cardPhoto.ts';
import { readPhoto } from '../../../../../sim/gun/card/photo/readPhoto.ts';
import { burstFilm, type Camera, type Card, photographed, PLAIN_CAMERA } from '../../../../helpers/cardPhotos.ts';

/** Half the usual picture: 400 × 300 pixels of card. */
const CAMERA: Camera = { ...PLAIN_CAMERA, width: 450, height: 350, corners: [[25, 325], [425, 325], [425, 25], [25, 25]], vignette: 0.2, noise: 0.01, seed: 5 };
const SIZE_M = [0.4, 0.3] as const;
const TASK: PhotoTask = { corners: CAMERA.corners, size_m: SIZE_M, kind: 'burst' };
const FAN = { width_m: 0.22, beta1: 2.5, peak: 0.55 };
const SPOT = burstFilm(FAN, 0.06);

function taken(film: Card['film'] = SPOT, camera: Partial<Camera> = {}): CardPhoto {
  return photographed({ size_m: SIZE_M, film }, { ...CAMERA, ...camera });
}

function doubleBeta(photo: CardPhoto) {
  const read = readPhoto(photo, TASK);
  const { beta1, width_m, imbalance } = fitFan(read.readings).fits.find(({ family }) => family === 'double-beta')!;
  return { beta1: beta1!, width_m, imbalance, said: read.warnings.map(({ text }) => text).join('; ') };
}

function refusal(ask: () => unknown): { readonly code: string; readonly message: string } {
  try {
    ask();
  } catch (thrown) {
    if (thrown instanceof CrosscoatError) return thrown;
    throw thrown;
  }
  throw new Error('was not refused');
}

const plain = taken();

describe('readPhoto', () => {
  it('gives readings from bare card to bare card, a map and no warning', () => {
    const { readings, map, warnings, fullFraction } = readPhoto(plain, TASK);
    expect(readings.place_m).toHaveLength(81);
    expect(readings.place_m[0]!).toBeLessThan(-0.11);
    expect(readings.place_m[80]!).toBeGreaterThan(0.11);
    expect([map.columns, map.rows, map.film.length]).toEqual([400, 300, 120_000]);
    expect([warnings, fullFraction]).toEqual([[], 0]);
  });

  it('answers the same twice', () => {
    expect(readPhoto(plain, TASK)).toEqual(readPhoto(plain, TASK));
  });

  it('takes the whole picture without corners', () => {
    // The card then lies in a picture of 450 × 400 mm, on a table that is no paper: only its own middle is read here.
    const card = photographed({ size_m: SIZE_M, film: SPOT }, { ...CAMERA, corners: [[0, 350], [450, 350], [450, 0], [0, 0]] });
    const { spot } = readPhoto(card, { size_m: SIZE_M, kind: 'burst' });
    expect(spot.width_m).toBeCloseTo(0.22, 2);
  });

  it('turns a lean about when the picture is mirrored', () => {
    const leaning = doubleBeta(taken((x_m, y_m) => SPOT(x_m, y_m) * (1 + (0.3 * x_m) / 0.11)));
    const mirrored = doubleBeta(taken((x_m, y_m) => SPOT(x_m, y_m) * (1 - (0.3 * x_m) / 0.11)));
    expect(leaning.imbalance).toBeCloseTo(0.3, 1);
    expect(mirrored.imbalance).toBeCloseTo(-0.3, 1);
  });

  it('reads through a strong colour cast, and says so', () => {
    const { beta1, width_m, said } = doubleBeta(taken(SPOT, { paper: [0.9, 0.5, 0.3] }));
    expect(Math.abs(beta1 - 2.5)).toBeLessThan(0.15);
    expect(Math.abs(width_m / 0.22 - 1)).toBeLessThan(0.02);
    expect(said).toMatch(/3\.0 times as light in red as in blue, a strong colour cast/);
  });

  it('takes another colour where one is clipped, and the one that tells most of a coloured film', () => {
    const clippedRed = doubleBeta(taken(SPOT, { paper: [1.4, 0.8, 0.7] }));
    expect(Math.abs(clippedRed.beta1 - 2.5)).toBeLessThan(0.15);
    const green = readPhoto(taken(SPOT, { strength: [0.05, 1, 0.2] }), TASK);
    // The mean of a hundred cells in the middle: noise of 2 % of a cell comes to 0.2 %.
    const middleOf = (film: Float32Array) => film.filter((_, cell) => Math.abs((cell % 400) - 200) <= 5 && Math.abs(cell / 400 - 150) <= 5).reduce((sum, value, _, { length }) => sum + value / length, 0);
    expect(Math.abs(middleOf(green.map.film) / middleOf(readPhoto(plain, TASK).map.film) - 1)).toBeLessThan(0.01);
  });

  it('reads a card with 40 specks of dirt', () => {
    const dirty = { ...plain, rgba: plain.rgba.slice() };
    for (let i = 0; i < 40; i++) {
      const [x, y] = [40 + ((i * 97) % 370), 40 + ((i * 53) % 270)];
      for (const [dx, dy] of [[0, 0], [1, 0], [0, 1], [1, 1]] as const) dirty.rgba.fill(20, 4 * ((y + dy) * 450 + x + dx), 4 * ((y + dy) * 450 + x + dx) + 3);
    }
    const { beta1, width_m } = doubleBeta(dirty);
    expect(Math.abs(beta1 - 2.5)).toBeLessThan(0.15);
    expect(Math.abs(width_m / 0.22 - 1)).toBeLessThan(0.02);
  });

  it('says that a spot is too dark, and how much of it', () => {
    const read = readPhoto(taken(burstFilm({ ...FAN, peak: 1.6 }, 0.06)), TASK);
    expect(read.fullFraction).toBeGreaterThan(0.1);
    expect(read.warnings.map(({ text }) => text).join()).toMatch(/of the spot is so dark that more film hardly shows/);
  });
});

describe('readPhoto refuses', () => {
  it.each([
    ['an overexposed picture', () => taken(SPOT, { paper: [1.4, 1.4, 1.4] }), 'range', /overexposed/],
    ['a spot that is black', () => taken(burstFilm({ ...FAN, beta1: 1.2, peak: 4 }, 0.1), { paper: [0.2, 0.2, 0.2], noise: 0 }), 'range', /as dark as a picture can hold/],
    ['a blank card', () => taken(() => 0), 'range', /no spot is told from the paper/],
    ['a fan off the card', () => taken(burstFilm({ ...FAN, middle_m: [0.13, 0] }, 0.06)), 'geometry', /the fan is off the card/],
    ['a spot too small to show a shape', () => taken((x_m, y_m) => (Math.hypot(x_m, y_m) < 0.008 ? 0.5 : 0)), 'geometry', /too small/],
    ['a card without bare paper', () => taken((x_m, y_m) => (Math.abs(x_m) < 0.19 && Math.abs(y_m) < 0.145 ? 0.5 : 0)), 'geometry', /lighter than what was taken for bare paper/],
  ] as const)('%s', (_, photo, code, message) => {
    const { code: found, message: said } = refusal(() => readPhoto(photo(), TASK));
    expect(found).toBe(code);
    expect(said).toMatch(message);
  });

  const [lowerLeft, lowerRight, upperRight, upperLeft] = CAMERA.corners;
  it.each([
    ['crossed corners', { corners: [lowerRight, lowerLeft, upperRight, upperLeft] }, 'geometry', /crossed/],
    ['corners the other way round', { corners: [lowerLeft, upperLeft, upperRight, lowerRight] }, 'geometry', /out of order/],
    ['corners in a line', { corners: [lowerLeft, lowerRight, [225, 175], upperLeft] }, 'geometry', /upper right corner .* in a line/],
    ['a corner that dents the rectangle', { corners: [lowerLeft, lowerRight, [180, 200], upperLeft] }, 'geometry', /upper right corner .* dented/],
    ['a corner outside', { corners: [[-1, 325], lowerRight, upperRight, upperLeft] }, 'geometry', /lower left corner \(-1, 325\) is outside/],
    ['a corner that is no number', { corners: [[NaN, 325], lowerRight, upperRight, upperLeft] }, 'geometry', /outside/],
    ['a tiny rectangle', { corners: [[200, 230], [240, 230], [240, 200], [200, 200]] }, 'geometry', /fewer than 50/],
    ['a size too small', { size_m: [0.01, 0.3] }, 'range', /width between the corners = 0\.01 m/],
    ['a size too large', { size_m: [0.4, 3] }, 'range', /height between the corners = 3 m/],
    ['a size that is no number', { size_m: [NaN, 0.3] }, 'range', /NaN/],
    ['a strip', { size_m: [0.5, 0.05] }, 'range', /longer side/],
  ] as const)('%s', (_, changed, code, message) => {
    const { code: found, message: said } = refusal(() => readPhoto(plain, { ...TASK, ...(changed as Partial<PhotoTask>) }));
    expect(found).toBe(code);
    expect(said).toMatch(message);
  });

  it('bytes that do not fit the picture, and a picture without pixels', () => {
    expect(refusal(() => readPhoto({ ...plain, width: 449 }, TASK)).code).toBe('limit');
    expect(refusal(() => readPhoto({ width: 0, height: 0, rgba: new Uint8Array(0) }, TASK)).message).toMatch(/0 × 0 pixels/);
  });
});
