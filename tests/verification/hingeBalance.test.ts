import { describe, expect, it } from 'vitest';
import type { ShapeSpec } from '../../sim/job/schema.ts';
import { rasterisePanel } from '../../sim/panel/rasterisePanel.ts';
import { balanceAbout, filmCentre, type HingeLine, type PanelPlace } from '../../sim/scheme/balance.ts';
import { panelOf } from '../unit/panel/specs.ts';

const RECTANGLE: ShapeSpec = { rectangle_mm: [300, 800] };
/** Right angle at the origin: its centre is at a third of each leg. */
const TRIANGLE: ShapeSpec = { points_mm: [[0, 0], [610, 0], [0, 930]] };
const HINGE: HingeLine = [[0, 0], [0, 1]];

function centreOf(shape: ShapeSpec, cell_m: number, film?: (x: number, y: number) => number): PanelPlace {
  const panelGrid = rasterisePanel(panelOf(shape), cell_m);
  const { columns, rows } = panelGrid.grid;
  const map = Float64Array.from({ length: columns * rows }, (_, cell) => film?.(((cell % columns) + 0.5) * cell_m, (Math.floor(cell / columns) + 0.5) * cell_m) ?? 1);
  return filmCentre(panelGrid, film === undefined ? undefined : map)!;
}

function off(centre: PanelPlace, [x, y]: PanelPlace): number {
  return Math.hypot(centre[0] - x, centre[1] - y);
}

describe('centre of a film over the cells of a panel', () => {
  it.each([0.02, 0.01, 0.004])('is the middle of a rectangle, exactly, where cells of %d m fill it', (cell_m) => {
    // A cell's share is a 32-bit number.
    expect(off(centreOf(RECTANGLE, cell_m), [0.15, 0.4])).toBeLessThan(1e-7);
  });

  it('is a third of the legs of a right triangle, to the second order of the cell', () => {
    const exact: PanelPlace = [0.61 / 3, 0.93 / 3];
    // The legs cut cells by awkward shares, so the error is measured over several grids of each size and its root mean square taken.
    const error = (cell_m: number): number => {
      const tried = [0.97, 1, 1.03, 1.06, 1.09].map((factor) => off(centreOf(TRIANGLE, cell_m * factor), exact));
      return Math.sqrt(tried.reduce((sum, each) => sum + each * each, 0) / tried.length);
    };
    const [coarse, middle, fine] = [error(0.04), error(0.02), error(0.01)];
    const orders = [Math.log2(coarse / middle), Math.log2(middle / fine)];
    console.table({ 'error at 40 mm, mm': coarse * 1e3, '20 mm': middle * 1e3, '10 mm': fine * 1e3, order: orders[0], 'order, finer': orders[1] });
    expect(Math.min(...orders)).toBeGreaterThan(1.5);
    // At the 10 mm of a scheme it moves the moment by less than a thousandth.
    expect(fine / exact[0]).toBeLessThan(1e-3);
  });

  it('of a wedge of film on a rectangle is at two thirds of its width', () => {
    // Film in proportion to x over 0 to w: ∫x²/∫x = 2w/3; cells of side h err by h²/12 in the numerator: 2w/3 (1 - h²/(4w²)).
    const h = 0.01;
    expect(centreOf(RECTANGLE, h, (x) => x)[0]).toBeCloseTo(0.2 * (1 - h ** 2 / (4 * 0.3 ** 2)), 8);
  });

  it('is nowhere where no film lies', () => {
    expect(filmCentre(rasterisePanel(panelOf(RECTANGLE), 0.02), new Float32Array(15 * 40))).toBeNull();
  });
});

describe('moment about a hinge line', () => {
  const weight_kg = { value: 0.2, low: 0.1, high: 0.3 };

  it('of a rectangle on its own edge is weight × half its width, to the right of a line that goes up', () => {
    const balance = balanceAbout(HINGE, [{ weight_kg, centre_m: [0.15, 0.4] }])!;
    expect(balance).toMatchObject({ side: 'right' });
    expect(balance.arm_m).toBeCloseTo(-0.15, 15);
    expect(balance.moment_kg_m.value).toBeCloseTo(-0.03, 15);
    expect(balance.moment_kg_m.high).toBeCloseTo(-0.045, 15);
    expect(balance.foot_m[1]).toBeCloseTo(0.4, 15);
  });

  it('changes its sign with the order of the points, and not with where on the line they are', () => {
    const of = (line: HingeLine): number => balanceAbout(line, [{ weight_kg, centre_m: [0.15, 0.4] }])!.arm_m;
    expect(of([[0, 1], [0, 0]])).toBeCloseTo(0.15, 15);
    expect(of([[0, -7], [0, 3]])).toBeCloseTo(-0.15, 15);
  });

  it('of a slanted line is the distance square to it', () => {
    // The line y = x; (1, 0) is 1/√2 to its right.
    expect(balanceAbout([[0, 0], [2, 2]], [{ weight_kg, centre_m: [1, 0] }])!.arm_m).toBeCloseTo(-Math.SQRT1_2, 14);
  });

  it('is the sum of the moments of its weights, and nothing for a centre on the line or no weight', () => {
    const two = balanceAbout(HINGE, [{ weight_kg, centre_m: [0.1, 0] }, { weight_kg: { value: 0.6, low: 0.6, high: 0.6 }, centre_m: [0.3, 1] }])!;
    expect(two.moment_kg_m.value).toBeCloseTo(-(0.2 * 0.1 + 0.6 * 0.3), 14);
    expect(two.centre_m[0]).toBeCloseTo(0.25, 14);
    expect(balanceAbout(HINGE, [{ weight_kg, centre_m: [0, 9] }])!.side).toBe('on the line');
    expect(balanceAbout(HINGE, [{ weight_kg: { value: 0, low: 0, high: 0 }, centre_m: [1, 1] }])).toBeNull();
  });
});
