import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { aluminiumExtinction_1_m, lightThrough } from '../../../sim/scheme/aluminiumLight.ts';
import { coatsToHide, colourOptics, contrastOver, filmReflectance, hidingFilm_m, hidingOrder, infiniteReflectance } from '../../../sim/scheme/hiding.ts';

const UM = 1e-6;
const CREAM = colourOptics(0.7, 80_000);
const BLUE = colourOptics(0.06, 30_000);

describe('hiding', () => {
  it('leaves bare ground as it is, and ends at R∞', () => {
    for (const ground of [0, 0.25, 1]) {
      expect(filmReflectance(CREAM, 0, ground)).toBe(ground);
      expect(filmReflectance(CREAM, 0.05, ground)).toBeCloseTo(0.7, 12);
    }
    expect(infiniteReflectance(CREAM)).toBeCloseTo(0.7, 12);
  });

  it('takes up without scattering as Beer says', () => {
    expect(filmReflectance({ absorption_1_m: 1e4, scatter_1_m: 0 }, 20 * UM, 0.5)).toBeCloseTo(0.5 * Math.exp(-0.4), 12);
    expect(infiniteReflectance({ absorption_1_m: 1e4, scatter_1_m: 0 })).toBe(0);
  });

  it('never asks for film over its own colour, nor hides without scattering or taking up', () => {
    expect(hidingFilm_m(CREAM, 0.7)).toBe(0);
    expect(hidingFilm_m({ absorption_1_m: 0, scatter_1_m: 1 }, 0)).toBe(Infinity);
  });

  it('puts the darker over the lighter: it takes less film that way round', () => {
    const { firstOnTop_m, secondOnTop_m } = hidingOrder(CREAM, BLUE);
    expect(secondOnTop_m).toBeLessThan(firstOnTop_m);
    expect(contrastOver(BLUE, secondOnTop_m, 0.7)).toBeGreaterThanOrEqual(0.98);
    expect(coatsToHide(firstOnTop_m, 12 * UM)).toBeGreaterThan(coatsToHide(secondOnTop_m, 12 * UM));
  });

  it('rounds coats up, and a whole number not', () => {
    expect([coatsToHide(24 * UM, 12 * UM), coatsToHide(25 * UM, 12 * UM), coatsToHide(0, 12 * UM), coatsToHide(Infinity, 1)]).toEqual([2, 3, 0, Infinity]);
  });

  it('moves from the ground towards R∞ with every micrometre, and stays between them', () => {
    fc.assert(fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), fc.double({ min: 100, max: 5e6, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 1e-7, max: 3e-4, noNaN: true }), (r, s, ground, film) => {
      const optics = colourOptics(r, s);
      const [thin, thick] = [filmReflectance(optics, film, ground), filmReflectance(optics, film * 1.5, ground)];
      expect(Math.abs(thick - r)).toBeLessThanOrEqual(Math.abs(thin - r) + 1e-12);
      expect(thin).toBeGreaterThanOrEqual(Math.min(ground, r) - 1e-12);
      expect(thin).toBeLessThanOrEqual(Math.max(ground, r) + 1e-12);
    }));
  });

  it('refuses what is no colour', () => {
    expect(() => colourOptics(0, 1e5)).toThrow(/reflectance = 0 /);
    expect(() => colourOptics(0.5, Number.NaN)).toThrow(/scatter = NaN/);
  });
});

describe('light through aluminium', () => {
  it('multiplies from coat to coat', () => {
    const extinction = aluminiumExtinction_1_m(22.5, 0.2);
    expect(extinction).toBeCloseTo((22.5 * 0.65 * 1500) / 0.2, 6);
    expect(lightThrough(extinction, 40 * UM)).toBeCloseTo(lightThrough(extinction, 20 * UM) ** 2, 12);
    expect(lightThrough(extinction, 0)).toBe(1);
  });
});
