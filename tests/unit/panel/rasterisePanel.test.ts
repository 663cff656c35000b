import { describe, expect, it } from 'vitest';
import type { CrosscoatError } from '../../../sim/base/errors.ts';
import { rasterisePanel } from '../../../sim/panel/rasterisePanel.ts';
import { thrownBy } from '../job/fixtures.ts';
import { panelOf } from './specs.ts';

describe('rasterisePanel', () => {
  it('covers a rectangle of whole cells wholly', () => {
    const { grid, cover, covered_m2 } = rasterisePanel(panelOf({ rectangle_mm: [600, 400] }), 0.002);
    expect(grid).toEqual({ columns: 300, rows: 200, cellSize_m: 0.002 });
    expect(cover.every((share) => share === 1)).toBe(true);
    expect(covered_m2).toBeCloseTo(0.24, 12);
  });

  it('covers the last column and row in part', () => {
    const { grid, cover } = rasterisePanel(panelOf({ rectangle_mm: [5, 3] }), 0.002);
    expect(grid).toMatchObject({ columns: 3, rows: 2 });
    expect([...cover].map((share) => Number(share.toFixed(6)))).toEqual([1, 1, 0.5, 0.5, 0.5, 0.25]);
  });

  it('cuts a triangle\'s cells exactly', () => {
    // Under the line from (0, 0) to (4, 2) mm, 2 mm cells: the left cell holds 1 mm², the right one 3 mm².
    const { cover } = rasterisePanel(panelOf({ points_mm: [[0, 0], [4, 0], [4, 2]] }), 0.002);
    expect(cover[0]).toBeCloseTo(0.25, 7);
    expect(cover[1]).toBeCloseTo(0.75, 7);
  });

  it('leaves holes bare, and cells outside at zero', () => {
    const { grid, cover } = rasterisePanel(
      panelOf({ points_mm: [[0, 0], [100, 0], [100, 100]] }, [{ points_mm: [[70, 20], [80, 20], [80, 30], [70, 30]] }]),
      0.002,
    );
    expect(cover[12 * grid.columns + 37]).toBe(0);
    expect(cover[40 * grid.columns + 3]).toBe(0);
    expect(cover[5 * grid.columns + 40]).toBe(1);
  });

  it('names a cell size that fits when there would be too many cells', () => {
    const panel = panelOf({ rectangle_mm: [19000, 15000] });
    const error = thrownBy(() => rasterisePanel(panel, 0.001)) as CrosscoatError;
    expect(error.code).toBe('limit');
    expect(error.message).toContain('285 million cells');
    const [, enough_mm] = /give a cell of ([\d.]+) mm/.exec(error.message)!;
    expect(Number(enough_mm)).toBeLessThan(3.5);
    expect(rasterisePanel(panel, Number(enough_mm) / 1000).cover.length).toBeLessThanOrEqual(25e6);
  });

  it.each([0, -1, NaN, Infinity])('refuses a cell of %d', (cell) => {
    expect(() => rasterisePanel(panelOf({ rectangle_mm: [600, 400] }), cell)).toThrow(`rasterisePanel: cellSize_m = ${cell} m is not from`);
  });
});
