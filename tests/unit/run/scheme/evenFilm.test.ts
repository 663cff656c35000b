import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../../sim/job/demo.ts';
import { filmLawOf } from '../../../../sim/run/filmLaw.ts';
import { dryEvenFilm, LONGEST_DRYING_S } from '../../../../sim/run/scheme/evenFilm.ts';
import { settleCoat } from '../../../../sim/run/settle.ts';

const SETTING = settleCoat(demoJob(), 'planned', { cell_mm: 10 });
const FILM = { law: filmLawOf(SETTING), wet_m: 100e-6, solidsFraction: 0.15, fastFraction: SETTING.mix.fast.volumeFraction };

describe('dryEvenFilm', () => {
  it('loses solvent all the time and never more than there was', () => {
    const { left } = dryEvenFilm(FILM);
    const totals = left.map(({ fast_m, slow_m }) => fast_m + slow_m);
    // Film lands in single precision.
    expect(totals[0]! / 85e-6).toBeCloseTo(1, 6);
    totals.forEach((total, i) => { if (i > 0) expect(total).toBeLessThan(totals[i - 1]!); });
    expect(totals.at(-1)).toBeGreaterThan(0);
  });

  it('is ready for the next coat when 18 % of it is solvent', () => {
    const { left, recoat_s, touchDry_s } = dryEvenFilm(FILM);
    const at = left.find(({ time_s }) => time_s >= recoat_s!)!;
    const share = (at.fast_m + at.slow_m) / (at.fast_m + at.slow_m + 15e-6);
    // The step before readiness is a twenty-fourth of the time lain.
    expect(share).toBeLessThanOrEqual(0.18 + 1e-6);
    expect(share).toBeGreaterThan(0.17);
    expect(touchDry_s!).toBeLessThan(recoat_s!);
  });

  it('takes longer the thicker it is', () => {
    const times = [50e-6, 100e-6, 200e-6].map((wet_m) => dryEvenFilm({ ...FILM, wet_m }).recoat_s!);
    expect(times[1]!).toBeGreaterThan(times[0]!);
    expect(times[2]!).toBeGreaterThan(times[1]!);
  });

  it('gives no time for no film, nor for one not ready in two days', () => {
    expect(dryEvenFilm({ ...FILM, wet_m: 0 })).toMatchObject({ touchDry_s: null, recoat_s: null });
    const thick = dryEvenFilm({ ...FILM, wet_m: 20e-3 });
    expect(thick.recoat_s).toBeNull();
    expect(thick.left.at(-1)?.time_s).toBe(LONGEST_DRYING_S);
  });

  it('goes on for as long as it is asked to', () => {
    const { left, recoat_s } = dryEvenFilm(FILM, 12 * 3600);
    expect(left.at(-1)!.time_s).toBeGreaterThanOrEqual(12 * 3600);
    expect(recoat_s).toBe(dryEvenFilm(FILM).recoat_s);
  });
});
