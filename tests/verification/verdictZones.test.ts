import { describe, expect, it } from 'vitest';
import type { Film } from '../../sim/film/film.ts';
import type { PanelGrid } from '../../sim/panel/panelGrid.ts';
import { filmFigures } from '../../sim/verdict/figures.ts';
import { findZones } from '../../sim/verdict/zones.ts';
import { TARGET } from '../unit/verdict/handFilm.ts';

const WIDTH_m = 0.4;
const HEIGHT_m = 0.3;

/** A panel of 400 × 300 mm under one stroke of profile (1 - u²)^2.5, its peak 80 µm, 317 mm wide. */
function strokeFilm(cell_m: number): { film: Film; panelGrid: PanelGrid } {
  const columns = Math.round(WIDTH_m / cell_m);
  const rows = Math.round(HEIGHT_m / cell_m);
  const wet_m = new Float32Array(columns * rows).map((_, cell) => {
    const u = (((cell % columns) + 0.5) * cell_m - 0.2) / 0.1585;
    return Math.abs(u) < 1 ? 80e-6 * (1 - u * u) ** 2.5 : 0;
  });
  const grid = { columns, rows, cellSize_m: cell_m };
  const film = { grid, time_s: 0, wet_m, dry_m: wet_m, arrivedDry_m: new Float32Array(wet_m.length), passes: new Uint16Array(wet_m.length) };
  return { film, panelGrid: { grid, cover: new Float32Array(wet_m.length).fill(1), covered_m2: WIDTH_m * HEIGHT_m } };
}

/** Half width at which the stroke passes a film, m. */
function halfWidthAt_m(film_m: number): number {
  return 0.1585 * Math.sqrt(1 - (film_m / 80e-6) ** 0.4);
}

describe('zones of a film with a closed form', () => {
  for (const cell_m of [0.01, 0.005, 0.0025]) {
    it(`have the exact areas to half a cell at each side, at ${cell_m * 1000} mm`, () => {
      const { film, panelGrid } = strokeFilm(cell_m);
      const { zones } = findZones(film, panelGrid, TARGET);
      const area = (kind: string) => zones.filter((z) => z.kind === kind).reduce((sum, z) => sum + z.area_m2, 0);
      // A cell counts by its centre: each straight side is off by at most half a cell.
      const perSide = (cell_m / 2) * HEIGHT_m * (1 + 1e-6);
      const heavy = 2 * halfWidthAt_m(60e-6) * HEIGHT_m;
      const thin = 2 * (halfWidthAt_m(12.5e-6) - halfWidthAt_m(40e-6)) * HEIGHT_m;
      const holiday = (WIDTH_m - 2 * halfWidthAt_m(12.5e-6)) * HEIGHT_m;
      expect(Math.abs(area('heavy-spot') - heavy)).toBeLessThanOrEqual(2 * perSide);
      expect(Math.abs(area('thin-lap') - thin)).toBeLessThanOrEqual(4 * perSide);
      expect(Math.abs(area('holiday') - holiday)).toBeLessThanOrEqual(2 * perSide);
    });
  }

  it('have a mean that converges with the cell squared or faster', () => {
    // ∫(1-u²)^2.5 du over -1..1 = B(1/2, 7/2) = 0.9817477 (gamma function).
    const exact = (80e-6 * 0.1585 * 0.9817477042468103) / WIDTH_m;
    const errors = [0.02, 0.01, 0.005].map((cell_m) => {
      const { film, panelGrid } = strokeFilm(cell_m);
      return Math.abs(filmFigures(film.wet_m, panelGrid).mean_m / exact - 1);
    });
    // The midpoint sum of a function with 2 smooth derivatives falls at least as the cell squared,
    // down to the rounding of the 32-bit film (6e-8 a cell).
    expect(errors[1]).toBeLessThanOrEqual((errors[0] as number) / 3 + 6e-8);
    expect(errors[2]).toBeLessThanOrEqual((errors[1] as number) / 3 + 6e-8);
    expect(errors[2]).toBeLessThan(1e-5);
  });
});
