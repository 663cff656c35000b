import type { Film } from '../../../sim/film/film.ts';
import type { PanelGrid } from '../../../sim/panel/panelGrid.ts';
import type { Target } from '../../../sim/verdict/target.ts';
import { LIFE_LIMITS } from '../../helpers/lifeLimits.ts';

/** A film of the given wet thicknesses, µm, one fifth solids. */
export function filmOf(columns: number, rows: number, wet_um: readonly number[], passes: readonly number[] = wet_um.map(() => 1)): Film {
  const wet_m = Float32Array.from(wet_um, (value) => value * 1e-6);
  return {
    grid: { columns, rows, cellSize_m: 0.002 },
    time_s: 0,
    wet_m,
    dry_m: wet_m.map((value) => value / 5),
    arrivedDry_m: wet_m.map((value) => value / 10),
    passes: Uint16Array.from(passes),
  };
}

export function gridOf(film: Film, cover: readonly number[] = [...film.wet_m].map(() => 1)): PanelGrid {
  const cell_m2 = film.grid.cellSize_m ** 2;
  return { grid: film.grid, cover: Float32Array.from(cover), covered_m2: cover.reduce((sum, share) => sum + share, 0) * cell_m2 };
}

export const TARGET: Target = {
  film: 'wet',
  thickness_m: 100e-6,
  minFraction: 0.8,
  maxFraction: 1.2,
  holidayFraction: 0.25,
  dryFraction: 0.1,
  life: LIFE_LIMITS,
};

export const MICROMETRE = { name: 'µm', metres: 1e-6 };
