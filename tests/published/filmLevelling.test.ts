import { describe, expect, it } from 'vitest';
import { advanceFilm } from '../../sim/film/life/advance.ts';
import { levellingTime_s, rippleLeft, weightedDrop_m3 } from '../../sim/film/level/peel.ts';
import { filmOf, plainEvaporation, plainLaw } from '../helpers/filmCases.ts';
import { testPublished } from '../helpers/publishedRow.ts';

const ORCHARD = 'S.E. Orchard, Appl. Sci. Res. A11, 451, 1962 (from memory): τ = 3 µ λ⁴/(16 π⁴ σ h³)';

describe('levelling of a ripple', () => {
  const rows: readonly (readonly [number, number, number, number])[] = [
    [50, 1, 0.0513299, 0.0355792], [50, 2, 0.821279, 0.569267], [100, 2, 0.10266, 0.0711584], [25, 2, 6.57023, 4.55414], [50, 5, 32.0812, 22.237],
  ];
  testPublished(
    rows.flatMap(([wet_um, wave_mm, tau_s, half_s]) => {
      const tau = () => levellingTime_s(wet_um * 1e-6, wave_mm * 1e-3, 0.1, 0.03);
      return [
        { source: ORCHARD, quantity: `τ of ${wave_mm} mm in ${wet_um} µm, s`, expected: tau_s, tolerance: 1e-5 * tau_s, why: 'six printed figures', ours: tau },
        { source: ORCHARD, quantity: `half-life of ${wave_mm} mm in ${wet_um} µm, s`, expected: half_s, tolerance: 1e-5 * half_s, why: 'six printed figures', ours: () => Math.LN2 * tau() },
      ];
    }),
  );
});

describe('the integral that the film keeps', () => {
  it('levels a film of steady viscosity as exp(-t/τ) (Orchard)', () => {
    const law = plainLaw({ viscosity: () => 0.1, surfaceTension_N_m: 0.03, tilt_rad: 0, evaporation: plainEvaporation({ rate_m_s: 0 }) });
    const film = filmOf(law, 1, 1, 0.01, () => 50e-6);
    advanceFilm(film, law, 0.5);
    // Single precision of the integral.
    expect(rippleLeft(film.levelling_m4[0]!, 0.002)).toBeCloseTo(Math.exp(-0.5 / levellingTime_s(50e-6, 0.002, 0.1, 0.03)), 5);
  });

  it('agrees with a non-linear finite-volume run of the thin-film equation: 0.77912 of a 1-unit ripple after τ/4 (reference computation, 64 cells a wave)', () => {
    const tau_s = levellingTime_s(50e-6, 0.002, 0.1, 0.03);
    const levelling = (0.03 * (50e-6) ** 3 * (tau_s / 4)) / (3 * 0.1);
    // The reference run is 4e-4 from the linear law for its own grid and amplitude.
    expect(Math.abs(rippleLeft(levelling, 0.002) - 0.77912)).toBeLessThan(5e-4);
  });

  it('stops at exp(-t_g/τ0) where the viscosity grows as exp(t/t_g) (identity)', () => {
    // A film of constant thickness whose viscosity grows: the sum that dryBlock makes, with the growth imposed a step at a time.
    const grows_s = 3;
    const tau0_s = levellingTime_s(50e-6, 0.003, 0.05, 0.03);
    const step_s = 0.01;
    let left = 1;
    for (let t = 0; t < 20 * grows_s; t += step_s) {
      const viscosity = 0.05 * Math.exp((t + step_s / 2) / grows_s);
      left *= rippleLeft((0.03 * (50e-6) ** 3 * step_s) / (3 * viscosity), 0.003);
    }
    // Mid-point rule: relative error (step/t_g)²/24 = 5e-7 of the exponent.
    expect(left).toBeCloseTo(Math.exp(-grows_s / tau0_s), 5);
  });
});

describe('volume of a drop counted by its volume', () => {
  it('is that of a log-normal volume distribution, by quadrature', () => {
    const spread = 1.8;
    const s = Math.log(spread);
    const median = 35e-6 * Math.exp(0.5 * s * s);
    let sum = 0;
    const n = 4000;
    for (let i = 0; i < n; i++) {
      const z = -10 + (20 * (i + 0.5)) / n;
      sum += (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * (20 / n) * (Math.PI / 6) * (median * Math.exp(s * z)) ** 3;
    }
    expect(weightedDrop_m3(35e-6, spread) / sum).toBeCloseTo(1, 6);
  });
});
