import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../sim/base/noise.ts';
import type { CardReadings } from '../../../../sim/gun/card/cardReadings.ts';
import { FIT_FAMILIES, type FanFit } from '../../../../sim/gun/card/fanFit.ts';
import { fitFan } from '../../../../sim/gun/card/fitFan.ts';
import { fitModel, modelFilm, modelSlopes } from '../../../../sim/gun/card/fitModel.ts';
import { fittedFilm } from '../../../../sim/gun/card/fittedFilm.ts';
import { betaProfile, FAN, readCard } from '../../../helpers/fanCards.ts';

const noisy = readCard({ ...FAN, imbalance: 0.2 }, 41, 0.03, seededRandom(4));

function squares({ place_m, film }: CardReadings, fit: FanFit): number {
  const curve = fittedFilm(fit);
  return film.reduce((sum, value, i) => sum + (value - curve(place_m[i]!)) ** 2, 0);
}

describe('slopes of the fitted curve', () => {
  it.each(FIT_FAMILIES)('are those of the %s by differences', (family) => {
    const model = fitModel(noisy, family);
    const of = [0.9, 0.05, Math.log(0.71), 0.04, model.form.leans ? 0.2 : 0, ...(model.form.shape === null ? [] : [family === 'flat-top' ? 0.4 : 0.8])];
    const step = 1e-6;
    for (const x of [-0.63, -0.31, 0.013, 0.4, 0.69, 0.95]) {
      const slopes = modelSlopes(model, of)(x);
      model.free.forEach((index, i) => {
        const moved = (by: number) => modelFilm(model, of.map((value, k) => (k === index ? value + by : value)))(x);
        // Central differences err by step² times the third slope (below 1e4 here) and rounding over step.
        expect(Math.abs(slopes[i]! - (moved(step) - moved(-step)) / (2 * step))).toBeLessThan(1e-8);
      });
    }
  });
});

describe('a fan fitted to readings', () => {
  const { fits, tied } = fitFan(noisy);

  it('ranks every family once, weights adding up to 1', () => {
    expect(fits.map(({ family }) => family).sort()).toEqual([...FIT_FAMILIES].sort());
    expect(fits.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(fits[0]!.behind).toBe(0);
    for (let i = 1; i < fits.length; i++) {
      expect(fits[i]!.aicc).toBeGreaterThanOrEqual(fits[i - 1]!.aicc);
      expect(fits[i]!.behind).toBeCloseTo(fits[i]!.aicc - fits[0]!.aicc, 12);
      expect(fits[i]!.weight / fits[0]!.weight).toBeCloseTo(Math.exp(-fits[i]!.behind / 2), 12);
    }
    expect(tied).toEqual(fits.slice(1).filter(({ behind }) => behind < 2).map(({ family }) => family));
  });

  it('states the criterion of its own squares, and counts the parabola one number less than the double-beta', () => {
    for (const fit of fits) {
      const [n, k] = [noisy.film.length, fit.freeCount + 1];
      expect(fit.rms).toBeCloseTo(Math.sqrt(squares(noisy, fit) / n), 9);
      const highest = Math.max(...noisy.film);
      expect(fit.aicc).toBeCloseTo(n * Math.log((fit.rms / highest) ** 2) + 2 * k + (2 * k * (k + 1)) / (n - k - 1), 6);
    }
    const count = (family: string) => fits.find((fit) => fit.family === family)!.freeCount;
    expect(count('double-beta')).toBe(count('parabola') + 1);
    expect(count('gaussian')).toBe(count('parabola') - 1);
  });

  it('leaves least squares: any number moved a little leaves more', () => {
    for (const fit of fits) {
      const least = squares(noisy, fit);
      for (const key of ['width_m', 'offset_m', 'peak', 'fog', 'imbalance', 'beta1', 'taper_m'] as const) {
        const value = fit[key];
        if (value === null || (key === 'imbalance' && fit.family === 'gaussian')) continue;
        const step = 1e-3 * (key === 'offset_m' ? fit.width_m : key === 'fog' ? fit.peak : key === 'imbalance' ? 1 : value);
        for (const by of [-step, step]) expect(squares(noisy, { ...fit, [key]: value + by })).toBeGreaterThan(least);
      }
    }
  });

  it('follows the readings in unit and place, and turns over with them', () => {
    const other = (scale: number, shift_m: number, film: number): CardReadings => ({ place_m: noisy.place_m.map((place) => scale * place + shift_m), film: noisy.film.map((value) => film * value), unit: '' });
    const shapes = (fit: FanFit) => [fit.beta1 ?? 0, fit.imbalance];
    const moved = fitFan(other(1.7, 3, 1e-6)).fits;
    const turned = fitFan({ ...noisy, place_m: noisy.place_m.map((place) => -place).reverse(), film: noisy.film.slice().reverse() }).fits;
    fits.forEach((fit, i) => {
      expect(moved[i]!.family).toBe(fit.family);
      // Both searches end where the next gain is below 1e-10 of the squares: numbers agree to its root.
      expect(moved[i]!.width_m / (1.7 * fit.width_m)).toBeCloseTo(1, 4);
      expect((moved[i]!.offset_m - 3) / 1.7).toBeCloseTo(fit.offset_m, 5);
      expect(moved[i]!.peak / fit.peak).toBeCloseTo(1e-6, 10);
      shapes(moved[i]!).forEach((value, k) => expect(value).toBeCloseTo(shapes(fit)[k]!, 3));
      expect(turned[i]!.offset_m).toBeCloseTo(-fit.offset_m, 5);
      expect(turned[i]!.imbalance).toBeCloseTo(-fit.imbalance, 3);
    });
  });

  it('says when families cannot be told apart', () => {
    const close = fitFan(readCard({ ...FAN, profile: betaProfile(2.6) }, 21, 0.03, seededRandom(9)));
    expect(close.tied.length).toBeGreaterThan(0);
    expect(close.tied).not.toContain(close.fits[0]!.family);
  });

  it('holds fog and lean at 0 with few readings and says so', () => {
    const few = fitFan(readCard(FAN, 9));
    expect(few.fits.every(({ fog, imbalance }) => fog === 0 && imbalance === 0)).toBe(true);
    expect(few.warnings.map(({ text }) => text)).toEqual([expect.stringMatching(/^9 readings are too few to tell a lean/)]);
    expect(fitFan(readCard(FAN, 11)).warnings).toEqual([]);
  });

  it('says when the fan runs off the readings', () => {
    const { place_m, film } = readCard({ ...FAN, offset_m: 0 }, 41);
    const cut = fitFan({ place_m: place_m.slice(8, 33), film: film.slice(8, 33), unit: '' });
    expect(cut.warnings.map(({ text }) => text)).toEqual([expect.stringMatching(/past the last reading/)]);
  });

  it('takes repeated places and uneven ones', () => {
    const { place_m, film } = readCard({ ...FAN, profile: betaProfile(3) }, 41);
    const keep = Array.from(place_m.keys()).filter((i) => i % 3 !== 1 || i > 20).flatMap((i) => (i % 5 === 0 ? [i, i] : [i]));
    const fit = fitFan({ place_m: Float64Array.from(keep, (i) => place_m[i]!), film: Float64Array.from(keep, (i) => film[i]!), unit: '' }).fits[0]!;
    expect(fit).toMatchObject({ family: 'double-beta' });
    expect(fit.beta1).toBeCloseTo(3, 6);
  });

  it('refuses what is no card', () => {
    expect(() => fitFan({ place_m: new Float64Array(3), film: new Float64Array(3), unit: '' })).toThrow(/too few/);
  });
});
