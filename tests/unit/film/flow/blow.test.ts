import { describe, expect, it } from 'vitest';
import { blowFilm, type Blast } from '../../../../sim/film/flow/blow.ts';
import { advanceFilm, filmNow } from '../../../../sim/film/life/advance.ts';
import { TILE_ROWS, type LivingFilm } from '../../../../sim/film/life/state.ts';
import { filmOf, plainEvaporation, plainLaw, totalWet_m, volumeOf } from '../../../helpers/filmCases.ts';

const CELL_M = 4e-3;
const COLUMNS = 25;
const law = plainLaw({ evaporation: plainEvaporation({ rate_m_s: 1e-5 }), tilt_rad: 0, yieldStress_Pa: 0.5 });

/** Air from straight ahead at the middle of a panel of 100 × 100 mm. */
const blast = (speed_m_s: number, change: Partial<Blast> = {}): Blast => ({ x_m: 0.05, y_m: 0.05, longX: 1, longY: 0, halfLength_m: 0.03, halfDepth_m: 0.015, speed_m_s, ...change });

function blown(speed_m_s: number, seconds: number, change: Partial<Blast> = {}): LivingFilm {
  const film = filmOf(law, COLUMNS, COLUMNS, CELL_M, () => 100e-6);
  for (let at_s = 0.25; at_s <= seconds; at_s += 0.25) {
    advanceFilm(film, law, at_s);
    blowFilm(film, law, blast(speed_m_s, change), 0.25);
  }
  return film;
}

const MIDDLE = 12 * COLUMNS + 12;

describe('air blown at a film', () => {
  it('carries off vapour: as √(speed) times the room\'s where it hits, nothing beyond its reach', () => {
    const film = blown(10, 1);
    const still = blown(0, 1);
    const lost = (of: LivingFilm, cell: number) => 100e-6 - totalWet_m(of)[cell]!;
    // 10 m/s against 0.3 m/s in the room; the film that has lost more gives off a little less.
    expect(lost(film, MIDDLE) / lost(still, MIDDLE) / Math.sqrt(10 / 0.3)).toBeCloseTo(1, 1);
    expect(totalWet_m(film)[0]).toBe(totalWet_m(still)[0]);
  });

  it('moves no film while its drag, ½ · 0.006 · 1.2 · U², is less than the film yields at', () => {
    // 0.5 Pa is reached at 11.8 m/s; on the cells where the drag is most the speed is half to three quarters of the middle's.
    expect(blown(11.5, 2).blown_m.every((moved) => moved === 0)).toBe(true);
    expect(Math.max(...blown(40, 2).blown_m)).toBeGreaterThan(0);
  });

  it('drags film outward: less in the middle of each side, more at the rim, the middle itself left alone', () => {
    const film = blown(60, 2);
    expect(film.gathered_m[MIDDLE - 5]).toBeLessThan(0);
    expect(Math.max(...film.gathered_m.slice(12 * COLUMNS, 13 * COLUMNS))).toBeGreaterThan(1e-6);
    expect(film.blown_m[MIDDLE]).toBe(0);
  });

  it('leaves the same to the left as to the right', () => {
    const film = blown(60, 2);
    const wet = totalWet_m(film);
    for (let row = 0; row < COLUMNS; row++) {
      for (let column = 0; column < COLUMNS; column++) {
        const [one, other] = [wet[row * COLUMNS + column]!, wet[row * COLUMNS + COLUMNS - 1 - column]!];
        // Distances from the middle round apart by 1e-16; the film's temperature is in single precision.
        expect(Math.abs(one - other)).toBeLessThan(1e-6 * 100e-6);
      }
    }
  });

  it('loses no film: landed = what lies + evaporated, and none goes over the outline', () => {
    for (const film of [blown(60, 3), blown(60, 3, { x_m: 0 })]) {
      const { account } = film;
      expect(volumeOf(film, film.solids_m) / account.landedSolids_m3).toBeCloseTo(1, 12);
      expect((volumeOf(film, film.fast_m) + account.evaporatedFast_m3) / account.landedFast_m3).toBeCloseTo(1, 12);
      expect((volumeOf(film, film.slow_m) + account.evaporatedSlow_m3) / account.landedSlow_m3).toBeCloseTo(1, 12);
      for (const amount of [film.solids_m, film.fast_m, film.slow_m]) expect(amount.every((value) => value >= 0)).toBe(true);
    }
  });

  it('does not count the time for levelling twice', () => {
    const soft = blown(1, 1);
    const still = blown(0, 1);
    // Drier by a hundredth, so a little less; twice would be twice.
    expect(soft.levelling_m4[MIDDLE]! / still.levelling_m4[MIDDLE]!).toBeLessThan(1);
    expect(soft.levelling_m4[MIDDLE]! / still.levelling_m4[MIDDLE]!).toBeGreaterThan(0.9);
  });
});

describe('film blown over the edge of a tile', () => {
  /** Wet below the edge between two tiles, bare above it, where the tile sleeps as it does before anything has landed. */
  function overTheEdge(): LivingFilm {
    const film = filmOf(law, 8, 2 * TILE_ROWS, CELL_M, (_, row) => (row < TILE_ROWS ? 150e-6 : 0));
    film.tiles.due_s[1] = Infinity;
    advanceFilm(film, law, 1);
    for (let i = 0; i < 8; i++) {
      blowFilm(film, law, blast(60, { x_m: 0.016, y_m: (TILE_ROWS - 3) * CELL_M, halfDepth_m: 0.03 }), 0.25);
      advanceFilm(film, law, film.time_s + 0.25);
    }
    return film;
  }

  it('dries there as it would anywhere', () => {
    const film = overTheEdge();
    const cell = TILE_ROWS * 8 + 4;
    expect(totalWet_m(film)[cell]).toBeGreaterThan(5e-6);
    advanceFilm(film, law, 3600);
    const now = filmNow(film, law);
    expect(now.setAt_s[cell]).toBeGreaterThan(0);
    expect(now.fast_m[cell]! + now.slow_m[cell]!).toBeLessThan(0.2 * now.solids_m[cell]!);
  });
});
