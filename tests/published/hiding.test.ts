import { describe, expect, it } from 'vitest';
import { absorption_1_m, colourOptics, contrastRatio, filmReflectance, hidingFilm_m, infiniteReflectance, seenReflectance, type FilmOptics } from '../../sim/scheme/hiding.ts';
import { lastDigit, testPublished } from '../helpers/publishedRow.ts';

const UM = 1e-6;
/** K and S per µm as optics. */
const optics = (K: number, S: number): FilmOptics => ({ absorption_1_m: K / UM, scatter_1_m: S / UM });
const HYPERBOLIC = 'Reference computation: the equation dR/dX = S - 2(K + S)R + S R² of Kubelka and Munk (1931), integrated';
const LIMIT = 'Identity: K = 0 of Kubelka and Munk, (Rg + (1 - Rg)SX)/(1 + (1 - Rg)SX)';
const SAUNDERSON = 'Identity: J. L. Saunderson, JOSA 32, 1942, with k1 0.04 and k2 0.6 (from memory, ISO 18314-2)';
const LAST = 'last printed figure';

/** Classical fourth-order steps of the equation, from the ground up: a way of its own to the same figures. */
function stepped(K: number, S: number, X: number, ground: number): number {
  const slope = (r: number): number => S - 2 * (K + S) * r + S * r * r;
  const steps = 4000;
  const h = X / steps;
  let r = ground;
  for (let i = 0; i < steps; i++) {
    const k1 = slope(r);
    const k2 = slope(r + (h / 2) * k1);
    const k3 = slope(r + (h / 2) * k2);
    const k4 = slope(r + h * k3);
    r += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  }
  return r;
}

describe('hiding against published and reference figures', () => {
  testPublished([
    { source: 'HunterLab application note on Kubelka-Munk: R = 0.55, K/S printed 0.184', quantity: 'K/S of R∞ 0.55', expected: 0.184, tolerance: lastDigit(3), why: LAST, ours: () => absorption_1_m(1, 0.55) },
    { source: 'Identity: (1 - R)²/(2R)', quantity: 'K/S of R∞ 0.55, to five figures', expected: 0.18409, tolerance: lastDigit(5), why: LAST, ours: () => absorption_1_m(1, 0.55) },
    { source: 'Identity: R∞ = a - b', quantity: 'R∞ of K/S 0.1', expected: 0.641742, tolerance: lastDigit(6), why: LAST, ours: () => infiniteReflectance(optics(0.01, 0.1)) },
    ...([[0, 0.577121], [0.8, 0.671347], [1, 0.727051]] as const).map(([ground, expected]) => ({ source: HYPERBOLIC, quantity: `R of K 0.01, S 0.1 /µm, 20 µm over ${ground}`, expected, tolerance: lastDigit(6), why: LAST, ours: () => filmReflectance(optics(0.01, 0.1), 20 * UM, ground) })),
    { source: LIMIT, quantity: 'R0 of K 0, SX 1', expected: 0.5, tolerance: 1e-12, why: 'exact', ours: () => filmReflectance(optics(0, 0.1), 10 * UM, 0) },
    { source: LIMIT, quantity: 'R over 0.8 of K 0, SX 1', expected: 0.833333, tolerance: lastDigit(6), why: LAST, ours: () => filmReflectance(optics(0, 0.1), 10 * UM, 0.8) },
    { source: LIMIT, quantity: 'contrast of K 0, SX 1', expected: 0.6, tolerance: 1e-12, why: 'exact', ours: () => contrastRatio(optics(0, 0.1), 10 * UM) },
    ...([[5, 0.41675], [10, 0.62413], [20, 0.8237], [40, 0.95449], [80, 0.99656]] as const).map(([film, expected]) => ({ source: HYPERBOLIC, quantity: `contrast of K 0.005, S 0.1 /µm at ${film} µm`, expected, tolerance: lastDigit(5), why: LAST, ours: () => contrastRatio(optics(0.005, 0.1), film * UM) })),
    ...([[0, 0.04], [0.5, 0.314286], [0.8, 0.630769], [1, 1]] as const).map(([inside, expected]) => ({ source: SAUNDERSON, quantity: `seen of ${inside} inside`, expected, tolerance: lastDigit(6), why: LAST, ours: () => seenReflectance(inside) })),
  ]);

  it('meets the equation stepped by itself, at nine films', () => {
    for (const ground of [0, 0.3, 0.8]) {
      for (const X of [1, 12, 50]) {
        expect(Math.abs(filmReflectance(optics(0.013, 0.08), X * UM, ground) - stepped(0.013, 0.08, X, ground))).toBeLessThan(1e-9);
      }
    }
  });

  it('hides where the contrast is 0.98, and a hair less film does not', () => {
    const white = colourOptics(0.85, 1e5);
    const film = hidingFilm_m(white, null);
    expect(contrastRatio(white, film)).toBeGreaterThanOrEqual(0.98);
    expect(contrastRatio(white, film * 0.999)).toBeLessThan(0.98);
  });
});
