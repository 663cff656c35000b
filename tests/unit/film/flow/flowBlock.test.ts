import { describe, expect, it } from 'vitest';
import { flowBlock, flowLimit_s } from '../../../../sim/film/flow/flowBlock.ts';
import { advanceFilm } from '../../../../sim/film/life/advance.ts';
import { MOVED_M, TILE_COLUMNS, TILE_ROWS } from '../../../../sim/film/life/state.ts';
import { filmOf, plainLaw, totalWet_m, volumeOf } from '../../../helpers/filmCases.ts';

const CELL_M = 2e-3;
const block = (columns: number, rows: number) => ({ lowColumn: 0, highColumn: columns, lowRow: 0, highRow: rows });
const upright = plainLaw({ viscosity: () => 0.1 });

describe('one step of flow', () => {
  it('gives both ways in the shares of gravity', () => {
    const law = plainLaw({ viscosity: () => 0.1, down_rad: -Math.PI / 6 });
    const film = filmOf(law, 3, 3, CELL_M, (column, row) => (column === 1 && row === 1 ? 100e-6 : 0));
    flowBlock(film, law, block(3, 3), 0.01);
    const wet = totalWet_m(film);
    // cos 30° across, sin 30° down.
    expect(wet[5]! / wet[1]!).toBeCloseTo(Math.sqrt(3), 9);
    expect(wet[4]! + wet[5]! + wet[1]!).toBeCloseTo(100e-6, 18);
    expect([0, 2, 3, 6, 7, 8].every((cell) => wet[cell] === 0)).toBe(true);
  });

  it('takes solids and both solvents along as the film holds them', () => {
    const film = filmOf(upright, 1, 2, CELL_M, (_, row) => (row === 1 ? 200e-6 : 0), 0.2);
    film.fast_m[1] = 30e-6;
    film.slow_m[1] = 130e-6;
    flowBlock(film, upright, block(1, 2), 0.1);
    expect(film.solids_m[0]).toBeGreaterThan(0);
    expect(film.fast_m[0]! / film.solids_m[0]!).toBeCloseTo(30 / 40, 12);
    expect(film.slow_m[0]! / film.solids_m[0]!).toBeCloseTo(130 / 40, 12);
  });

  it('runs off at the outline and into a hole, and says how much', () => {
    const film = filmOf(upright, 1, 3, CELL_M, (_, row) => (row === 1 ? 0 : 200e-6));
    film.inside[1] = 0;
    const before = volumeOf(film, film.solids_m);
    flowBlock(film, upright, block(1, 3), 0.1);
    expect(film.solids_m[1]).toBe(0);
    expect(film.account.ranOffSolids_m3).toBeCloseTo(before - volumeOf(film, film.solids_m), 18);
    expect(film.account.ranOffSolids_m3).toBeGreaterThan(0);
  });

  it('leaves film that has set, and film no thicker than what holds, where it is', () => {
    const law = plainLaw({ viscosity: () => 0.1, yieldStress_Pa: 1 });
    const held_m = 1 / (900 * 9.80665);
    const film = filmOf(law, 1, 2, CELL_M, () => held_m);
    expect(flowBlock(film, law, block(1, 2), 1)).toBe(0);
    const set = filmOf(upright, 1, 2, CELL_M, () => 200e-6, upright.setFraction + 0.001);
    expect(flowBlock(set, upright, block(1, 2), 1)).toBe(0);
    expect(set.run_m.every((run) => run === 0)).toBe(true);
  });

  it('keeps the mean of what has run where films meet, and notes when a film first moved', () => {
    const film = filmOf(upright, 1, 2, CELL_M, () => 100e-6);
    film.run_m[1] = 0.9 * MOVED_M;
    film.time_s = 7;
    flowBlock(film, upright, block(1, 2), 0.5);
    expect(film.run_m[0]).toBeGreaterThan(0);
    expect(film.run_m[0]).toBeLessThan(film.run_m[1]);
    expect(film.movedAt_s[1]).toBe(7);
    expect(film.movedAt_s[0]).toBeNaN();
  });

  it('keeps every cell at or above zero for the whole of the limit, whatever the films side by side', () => {
    const film = filmOf(upright, 1, 12, CELL_M, (_, row) => ((row * 7) % 5) * 120e-6);
    const fastest = flowBlock(film, upright, block(1, 12), 0);
    for (let i = 0; i < 50; i++) flowBlock(film, upright, block(1, 12), flowLimit_s(film, upright, fastest));
    expect(totalWet_m(film).every((wet) => wet >= 0)).toBe(true);
  });
});

describe('the edges of tiles', () => {
  it('change nothing: a film runs the same wherever the tiles are cut', () => {
    const law = plainLaw({ viscosity: () => 0.1, down_rad: -1.2, yieldStress_Pa: 0.3 });
    const [columns, rows] = [TILE_COLUMNS + 20, TILE_ROWS + 20];
    const drop = (shift: number) => filmOf(law, columns, rows, CELL_M, (column, row) => (Math.abs(column - 4 - shift) < 3 && Math.abs(row - 28 - Math.min(shift, 18)) < 3 ? 400e-6 : 0));
    // The second lies so that it runs over both edges.
    const [plain, cut] = [drop(0), drop(TILE_COLUMNS - 9)];
    for (const film of [plain, cut]) advanceFilm(film, law, 20);
    const at = (film: typeof plain, column: number, row: number) => totalWet_m(film)[row * columns + column]!;
    const shifted = TILE_COLUMNS - 9;
    let moved = 0;
    let worst = 0;
    for (let row = 0; row < 32; row++) {
      for (let column = 0; column < 24; column++) {
        const [one, other] = [at(plain, column, row), at(cut, column + shifted, row + 18)];
        if (row < 25) moved += one;
        worst = Math.max(worst, Math.abs(one - other));
      }
    }
    console.log('moved', moved, 'worst', worst);
    expect(moved).toBeGreaterThan(400e-6);
    expect(worst).toBeLessThan(1e-3 * 400e-6);
  });
});
