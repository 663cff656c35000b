import { emptyDeposit } from '../../sim/deposit/emptyDeposit.ts';
import { layPath } from '../../sim/deposit/layPath.ts';
import { makeSpray } from '../../sim/gun/makeSpray.ts';
import type { Profile, SetUp } from '../../sim/gun/setUp.ts';
import { plainSetUp, strokesPath, wholeGrid } from './sprayCases.ts';

/** The eight fans whose overlap tables are published here. */
export const OVERLAP_FANS: Readonly<Record<string, Profile>> = {
  uniform: { family: 'flat-top', taper_m: 0 },
  triangular: { family: 'triangle' },
  'beta e=0.5': { family: 'double-beta', beta1: 1, beta2: 3 },
  parabolic: { family: 'parabola' },
  'beta e=2': { family: 'double-beta', beta1: 2.5, beta2: 3 },
  'beta e=2.5': { family: 'double-beta', beta1: 3, beta2: 3 },
  'cos²': { family: 'cosine-squared' },
  'Gauss w=4σ': { family: 'gaussian' },
};

/** Strokes side by side at these places across, laid on a strip four cells wide; the film across it, m. */
export function filmAcross(setUp: SetUp, centres_m: readonly number[], rows: number, cellSize_m: number, speed_m_s = 0.3): Float32Array {
  const panelGrid = wholeGrid(4, rows, cellSize_m);
  const deposit = emptyDeposit(panelGrid.grid);
  const { path, strokes } = strokesPath(centres_m.map((y_m) => ({ from: [-0.5, y_m], to: [0.5, y_m] })), speed_m_s);
  layPath({ deposit, panelGrid, path, strokes, spray: makeSpray(setUp) });
  return deposit.wet_m.filter((_, cell) => cell % 4 === 1);
}

export interface Evenness {
  readonly mean_m: number;
  readonly cv: number;
  readonly minOverMax: number;
}

export function evenness(film_m: ArrayLike<number>): Evenness {
  let [sum, low, high] = [0, Infinity, -Infinity];
  for (let i = 0; i < film_m.length; i++) {
    const film = film_m[i] as number;
    sum += film;
    low = Math.min(low, film);
    high = Math.max(high, film);
  }
  const mean_m = sum / film_m.length;
  let squares = 0;
  for (let i = 0; i < film_m.length; i++) squares += ((film_m[i] as number) - mean_m) ** 2;
  return { mean_m, cv: Math.sqrt(squares / film_m.length) / mean_m, minOverMax: low / high };
}

const CELL_M = 2e-3;
/** Fan width whose pitch is no simple multiple of a 2 mm cell at any tabled overlap (150.618… cells), so that cells fall on ever new phases of the pitch. */
export const OVERLAP_WIDTH_M = 150.618034 * CELL_M;

/** Evenness of a long coat on 2 mm cells, away from its edges, over a whole number of pitches (to one cell). */
export function coatEvenness(profile: Profile, overlap: number, pitches: number): Evenness {
  const setUp = plainSetUp({ width_m: OVERLAP_WIDTH_M, profile });
  const pitch_m = (1 - overlap) * OVERLAP_WIDTH_M;
  const margin = Math.ceil(2 * OVERLAP_WIDTH_M / pitch_m) + 1;
  const centres_m = Array.from({ length: pitches + 2 * margin }, (_, i) => (i - margin) * pitch_m + 0.3e-3);
  return evenness(filmAcross(setUp, centres_m, Math.round((pitches * pitch_m) / CELL_M), CELL_M));
}
