import { describe, expect, it } from 'vitest';
import { weightedSum } from '../../sim/base/sums.ts';
import type { PanelGrid } from '../../sim/panel/panelGrid.ts';
import { rasterisePanel } from '../../sim/panel/rasterisePanel.ts';
import { panelOf, turned } from '../unit/panel/specs.ts';

/** Each cover is a 32-bit number: rounded by at most 2^-25 of itself, shares below 1e-7 dropped. */
const COVER_ROUNDING = 1e-6;

const SQUARE = [[-150, -150], [150, -150], [150, 150], [-150, 150]] as const;
const ANGLES = [0, 1e-9, 0.01, 0.3, Math.PI / 8, Math.PI / 4, 1.2, Math.PI / 2];

/** Mean of a function at cell centres over the covered area. */
function meanOver({ grid, cover }: PanelGrid, at: (x: number, y: number) => number): number {
  const values = new Float64Array(cover.length);
  for (let row = 0, cell = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++, cell++) {
      values[cell] = at((column + 0.5) * grid.cellSize_m, (row + 0.5) * grid.cellSize_m);
    }
  }
  return weightedSum(values, cover) / weightedSum(cover, new Float64Array(cover.length).fill(1));
}

describe('covered area', () => {
  it.each(ANGLES)('of a square turned by %d rad is the square\'s, at every cell size', (angle) => {
    const panel = panelOf({ points_mm: turned(SQUARE, angle) });
    for (const cell_m of [0.01, 0.0037, 0.002, 0.001]) {
      expect(Math.abs(rasterisePanel(panel, cell_m).covered_m2 / 0.09 - 1)).toBeLessThan(COVER_ROUNDING);
    }
  });

  it('of a part with curves and holes is the polygon\'s', () => {
    const panel = panelOf(
      { path_mm: 'M 0 0 L 400 84 C 540 114 620 250 620 420 C 620 700 540 980 452 1136 C 408 1214 340 1250 250 1250 L 0 1250 Z' },
      [{ circle_mm: [150, 560, 92] }, { points_mm: turned([[300, 100], [420, 100], [420, 103]], 0.2) }],
    );
    for (const cell_m of [0.01, 0.0033, 0.002, 0.001]) {
      expect(Math.abs(rasterisePanel(panel, cell_m).covered_m2 / panel.area_m2 - 1)).toBeLessThan(COVER_ROUNDING);
    }
  });
});

describe('a mean over a slanted panel', () => {
  /**
   * The mean of x² over a square of side L turned by an angle, about its middle, is L²/12. Cell
   * centres stand for cells: inside, each cell errs by h²/12; at a cut cell the centre is off the
   * covered part's middle by up to h/2, with signs that cancel along an edge. So the mean falls
   * with the second order of the cell.
   */
  it.each([0.01, 0.3, Math.PI / 4])('errs by less than cell² for an angle of %d rad', (angle) => {
    const panel = panelOf({ points_mm: turned(SQUARE, angle) });
    const middle = panel.width_m / 2;
    for (const cell_m of [0.01, 0.005, 0.0025, 0.00125]) {
      const mean = meanOver(rasterisePanel(panel, cell_m), (x) => (x - middle) ** 2);
      expect(Math.abs(mean - 0.3 ** 2 / 12)).toBeLessThan(cell_m ** 2);
    }
  });

  it('is of second order in the cell: the error over five cell sizes falls with a slope near 2', () => {
    const panel = panelOf({ points_mm: turned(SQUARE, 0.3) });
    const middle = panel.width_m / 2;
    const cells = [0.016, 0.008, 0.004, 0.002, 0.001];
    // Shifting the cells' phase moves the error, so the worst over three near sizes is taken.
    const errors = cells.map((cell) =>
      Math.max(...[1, 0.93, 0.87].map((share) => Math.abs(meanOver(rasterisePanel(panel, cell * share), (x) => (x - middle) ** 2) - 0.0075))),
    );
    const order = Math.log2(errors[0]! / errors[errors.length - 1]!) / (cells.length - 1);
    console.log(`mean over a slanted square: errors ${errors.map((e) => e.toExponential(2)).join(', ')}; order ${order.toFixed(2)}`);
    expect(order).toBeGreaterThan(1.7);
  });
});
