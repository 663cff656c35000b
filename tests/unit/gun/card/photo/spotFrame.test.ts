import { describe, expect, it } from 'vitest';
import type { FilmMap } from '../../../../../sim/gun/card/photo/cardPhoto.ts';
import { levelWidth } from '../../../../../sim/gun/card/photo/levelWidth.ts';
import { boxOf, filmMoments, filmSums } from '../../../../../sim/gun/card/photo/spotFrame.ts';

const CELL_M = 0.001;

function mapOf(film: (x_m: number, y_m: number) => number, columns = 300, rows = 200): FilmMap {
  return { columns, rows, cellSize_m: CELL_M, film: Float32Array.from({ length: columns * rows }, (_, i) => film(((i % columns) + 0.5) * CELL_M, (Math.floor(i / columns) + 0.5) * CELL_M)) };
}

const all = ({ film }: FilmMap) => new Uint8Array(film.length).fill(1);

describe('filmSums', () => {
  for (const angle_deg of [0, 7, 30, 45, 90]) {
    it(`makes no ripple of an even film turned ${angle_deg}°`, () => {
      const map = mapOf(() => 2);
      const frame = { middleX_m: 0.15, middleY_m: 0.1, angle_rad: (angle_deg * Math.PI) / 180 };
      const { film, step_m } = filmSums(map, all(map), frame, { low: [-0.08, -0.0205], high: [0.08, 0.0205] }, 41, 'fading');
      for (const sum of film) expect(sum / (2 * step_m * 0.041)).toBeCloseTo(1, 6);
    });
  }

  it('counts film off the card as none', () => {
    const map = mapOf(() => 1);
    const frame = { middleX_m: 0.15, middleY_m: 0.2, angle_rad: 0 };
    const { film, step_m } = filmSums(map, all(map), frame, { low: [-0.05, -0.02], high: [0.05, 0.02] }, 11, 'fading');
    for (const sum of film) expect(sum / (step_m * 0.04)).toBeCloseTo(0.5, 6);
  });
});

describe('filmMoments and boxOf', () => {
  it('give the middle, variances and box of a turned rectangle', () => {
    const [cos, sin] = [Math.cos(0.4), Math.sin(0.4)];
    const map = mapOf((x_m, y_m) => {
      const [x, y] = [(x_m - 0.14) * cos + (y_m - 0.09) * sin, (y_m - 0.09) * cos - (x_m - 0.14) * sin];
      return Math.abs(x) < 0.06 && Math.abs(y) < 0.02 ? 1 : 0;
    });
    const { x_m, y_m, xx_m2, xy_m2, yy_m2 } = filmMoments(map, all(map));
    expect(x_m).toBeCloseTo(0.14, 4);
    expect(y_m).toBeCloseTo(0.09, 4);
    // A rectangle's variance is its side²/12; a cell at the rim is in or out, which is worth about a cell in a hundred.
    expect(xx_m2 + yy_m2).toBeCloseTo((0.12 ** 2 + 0.04 ** 2) / 12, 5);
    expect(Math.atan2(2 * xy_m2, xx_m2 - yy_m2) / 2).toBeCloseTo(0.4, 2);
    const box = boxOf(map, map.film.map((value) => value) as unknown as Uint8Array, { middleX_m: 0.14, middleY_m: 0.09, angle_rad: 0.4 });
    expect(box.high[0]).toBeGreaterThan(0.0595);
    expect(box.high[0]).toBeLessThan(0.0605 + CELL_M / 2);
  });
});

describe('levelWidth', () => {
  for (const exponent of [0.6, 1, 2.5, 3.5, 7]) {
    it(`gives the width and exponent of (1-u²)^${exponent} again`, () => {
      const count = 2001;
      const film = Float64Array.from({ length: count }, (_, i) => Math.max(0, 1 - ((2.4 * i) / (count - 1) - 1.2) ** 2) ** exponent);
      const found = levelWidth(film, 0.24 / (count - 1));
      expect(found.width_m).toBeCloseTo(0.2, 4);
      expect(found.exponent).toBeCloseTo(exponent, 2);
    });
  }
});
