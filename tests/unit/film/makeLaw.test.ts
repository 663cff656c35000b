import { describe, expect, it } from 'vitest';
import { viscosityOf } from '../../../sim/film/law.ts';
import { TOUCH_DRY_VISCOSITY_PA_S } from '../../../sim/film/makeLaw.ts';
import { plainLaw } from '../../helpers/filmCases.ts';

const viscosity = (solids: number, temperature_K = 294.15) => 0.03 * Math.exp(20.0375 * (solids - 0.125) + 2000 * (1 / temperature_K - 1 / 294.15));
const law = plainLaw({ viscosity });

describe('the law of a film', () => {
  it('sets where the viscosity reaches touch-dry, never above 95 % of solids', () => {
    expect(viscosity(law.setFraction) / TOUCH_DRY_VISCOSITY_PA_S).toBeCloseTo(1, 9);
    expect(plainLaw({ viscosity: () => 0.1 }).setFraction).toBeCloseTo(0.95, 9);
    expect(plainLaw({ viscosity: () => 0.1 }).recoatFraction).toBeCloseTo(0.95, 9);
  });

  it('reads viscosity off its tables to 0.25 % in solids and as much for a 64th of a kelvin', () => {
    for (let i = 0; i <= 100; i++) {
      const [solids, temperature_K] = [0.0061 * i, 270 + 0.437 * i];
      // Half a node: exp(20.04/8192) = 1.0025; 2000/T² of 1/64 K = 4e-4.
      expect(Math.abs(viscosityOf(law, solids, temperature_K) / viscosity(solids, temperature_K) - 1)).toBeLessThan(0.0025 + 5e-4);
    }
  });

  it('holds the ends of its table of temperature', () => {
    expect(viscosityOf(law, 0.2, 150)).toBe(viscosityOf(law, 0.2, law.start_K));
    expect(Number.isFinite(viscosityOf(law, 0.2, 900))).toBe(true);
  });

  it('pulls nowhere on a level panel, face up or face down', () => {
    for (const tilt_rad of [0, Math.PI]) {
      const level = plainLaw({ tilt_rad, down_rad: 1 });
      expect([level.gravityX_m_s2, level.gravityY_m_s2]).toEqual([0, 0]);
    }
  });
});
