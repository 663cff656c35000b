import type { Film } from '../../../sim/film/film.ts';
import type { PanelGrid } from '../../../sim/panel/panelGrid.ts';
import type { Target } from '../../../sim/verdict/target.ts';
import { LIFE_LIMITS } from '../../helpers/lifeLimits.ts';

/** A wet target of 50 µm with limits 40 and 60 µm, holiday below 12.5 µm, dry above 10 %. */
export const TARGET: Target = {
  film: 'wet',
  thickness_m: 50e-6,
  minFraction: 0.8,
  maxFraction: 1.2,
  holidayFraction: 0.25,
  dryFraction: 0.1,
  life: LIFE_LIMITS,
};

/** Wet film of each letter of a hand-drawn panel, µm. */
const LETTERS: Readonly<Record<string, number>> = { '.': 50, h: 5, t: 30, T: 20, H: 80, X: 120 };

/** A film drawn in letters, the first line on top, with its fully covered panel. */
export function drawnFilm(
  lines: readonly string[],
  cell_m: number,
): { film: Film; panelGrid: PanelGrid } {
  const rows = lines.length;
  const columns = (lines[0] as string).length;
  const count = rows * columns;
  const wet_m = new Float32Array(count);
  lines.forEach((line, i) => {
    [...line].forEach((letter, column) => {
      wet_m[(rows - 1 - i) * columns + column] = (LETTERS[letter] as number) * 1e-6;
    });
  });
  const grid = { columns, rows, cellSize_m: cell_m };
  return {
    film: {
      grid,
      time_s: 0,
      wet_m,
      dry_m: wet_m.map((wet) => wet / 10),
      arrivedDry_m: new Float32Array(count),
      passes: new Uint16Array(count),
    },
    panelGrid: { grid, cover: new Float32Array(count).fill(1), covered_m2: count * cell_m * cell_m },
  };
}
