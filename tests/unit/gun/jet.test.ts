import { describe, expect, it } from 'vitest';
import { capAirSpeed_m_s, JET_DIAMETER_M, jetSpeed_m_s } from '../../../sim/gun/jet.ts';

describe('air from a cap', () => {
  it('stands still without pressure, starts as √(2 p/ρ) and grows with pressure up to the speed of sound', () => {
    expect(capAirSpeed_m_s(0)).toBe(0);
    // Bernoulli with ρ = p/(R T) = 1.204 kg/m³; compressibility enters as p/(2·1.4·101325) of it: 4e-4 at 100 Pa.
    expect(capAirSpeed_m_s(100) / Math.sqrt((2 * 100 * 287.05 * 293.15) / 101325)).toBeCloseTo(1, 3);
    const speeds = [1e3, 1e4, 5e4, 9e4].map((pressure) => capAirSpeed_m_s(pressure));
    for (let i = 1; i < speeds.length; i++) expect(speeds[i]).toBeGreaterThan(speeds[i - 1]!);
    // Choked above p0/p = 1.893 (isentropic flow): √(2/2.4) of the speed of sound at rest, 343.2 m/s.
    expect(capAirSpeed_m_s(0.9 * 101325)).toBe(capAirSpeed_m_s(3 * 101325));
    expect(capAirSpeed_m_s(3 * 101325)).toBeCloseTo(Math.sqrt((1.4 * 287.05 * 293.15) / 1.2), 9);
    expect(capAirSpeed_m_s(0.88 * 101325)).toBeLessThan(capAirSpeed_m_s(3 * 101325));
  });

  it('keeps its speed in the core and falls as one over the distance beyond it, without a jump', () => {
    const core_m = 6.2 * JET_DIAMETER_M;
    expect(jetSpeed_m_s(250, 0.5 * core_m)).toBe(250);
    expect(jetSpeed_m_s(250, core_m * (1 + 1e-9))).toBeCloseTo(250, 6);
    expect(jetSpeed_m_s(250, 0.4)).toBeCloseTo(0.5 * jetSpeed_m_s(250, 0.2), 12);
  });
});
