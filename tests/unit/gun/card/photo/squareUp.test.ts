import { describe, expect, it } from 'vitest';
import type { CardCorners, CardPhoto } from '../../../../../sim/gun/card/photo/cardPhoto.ts';
import { homography } from '../../../../../sim/gun/card/photo/homography.ts';
import { linearLight, photoPlace, squareUp } from '../../../../../sim/gun/card/photo/squareUp.ts';

const ASKEW: CardCorners = [[12, 180], [250, 200], [230, 20], [30, 5]];

function picture(width: number, height: number, value: (x: number, y: number) => number): CardPhoto {
  const rgba = new Uint8ClampedArray(4 * width * height);
  for (let i = 0; i < rgba.length; i++) rgba[i] = value((i >> 2) % width, Math.floor((i >> 2) / width));
  return { width, height, rgba };
}

function whole({ width, height }: CardPhoto): CardCorners {
  return [[0, height], [width, height], [width, 0], [0, 0]];
}

describe('homography', () => {
  it('takes the unit square to its corners', () => {
    const [a, b, c, d, e, f, g, h] = homography(ASKEW);
    for (const [i, [u, v]] of ([[0, 0], [1, 0], [1, 1], [0, 1]] as const).entries()) {
      const scale = g * u + h * v + 1;
      expect((a * u + b * v + c) / scale).toBeCloseTo(ASKEW[i]![0], 9);
      expect((d * u + e * v + f) / scale).toBeCloseTo(ASKEW[i]![1], 9);
    }
  });

  it('puts the middle where the diagonals cross, as every perspective does', () => {
    const [a, b, c, d, e, f, g, h] = homography(ASKEW);
    const scale = (g + h) / 2 + 1;
    const [x, y] = [((a + b) / 2 + c) / scale, ((d + e) / 2 + f) / scale];
    const offDiagonal = ([fromX, fromY]: readonly [number, number], [toX, toY]: readonly [number, number]) => (toX - fromX) * (y - fromY) - (toY - fromY) * (x - fromX);
    expect(offDiagonal(ASKEW[0], ASKEW[2])).toBeCloseTo(0, 6);
    expect(offDiagonal(ASKEW[1], ASKEW[3])).toBeCloseTo(0, 6);
  });
});

describe('squareUp', () => {
  it('keeps rows from below and columns from the left, and square cells', () => {
    // The lower half is white, the left quarter black.
    const photo = picture(200, 100, (x, y) => (x < 50 ? 0 : y >= 50 ? 255 : 128));
    const card = squareUp(photo, whole(photo), [0.4, 0.2], 100);
    expect([card.columns, card.rows]).toEqual([100, 50]);
    expect(card.cellSize_m).toBeCloseTo(0.004, 12);
    const [{ light, white, black }] = card.channels;
    expect([light[0], light[60], white[60], black[0]]).toEqual([0, 1, 1, 1]);
    expect(light[49 * 100 + 60]).toBeCloseTo(linearLight()[128]!, 6);
  });

  it('averages light, not coded values', () => {
    const photo = picture(200, 200, (x) => (x % 2 === 0 ? 255 : 0));
    const card = squareUp(photo, whole(photo), [0.3, 0.3], 50);
    for (const light of card.channels[1].light) expect(light).toBeCloseTo(0.5, 6);
  });

  it('never makes cells finer than pixels, and leaves less than a cell out at each end', () => {
    const photo = picture(120, 90, () => 200);
    const card = squareUp(photo, whole(photo), [0.4, 0.297]);
    expect([card.columns, card.rows]).toEqual([120, 89]);
    const [, low] = photoPlace(card.view, 0, 0);
    const [, high] = photoPlace(card.view, 0, 89);
    expect(low).toBeCloseTo(-high, 9);
  });

  it('decodes sRGB: black, mid grey, white, and no step where its two parts meet', () => {
    const linear = linearLight();
    expect([linear[0], linear[255]]).toEqual([0, 1]);
    // 0.5 of the light is coded as 1.055 · 0.5^(1/2.4) - 0.055 = 0.7354, byte 187.5.
    expect((linear[187]! + linear[188]!) / 2).toBeCloseTo(0.5, 3);
    const steps = [...linear].slice(1).map((value, i) => value - linear[i]!);
    for (let i = 1; i < steps.length; i++) expect(steps[i]).toBeGreaterThanOrEqual(steps[i - 1]! - 1e-5);
  });
});
