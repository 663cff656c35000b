import { describe, expect, it } from 'vitest';
import { emptyDeposit } from '../../../sim/deposit/emptyDeposit.ts';
import { filmFromDeposit } from '../../../sim/film/fromDeposit.ts';

describe('filmFromDeposit', () => {
  it('takes the deposit’s arrays over, solids as the dry film, with its time', () => {
    const deposit = emptyDeposit({ columns: 2, rows: 1, cellSize_m: 0.002 });
    deposit.solids_m[1] = 5e-6;
    const film = filmFromDeposit(deposit, 12);
    expect(film.time_s).toBe(12);
    expect(film.grid).toBe(deposit.grid);
    expect(film.wet_m).toBe(deposit.wet_m);
    expect(film.dry_m[1]).toBeCloseTo(5e-6, 12);
    expect(film.arrivedDry_m).toBe(deposit.arrivedDry_m);
    expect(film.passes).toBe(deposit.passes);
  });
});
