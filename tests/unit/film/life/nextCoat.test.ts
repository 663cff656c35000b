import { describe, expect, it } from 'vitest';
import { advanceFilm } from '../../../../sim/film/life/advance.ts';
import { filmForNextCoat } from '../../../../sim/film/life/nextCoat.ts';
import { momentOf } from '../../../../sim/film/life/snapshot.ts';
import type { LivingFilm } from '../../../../sim/film/life/state.ts';
import { wetFilm } from '../../../../sim/film/life/wetFilm.ts';
import { filmOf, plainEvaporation, plainLaw, volumeOf } from '../../../helpers/filmCases.ts';

const law = plainLaw({ evaporation: plainEvaporation({ rate_m_s: 1e-5 }), tilt_rad: 0 });

/** A coat of 60 µm, left for `wait_s`, as the next one finds it. */
function after(wait_s: number): LivingFilm {
  const film = filmOf(law, 2, 1, 0.01, (column) => (column === 0 ? 60e-6 : 0));
  advanceFilm(film, law, wait_s);
  return filmForNextCoat(film, law);
}

/** Another 50 µm on it, on both cells. */
function coated(film: LivingFilm): LivingFilm {
  const both = (value: number) => Float32Array.of(value, value);
  wetFilm(film, law, { wet_m: both(50e-6), solids_m: both(6e-6), arrivedDry_m: both(0), lowColumn: 0, highColumn: 2, lowRow: 0, highRow: 1, fastFraction: 0.5 });
  return film;
}

describe('the film that the next coat finds', () => {
  it('starts a new clock and account, with what lies there as landed', () => {
    const next = after(3000);
    expect(next.time_s).toBe(0);
    expect(next.landed_m[0]).toBe(0);
    expect(next.setAt_s[0]).toBeNaN();
    const lies = volumeOf(next, next.solids_m) + volumeOf(next, next.beneathSolids_m);
    expect(next.account.landedSolids_m3).toBeCloseTo(lies, 20);
    expect(next.account.evaporatedFast_m3).toBe(0);
  });

  it('lies beneath where it has set, and is still of the coat where it is wet', () => {
    const [wet, set] = [after(20), after(3000)];
    expect(wet.beneathSolids_m[0]).toBe(0);
    expect(wet.solids_m[0]).toBeCloseTo(7.5e-6, 12);
    expect(set.solids_m[0]).toBe(0);
    expect(set.beneathSolids_m[0]).toBeCloseTo(7.5e-6, 12);
  });

  it('shuts in more solvent the sooner the next coat comes, and none on a bare place (common practice)', () => {
    const trapped = [1200, 3600, 14400].map((wait_s) => coated(after(wait_s)).trapped_m);
    expect(trapped[0]![0]).toBeGreaterThan(trapped[1]![0]!);
    expect(trapped[1]![0]).toBeGreaterThan(trapped[2]![0]!);
    expect(trapped[2]![0]).toBeGreaterThan(0);
    expect(trapped[0]![1]).toBe(0);
  });

  it('with the fresh coat is seen as one film, whose upper layer alone has the viscosity', () => {
    const moment = momentOf(coated(after(3000)), law);
    expect(moment.dry_m[0]).toBeCloseTo(13.5e-6, 11);
    expect(moment.wet_m[0]).toBeGreaterThan(57.5e-6);
    expect(moment.solidsFraction[0]).toBeCloseTo(0.12, 6);
    expect(moment.viscosity_Pa_s[0]! / (0.03 * Math.exp(20.0375 * (0.12 - 0.125)))).toBeCloseTo(1, 2);
  });

  it('has no solids fraction and no viscosity where nothing lies', () => {
    const moment = momentOf(filmOf(law, 2, 1, 0.01, (column) => (column === 0 ? 60e-6 : 0)), law);
    expect([moment.wet_m[1], moment.solidsFraction[1], moment.viscosity_Pa_s[1]]).toEqual([0, NaN, NaN]);
  });
});
