import { describe, expect, it } from 'vitest';
import { panelPlace } from '../../../sim/report/panelPlace.ts';

const BOARD = { width_m: 1, height_m: 0.5 };

describe('a place in words', () => {
  it.each([
    [0.5, 0.25, 'in the middle'],
    [0.21, 0.11, 'in the middle'],
    [0.79, 0.39, 'in the middle'],
    [0.19, 0.25, 'at the left edge'],
    [0.81, 0.25, 'at the right edge'],
    [0.5, 0.09, 'at the lower edge'],
    [0.5, 0.41, 'at the upper edge'],
    [0, 0, 'near the lower left corner'],
    [1, 0, 'near the lower right corner'],
    [0.1, 0.49, 'near the upper left corner'],
    [0.9, 0.45, 'near the upper right corner'],
    [-0.05, 0.25, 'at the left edge'],
    [1.05, 0.55, 'near the upper right corner'],
  ])('x %f, y %f m of a board of 1 × 0.5 m is %s', (x_m, y_m, words) => {
    expect(panelPlace([x_m, y_m], BOARD)).toBe(words);
  });

  it('is the mirrored words at the mirrored place', () => {
    const mirrored = (words: string) => words.replace(/left|right/, (side) => (side === 'left' ? 'right' : 'left'));
    for (let x_m = 0.03; x_m < 1; x_m += 0.06) {
      for (let y_m = 0.03; y_m < 0.5; y_m += 0.06) expect(panelPlace([1 - x_m, y_m], BOARD)).toBe(mirrored(panelPlace([x_m, y_m], BOARD)));
    }
  });
});
