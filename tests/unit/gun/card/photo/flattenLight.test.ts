import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../../sim/base/noise.ts';
import { flattenLight } from '../../../../../sim/gun/card/photo/flattenLight.ts';
import { fitLight, lightAt } from '../../../../../sim/gun/card/photo/lightSurface.ts';

const BLOCKS = { columns: 50, rows: 38 };
const COUNT = BLOCKS.columns * BLOCKS.rows;
/** Blocks that fill the picture: 4 by 3, half its diagonal 1. */
const PLACES = {
  x: Float64Array.from({ length: COUNT }, (_, i) => 0.8 * ((2 * (i % BLOCKS.columns) + 1) / BLOCKS.columns - 1)),
  y: Float64Array.from({ length: COUNT }, (_, i) => 0.6 * ((2 * Math.floor(i / BLOCKS.columns) + 1) / BLOCKS.rows - 1)),
};

/** cos⁴ fall-off that leaves 70 % at the corners, and a lamp to one side. */
function light(x: number, y: number): number {
  return Math.log(0.8) - 2 * Math.log(1 + (x * x + y * y) * (0.7 ** -0.5 - 1)) + 0.1 * x - 0.05 * y;
}

function seen(film: (x: number, y: number) => number, noise = 0.002): Float64Array {
  const random = seededRandom(4);
  return PLACES.x.map((x, i) => light(x, PLACES.y[i]!) - film(x, PLACES.y[i]!) + noise * (random() + random() + random() - 1.5) * 2);
}

/** Worst error of the light, natural logarithm. */
function worst(surface: readonly number[]): number {
  return PLACES.x.reduce((most, x, i) => Math.max(most, Math.abs(lightAt(surface, x, PLACES.y[i]!) - light(x, PLACES.y[i]!))), 0);
}

describe('fitLight', () => {
  it('finds a surface of its own kind again', () => {
    const truth = [-0.2, 0.1, -0.05, -0.3, 0.02, -0.25, 0.08];
    const found = fitLight(PLACES, PLACES.x.map((x, i) => lightAt(truth, x, PLACES.y[i]!)), new Float64Array(COUNT).fill(1));
    for (const [i, value] of found.entries()) expect(value).toBeCloseTo(truth[i]!, 9);
  });
});

describe('flattenLight', () => {
  // A surface's worst error on bare paper is what cos⁴ has beyond the fourth order, about 0.001; film adds to it under the spot.
  const WITHIN = 0.005;

  it('finds the light of a bare card', () => {
    const { surface, isBare } = flattenLight(seen(() => 0), PLACES, BLOCKS, 'all');
    expect(worst(surface)).toBeLessThan(WITHIN);
    expect(isBare.reduce((sum, bare) => sum + bare, 0) / COUNT).toBeGreaterThan(0.95);
  });

  it('finds it under a spot on 60 % of the card', () => {
    // An ellipse of half axes 0.7 and 0.52 covers 60 % of 1.6 × 1.2.
    const film = (x: number, y: number) => 1.6 * Math.max(0, 1 - (x / 0.7) ** 2 - (y / 0.52) ** 2);
    const { surface, darkness } = flattenLight(seen(film), PLACES, BLOCKS, 'all');
    expect(worst(surface)).toBeLessThan(WITHIN);
    expect(Math.max(...darkness)).toBeCloseTo(1.6, 1);
  });

  it('finds it beside a stroke that runs off the card', () => {
    const film = (_: number, y: number) => Math.max(0, 1 - (y / 0.36) ** 2);
    expect(worst(flattenLight(seen(film), PLACES, BLOCKS, 'beside-x').surface)).toBeLessThan(WITHIN);
  });

  it('is not pulled down by film that leaves the card on both sides', () => {
    // A third of the left edge and half of the right one.
    const film = (x: number, y: number) => (Math.abs(y) < 0.25 + 0.06 * x ? 0.8 : 0);
    expect(worst(flattenLight(seen(film), PLACES, BLOCKS, 'all').surface)).toBeLessThan(WITHIN);
  });

  it('is not pulled up by glare', () => {
    const glare = (x: number, y: number) => (Math.hypot(x - 0.4, y - 0.3) < 0.08 ? -0.3 : 0);
    expect(worst(flattenLight(seen(glare), PLACES, BLOCKS, 'all').surface)).toBeLessThan(WITHIN);
  });

  it('refuses a card with hardly any bare paper, and one whose film is taken for paper', () => {
    const block = (margin: number) => (x: number, y: number) => (Math.abs(x) < 0.8 - margin && Math.abs(y) < 0.6 - margin ? 1 : 0);
    expect(() => flattenLight(seen(block(0.07)), PLACES, BLOCKS, 'all')).toThrow(/bare paper, less than 15 %/);
    expect(() => flattenLight(seen(block(0.03)), PLACES, BLOCKS, 'all')).toThrow(/9 % of the card is lighter than what was taken for bare paper/);
  });
});
