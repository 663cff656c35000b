import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../../sim/base/noise.ts';
import { mendSpecks } from '../../../../../sim/gun/card/photo/specks.ts';

const GRID = { columns: 120, rows: 80, cellSize_m: 0.001 };

function film(noise: number): Float32Array {
  const random = seededRandom(9);
  return Float32Array.from({ length: GRID.columns * GRID.rows }, (_, i) => {
    const [x, y] = [(i % GRID.columns) - 60, Math.floor(i / GRID.columns) - 40];
    return 0.7 * Math.max(0, 1 - (x / 50) ** 2 - (y / 25) ** 2) ** 2 + noise * (random() - 0.5);
  });
}

describe('mendSpecks', () => {
  it('takes dark specks of 3 × 3 cells and single bright ones out', () => {
    const dirty = film(0.01);
    for (const [column, row] of [[60, 40], [30, 42], [10, 10], [85, 30]] as const) {
      for (let r = -1; r <= 1; r++) for (let c = -1; c <= 1; c++) dirty[(row + r) * GRID.columns + column + c] = 1.3;
    }
    dirty[45 * GRID.columns + 70] = -0.4;
    const { cells, speckFraction } = mendSpecks(dirty, GRID);
    const clean = film(0);
    const worst = cells.reduce((most, value, i) => Math.max(most, Math.abs(value - clean[i]!)), 0);
    // What is put in is the middle of 9 × 9 cells, in which the film itself bends by up to 0.7 · 4 (4/25)² / 2.
    expect(worst).toBeLessThan(0.04);
    expect(speckFraction).toBeCloseTo(37 / dirty.length, 9);
  });

  it('leaves a grainy film as it is', () => {
    const grainy = film(0.2);
    expect(mendSpecks(grainy, GRID).speckFraction).toBe(0);
    expect(mendSpecks(grainy, GRID).cells).toEqual(grainy);
  });
});
