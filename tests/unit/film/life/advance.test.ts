import { describe, expect, it } from 'vitest';
import { advanceFilm, filmNow } from '../../../../sim/film/life/advance.ts';
import { TILE_COLUMNS, TILE_ROWS } from '../../../../sim/film/life/state.ts';
import { filmOf, plainEvaporation, plainLaw } from '../../../helpers/filmCases.ts';

const law = plainLaw({ evaporation: plainEvaporation({ rate_m_s: 1e-5 }), yieldStress_Pa: 1 });

describe('a film carried forward', () => {
  it('stops on request with a `cancelled` error', () => {
    const film = filmOf(law, 1, 4, 4e-3, () => 90e-6);
    let asked = 0;
    expect(() => advanceFilm(film, law, 60, { shouldStop: () => ++asked > 5 })).toThrow(expect.objectContaining({ code: 'cancelled' }) as Error);
    expect(film.time_s).toBeLessThan(60);
  });

  it('looks the more seldom the longer it has lain: an hour asks for a hundredth of the shortest steps', () => {
    const film = filmOf(law, 1, 4, 4e-3, () => 90e-6);
    let asked = 0;
    advanceFilm(film, law, 3600, {
      shouldStop: () => {
        asked++;
        return false;
      },
    });
    // Every quarter of a second for 6 s, then every 1/24 of the age up to 64 s: 24 + 24 ln(1536/6) + 2064/64 = 190.
    expect(asked).toBeLessThan(250);
  });

  it('leaves sleeping tiles alone and wakes the one that film runs into', () => {
    const heavy = plainLaw({ viscosity: () => 0.05 });
    const film = filmOf(heavy, TILE_COLUMNS + 1, 3 * TILE_ROWS, 4e-3, (column, row) => (column < 3 && row >= 2 * TILE_ROWS && row < 2 * TILE_ROWS + 3 ? 300e-6 : 0));
    film.tiles.due_s.fill(Infinity);
    film.tiles.due_s[4] = 0;
    advanceFilm(film, heavy, 10);
    // Tiles lie in three rows of two; film runs from the fifth into the third, which wakes the first in its turn, before it can run there.
    expect([...film.tiles.due_s].map((due) => due < Infinity)).toEqual([true, false, true, false, true, false]);
    expect(film.run_m[(2 * TILE_ROWS - 1) * (TILE_COLUMNS + 1)]).toBeGreaterThan(0);
  });

  it('brought to a time gives a copy and is left as it is', () => {
    const film = filmOf(law, 1, 4, 4e-3, () => 90e-6);
    advanceFilm(film, law, 100);
    film.time_s = 101;
    const before = film.fast_m.slice();
    const now = filmNow(film, law);
    expect(now.fast_m[0]).toBeLessThan(film.fast_m[0]!);
    expect(film.fast_m).toEqual(before);
    now.solids_m[0] = 0;
    expect(film.solids_m[0]).toBeGreaterThan(0);
  });
});
