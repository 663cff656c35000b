import type { CellBlock } from '../../sim/base/grid.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyDeposit } from '../../sim/deposit/emptyDeposit.ts';
import { layPath } from '../../sim/deposit/layPath.ts';
import { sprayUntil, startSprayClock } from '../../sim/deposit/sprayClock.ts';
import { advanceFilm, filmNow } from '../../sim/film/life/advance.ts';
import { momentOf } from '../../sim/film/life/snapshot.ts';
import type { LivingFilm } from '../../sim/film/life/state.ts';
import { wetFilm } from '../../sim/film/life/wetFilm.ts';
import { DEMO_PLANNED_COAT, demoJob } from '../../sim/job/demo.ts';
import { coatMoment, copyCoat, liveUntil, startCoat } from '../../sim/run/livingCoat.ts';
import { settleCoat } from '../../sim/run/settle.ts';
import { strokesOf } from '../../sim/run/strokes.ts';
import { filmOf, plainEvaporation, plainLaw, volumeOf } from '../helpers/filmCases.ts';

const SEED = { seed: 20261125, numRuns: 30 };
const COLUMNS = 12;
const ROWS = 40;

/** A law that dries in minutes, cools, and yields at half a pascal. */
const law = (tilt_rad: number, down_rad = -Math.PI / 2) =>
  plainLaw({ evaporation: plainEvaporation({ rate_m_s: 8e-6, latentHeat_J_m3: 3.5e8 }), yieldStress_Pa: 0.5, tilt_rad, down_rad });

const film = fc.array(fc.double({ min: 0, max: 400e-6, noNaN: true }), { minLength: COLUMNS * ROWS, maxLength: COLUMNS * ROWS });

/** Landed less what lies, evaporated and ran off, as a share of what landed. */
function imbalance(living: LivingFilm): number[] {
  const { account } = living;
  const solids = volumeOf(living, living.solids_m) + volumeOf(living, living.beneathSolids_m);
  const fast = volumeOf(living, living.fast_m) + volumeOf(living, living.beneathFast_m);
  const slow = volumeOf(living, living.slow_m) + volumeOf(living, living.beneathSlow_m);
  return [
    (account.landedSolids_m3 - solids - account.ranOffSolids_m3) / account.landedSolids_m3,
    (account.landedFast_m3 - fast - account.evaporatedFast_m3 - account.ranOffFast_m3) / account.landedFast_m3,
    (account.landedSlow_m3 - slow - account.evaporatedSlow_m3 - account.ranOffSlow_m3) / account.landedSlow_m3,
  ];
}

describe('a living film', () => {
  it('loses no solids and no solvent but what evaporates or runs off, and nothing falls below zero', () => {
    fc.assert(
      fc.property(film, fc.double({ min: 0, max: Math.PI, noNaN: true }), fc.double({ min: -3, max: 3, noNaN: true }), (wet, tilt, down) => {
        const of = law(tilt, down);
        const living = filmOf(of, COLUMNS, ROWS, 0.004, (c, r) => wet[r * COLUMNS + c]!);
        advanceFilm(living, of, 40);
        const now = filmNow(living, of);
        for (const share of imbalance(now)) expect(Math.abs(share)).toBeLessThan(1e-9);
        for (const amount of [now.solids_m, now.fast_m, now.slow_m]) expect(amount.every((value) => value >= 0)).toBe(true);
      }),
      SEED,
    );
  });

  it('does not run on a level panel, face up or face down', () => {
    fc.assert(
      fc.property(film, fc.constantFrom(0, Math.PI), (wet, tilt) => {
        const of = law(tilt);
        const living = filmOf(of, COLUMNS, ROWS, 0.004, (c, r) => wet[r * COLUMNS + c]!);
        advanceFilm(living, of, 20);
        expect(living.run_m.every((run) => run === 0)).toBe(true);
      }),
      SEED,
    );
  });

  it('runs the mirrored way where the film and gravity are mirrored', () => {
    fc.assert(
      fc.property(film, fc.double({ min: -2.6, max: -0.6, noNaN: true }), (wet, down) => {
        const run = (mirrored: boolean) => {
          const of = law(Math.PI / 2, mirrored ? Math.PI - down : down);
          const living = filmOf(of, COLUMNS, ROWS, 0.004, (c, r) => wet[r * COLUMNS + (mirrored ? COLUMNS - 1 - c : c)]!);
          advanceFilm(living, of, 20);
          return filmNow(living, of);
        };
        const [plain, mirror] = [run(false), run(true)];
        for (let row = 0; row < ROWS; row++) {
          for (let column = 0; column < COLUMNS; column++) {
            const a = plain.solids_m[row * COLUMNS + column]!;
            const b = mirror.solids_m[row * COLUMNS + COLUMNS - 1 - column]!;
            // The mirrored angle's sine and cosine round apart by 1e-16; a film near its yield answers by 1e-9 of itself.
            expect(Math.abs(a - b)).toBeLessThan(1e-9 * 400e-6 + 1e-6 * a);
          }
        }
      }),
      SEED,
    );
  });

  it('goes on in the same way whether or not it is looked at', () => {
    const of = law(Math.PI / 2);
    const make = () => filmOf(of, COLUMNS, ROWS, 0.004, (c, r) => 1e-6 * ((c * 37 + r * 17) % 300));
    const watched = make();
    const alone = make();
    for (const at_s of [10, 20, 30]) {
      advanceFilm(watched, of, at_s);
      advanceFilm(alone, of, at_s);
      momentOf(watched, of);
    }
    expect(filmNow(watched, of)).toEqual(filmNow(alone, of));
  });
});

const setting = settleCoat({ ...demoJob(), cell_mm: 5 }, DEMO_PLANNED_COAT);
const strokes = strokesOf(setting);

describe('a coat that is sprayed little by little', () => {
  it('lays what the whole path lays, to single precision', () => {
    const whole = emptyDeposit(setting.panelGrid.grid);
    layPath({ deposit: whole, panelGrid: setting.panelGrid, path: strokes.path, strokes: strokes.strokes, spray: setting.spray });
    const clock = startSprayClock({ panelGrid: setting.panelGrid, path: strokes.path, strokes: strokes.strokes, spray: setting.spray });
    const sum = new Float64Array(whole.wet_m.length);
    let block: CellBlock | null = null;
    for (let at_s = 0.25; at_s < 80; at_s += 0.25) {
      block = sprayUntil(clock, block, at_s);
      if (block === null) continue;
      clock.landed.wet_m.forEach((wet, cell) => (sum[cell] = sum[cell]! + wet));
    }
    const most = whole.wet_m.reduce((a, b) => Math.max(a, b), 0);
    // Where a stroke is cut, the closed form and the stamps meet: within the stamps' 0.1 % of the film.
    for (let cell = 0; cell < sum.length; cell++) expect(Math.abs(sum[cell]! - whole.wet_m[cell]!)).toBeLessThan(2e-3 * most);
    const total = sum.reduce((a, b) => a + b, 0) / whole.wet_m.reduce((a, b) => a + b, 0);
    expect(Math.abs(total - 1)).toBeLessThan(2e-5);
  });

  it('keeps solids and both solvents through spraying, drying and a second coat', () => {
    const coat = startCoat(setting, strokes);
    liveUntil(coat, 300);
    for (const share of imbalance(coatMoment(coat).film)) expect(Math.abs(share)).toBeLessThan(1e-9);
    const second = startCoat(setting, strokes, coat.film);
    liveUntil(second, 200);
    for (const share of imbalance(coatMoment(second).film)) expect(Math.abs(share)).toBeLessThan(1e-9);
  });

  it('can be copied and goes on by itself', () => {
    const coat = startCoat(setting, strokes);
    liveUntil(coat, 30);
    const copy = copyCoat(coat);
    liveUntil(copy, 120);
    const before = coat.film.solids_m.slice();
    liveUntil(copy, 200);
    expect(coat.film.solids_m).toEqual(before);
    liveUntil(coat, 200);
    const [a, b] = [coatMoment(coat).film, coatMoment(copy).film];
    // The copy stopped once more on its way, so some tiles were visited at other times.
    for (let cell = 0; cell < a.solids_m.length; cell += 97) expect(Math.abs(a.solids_m[cell]! - b.solids_m[cell]!)).toBeLessThan(1e-12);
  });

  it('gives the same verdict figures with half the step, within their margins', () => {
    const figures = [1, 0.5].map((stepScale) => {
      const coat = startCoat(setting, strokes);
      liveUntil(coat, 900, { stepScale });
      const { film } = coatMoment(coat);
      const set = film.setAt_s.filter((at) => at >= 0).sort();
      return { set_s: set[Math.floor(set.length / 2)]!, margin_K: film.margin_K.reduce((a, b) => Math.min(a, b), Infinity), levelling: film.levelling_m4[Math.floor(film.levelling_m4.length / 2) + 40]! };
    });
    console.log('whole and half step:', figures);
    const [whole, half] = figures as [(typeof figures)[0], (typeof figures)[0]];
    // Order 1 in the step, which is 1/24 of the age and the grain of the time to set: 4 % at most; 0.1 K of a margin of 2 K.
    expect(Math.abs(whole.set_s / half.set_s - 1)).toBeLessThan(0.04);
    expect(Math.abs(whole.margin_K - half.margin_K)).toBeLessThan(0.1);
    expect(Math.abs(whole.levelling / half.levelling - 1)).toBeLessThan(0.03);
  });
});

describe('fresh film on film', () => {
  it('mixes with wet film, lies on set film, and joins it once it has set', () => {
    const of = law(0);
    const living = filmOf(of, 2, 1, 0.01, () => 20e-6);
    advanceFilm(living, of, 2000);
    expect(living.setAt_s[0]).toBeGreaterThan(0);
    const landing = { wet_m: Float32Array.of(50e-6, 0), solids_m: Float32Array.of(6e-6, 0), arrivedDry_m: new Float32Array(2), lowColumn: 0, highColumn: 2, lowRow: 0, highRow: 1, fastFraction: 0.5 };
    wetFilm(living, of, landing);
    expect(living.beneathSolids_m[0]).toBeCloseTo(2.5e-6, 9);
    expect(living.beneathSolids_m[1]).toBe(0);
    expect(living.trapped_m[0]).toBeGreaterThan(0);
    expect(living.setAt_s[0]).toBeNaN();
    advanceFilm(living, of, 4500);
    expect(living.beneathSolids_m[0]).toBe(0);
    expect(living.solids_m[0]).toBeCloseTo(8.5e-6, 9);
  });
});
