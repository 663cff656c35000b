import { describe, expect, it } from 'vitest';
import { advanceFilm } from '../../sim/film/life/advance.ts';
import type { LivingFilm } from '../../sim/film/life/state.ts';
import { flowBlock } from '../../sim/film/flow/flowBlock.ts';
import { filmOf, plainLaw, volumeOf } from '../helpers/filmCases.ts';
import { testPublished } from '../helpers/publishedRow.ts';

/** The model's gravity; the published rows are for 9.81. */
const G = 9.80665;
const ROWS_G = 9.81;

/** One column of cells of 4 m, so that what leaves a cell is a share of it too small to change the flux. */
function stepped(wet_m: number, change: Parameters<typeof plainLaw>[0], solids = 0.125): { readonly flux_m2_s: number; readonly mean_m_s: number; readonly film: LivingFilm } {
  const law = plainLaw({ density_kg_m3: 1000, viscosity: () => 0.1, ...change });
  const film = filmOf(law, 1, 3, 4, () => wet_m, solids);
  const step_s = 1;
  const before = film.solids_m[2]! + film.fast_m[2]! + film.slow_m[2]!;
  flowBlock(film, law, { lowColumn: 0, highColumn: 1, lowRow: 0, highRow: 3 }, step_s);
  const after = film.solids_m[2]! + film.fast_m[2]! + film.slow_m[2]!;
  return { flux_m2_s: ((before - after) * 4) / step_s, mean_m_s: film.run_m[2]! / step_s, film };
}

const WALL = 'textbook film on a wall: flux ρ g h³/(3 µ), mean speed ρ g h²/(3 µ) (identity)';

describe('film on a wall', () => {
  testPublished([
    { source: WALL, quantity: 'flux of 100 µm, 0.1 Pa s, ρ 1000, m²/s', expected: (3.27e-8 * G) / ROWS_G, tolerance: 3.27e-8 * 2e-6, why: 'the row times 9.80665/9.81; a step moves 1e-8 of the cell', ours: () => stepped(100e-6, {}).flux_m2_s },
    { source: WALL, quantity: 'mean speed there, m/s', expected: (3.27e-4 * G) / ROWS_G, tolerance: 3.27e-4 * 1e-6, why: 'single precision of the distance run', ours: () => stepped(100e-6, {}).mean_m_s },
    { source: WALL, quantity: 'surface speed of 50 µm (3/2 of the mean), m/s', expected: (1.22625e-4 * G) / ROWS_G, tolerance: 1.22625e-4 * 1e-6, why: 'single precision', ours: () => 1.5 * stepped(50e-6, {}).mean_m_s },
    { source: WALL, quantity: 'surface speed of 200 µm, m/s', expected: (1.962e-3 * G) / ROWS_G, tolerance: 1.962e-3 * 1e-6, why: 'single precision', ours: () => 1.5 * stepped(200e-6, {}).mean_m_s },
    { source: `${WALL}, in cgs: ρ 1.2, 1 P, 0.01 cm`, quantity: 'surface speed, cm/s', expected: (0.05886 * G) / 981e-2, tolerance: 0.05886 * 1e-6, why: 'single precision', ours: () => 150 * stepped(100e-6, { density_kg_m3: 1200 }).mean_m_s },
    { source: 'g sin α (identity)', quantity: 'flux at 30° from level over that upright', expected: 0.5, tolerance: 1e-6, why: 'sin 30°', ours: () => stepped(100e-6, { tilt_rad: Math.PI / 6 }).flux_m2_s / stepped(100e-6, {}).flux_m2_s },
    { source: 'doubling a film multiplies its flux by 8 (coatings notes, common practice)', quantity: 'flux of 200 over 100 µm', expected: 8, tolerance: 1e-4, why: 'the larger step moves 8e-8 of the cell', ours: () => stepped(200e-6, {}).flux_m2_s / stepped(100e-6, {}).flux_m2_s },
    {
      source: 'Bingham film on a wall: ρ g h_y² (3h - h_y)/(6 µ), h_y = h - τ/(ρ g) (identity)',
      quantity: 'flux of 100 µm that yields at 0.5 Pa, m²/s',
      expected: (1000 * G * (100e-6 - 0.5 / (1000 * G)) ** 2 * (300e-6 - (100e-6 - 0.5 / (1000 * G)))) / 0.6,
      tolerance: 1e-14,
      why: 'a step moves 1e-8 of the cell',
      ours: () => stepped(100e-6, { yieldStress_Pa: 0.5 }).flux_m2_s,
    },
  ]);

  const HELD: readonly (readonly [number, number])[] = [[0.25, 25.48], [0.5, 50.97], [1, 101.94], [2, 203.87]];
  it.each(HELD)('a film that yields at %f Pa holds up to %f µm (τ/(ρ g), for g 9.81)', (yieldStress_Pa, held_um) => {
    const held_m = held_um * 1e-6 * (ROWS_G / G);
    // The row is printed to 0.005 µm.
    expect(stepped(held_m - 0.01e-6, { yieldStress_Pa }).flux_m2_s).toBe(0);
    expect(stepped(held_m + 0.1e-6, { yieldStress_Pa }).film.run_m[2]).toBeGreaterThan(0);
  });
});

/**
 * Run of a film that dries at a constant rate E while its viscosity grows as exp(k (φ - φ0)), stopped at
 * φ 0.6: the model's flux, integrated in a thousand steps. The model's own evaporation is not constant,
 * so the rate is imposed here; viscosity and flux are the model's.
 */
function drySag_m(wet_m: number, rate_m_s: number): number {
  const law = plainLaw({ viscosity: (solids) => 0.03 * Math.exp(20.0375 * (solids - 0.125)) });
  const solids_m = 0.125 * wet_m;
  const end_s = (wet_m - solids_m / 0.6) / rate_m_s;
  const steps = 1000;
  let run_m = 0;
  for (let i = 0; i < steps; i++) {
    const now_m = wet_m - (rate_m_s * end_s * (i + 0.5)) / steps;
    const film = filmOf(law, 1, 2, 100, () => now_m, solids_m / now_m);
    flowBlock(film, law, { lowColumn: 0, highColumn: 1, lowRow: 0, highRow: 2 }, end_s / steps);
    run_m += film.run_m[1]!;
  }
  return run_m;
}

describe('a film that dries as it runs', () => {
  const rows: readonly (readonly [number, number, number])[] = [
    [20, 0.12, 1.097], [30, 0.12, 3.703], [40, 0.12, 8.777], [60, 0.12, 29.62],
    [20, 0.066, 1.995], [30, 0.066, 6.733], [40, 0.066, 15.96], [60, 0.066, 53.85],
  ];
  testPublished(
    rows.map(([wet_um, rate_um_s, expected]) => ({
      source: 'reference computation: mean speed ρ g h²/(3 µ(φ)), φ0 0.125, k 20.0375, µ0 0.03 Pa s, ρ 900, constant loss, stopped at φ 0.6',
      quantity: `run of ${wet_um} µm losing ${rate_um_s} µm/s, mm`,
      expected,
      // Four printed figures, g 9.80665 for 9.81 (0.03 %), and the viscosity read at the nearest of 4096 nodes (0.25 % at most, both ways).
      tolerance: 0.002 * expected,
      why: 'printed figures, gravity and the table of viscosity',
      ours: () => 1000 * drySag_m(wet_um * 1e-6, rate_um_s * 1e-6),
    })),
  );

  it('scales as h³/E exactly (identity)', () => {
    const one = drySag_m(30e-6, 0.12e-6);
    // Single precision of the distance summed.
    expect(drySag_m(60e-6, 0.12e-6) / one).toBeCloseTo(8, 4);
    expect(drySag_m(30e-6, 0.06e-6) / one).toBeCloseTo(2, 4);
  });
});

const HUPPERT = 'H.E. Huppert, Nature 300, 427-429, 1982 (formula from memory, derived again): x_N = (9 A² g t/(4 ν))^(1/3)';
const AREA_M2 = 1e-5;
const NU_M2_S = 1e-4;
const STARTED_S = 0.5;

const frontAt = (time_s: number, area_m2 = AREA_M2) => ((9 * area_m2 ** 2 * G * time_s) / (4 * NU_M2_S)) ** (1 / 3);

/** The similarity profile at `STARTED_S`, each cell with its own mean, then the model's flow. Two columns, so that the tiles are met. */
function huppertFilm(cell_m: number, area_m2 = AREA_M2): { film: LivingFilm; law: ReturnType<typeof plainLaw> } {
  const law = plainLaw({ density_kg_m3: 1000, viscosity: () => 0.1 });
  const rows = Math.round(0.3 / cell_m);
  const nose_m = frontAt(STARTED_S, area_m2);
  // ∫ √(ν x/(g t)) dx = (2/3) √(ν/(g t)) x^1.5
  const upTo = (x: number) => (2 / 3) * Math.sqrt(NU_M2_S / (G * STARTED_S)) * Math.min(nose_m, Math.max(0, x)) ** 1.5;
  const film = filmOf(law, 2, rows, cell_m, (_, row) => {
    const x = (rows - row) * cell_m;
    return (upTo(x) - upTo(x - cell_m)) / cell_m;
  });
  return { film, law };
}

/** Where the film falls through half the nose's height, linear between cell centres: a front spread over two cells is still found to a part of one. */
function front_m(film: LivingFilm, time_s: number, area_m2 = AREA_M2): number {
  const { rows, columns, cellSize_m } = film.grid;
  const half_m = (0.75 * area_m2) / frontAt(time_s, area_m2);
  const wet = (row: number) => film.solids_m[row * columns]! + film.fast_m[row * columns]! + film.slow_m[row * columns]!;
  let row = 0;
  while (row < rows - 1 && wet(row) < half_m) row++;
  const below = row > 0 ? wet(row - 1) : 0;
  const share = (wet(row) - half_m) / (wet(row) - below);
  return (rows - row - 0.5 + share) * cellSize_m;
}

function frontError(cell_m: number, time_s: number, area_m2 = AREA_M2): number {
  const { film, law } = huppertFilm(cell_m, area_m2);
  advanceFilm(film, law, time_s - STARTED_S);
  return front_m(film, time_s, area_m2) / frontAt(time_s, area_m2) - 1;
}

describe("Huppert's front", () => {
  testPublished(
    ([[1, 0.028051], [10, 0.060434], [60, 0.109816], [300, 0.187784]] as const).map(([time_s, row_m]) => ({
      source: HUPPERT,
      quantity: `front after ${time_s} s of 1e-5 m² on 2 mm cells, m (g 9.80665)`,
      expected: row_m * (G / ROWS_G) ** (1 / 3),
      tolerance: 0.02 * row_m,
      why: '2 % is asked: about half a cell at 10 s',
      ours: () => frontAt(time_s) * (1 + frontError(0.002, time_s)),
    })),
  );

  it('comes nearer as cells are halved, at about first order (measured 1.03)', () => {
    const errors = [0.004, 0.002, 0.001].map((cell_m) => Math.abs(frontError(cell_m, 60)));
    const order = Math.log2(errors[0]! / errors[2]!) / 2;
    console.log('front error at 60 s on 4, 2, 1 mm:', errors, 'order', order);
    expect(errors[2]).toBeLessThan(errors[0]!);
    expect(order).toBeGreaterThan(0.5);
  });

  it('is worse for small volumes, whose nose is a cell or two: within 8 % for 1e-6 m² at 60 s, 2 mm cells', () => {
    const errors = [1e-5, 1e-6].map((area_m2) => Math.abs(frontError(0.002, 60, area_m2)));
    console.log('front error for 1e-5 and 1e-6 m²:', errors);
    expect(errors[1]).toBeLessThan(0.08);
  });

  it('keeps its volume to rounding and nothing falls below zero', () => {
    const { film, law } = huppertFilm(0.002);
    const before = volumeOf(film, film.solids_m) + volumeOf(film, film.fast_m) + volumeOf(film, film.slow_m);
    advanceFilm(film, law, 300);
    const after = volumeOf(film, film.solids_m) + volumeOf(film, film.fast_m) + volumeOf(film, film.slow_m);
    expect(Math.abs(after / before - 1)).toBeLessThan(1e-12);
    for (const amount of [film.solids_m, film.fast_m, film.slow_m]) expect(amount.every((value) => value >= 0)).toBe(true);
  });
});
