import { describe, expect, it } from 'vitest';
import { combEfficiency, foilEfficiency } from '../../../../sim/gun/card/filmPerStroke.ts';
import { strokeProfile } from '../../../../sim/gun/strokeProfile.ts';
import { plainSetUp } from '../../../helpers/sprayCases.ts';

const RATE = { value: 180e-6 / 60, within: 0 };
const LIQUID = { volumeSolidsFraction: 0.1, solidsDensity_kg_m3: 1250 };
/** 3 mL/s at 0.3 m/s lays 10 mL a metre: over 0.3 m and 4 strokes 12 mL, 1.2 mL of solids, 1.5 g; 60 % of it is 0.9 g. */
const foil = { gain_g: 0.9, gainWithin_g: 0, length_mm: 300, strokes: 4, speed_m_s: 0.3, speedWithin_percent: 0 };
const comb = { low_um: 30, high_um: 50, strokes: 1, speed_m_s: 0.3, speedWithin_percent: 0 };

describe('efficiency by a weighed foil', () => {
  it('is the solids found over the solids sprayed', () => {
    const { value, within, warnings } = foilEfficiency(foil, RATE, LIQUID);
    expect(value).toBeCloseTo(0.6, 12);
    expect(within).toBe(0);
    expect(warnings).toEqual([]);
  });

  it('carries weight, speed and fluid rate in quadrature', () => {
    const { value, within } = foilEfficiency({ ...foil, gainWithin_g: 0.018, speedWithin_percent: 10 }, { ...RATE, within: 0.05 * RATE.value }, LIQUID);
    expect(within / value).toBeCloseTo(Math.hypot(0.02, 0.1, 0.05), 12);
  });

  it('holds a little too much to all of it, and doubts next to nothing', () => {
    const much = foilEfficiency({ ...foil, gain_g: 1.55, speedWithin_percent: 10 }, RATE, LIQUID);
    expect(much.value).toBe(1);
    expect(much.warnings.map(({ text }) => text)).toEqual([expect.stringMatching(/more than left the gun.*fully dry/)]);
    const little = foilEfficiency({ ...foil, gain_g: 0.06 }, RATE, LIQUID);
    expect(little.value).toBeCloseTo(0.04, 12);
    expect(little.warnings.map(({ text }) => text)).toEqual([expect.stringMatching(/only 4\.00 % of the solids/)]);
  });

  it.each([
    ['more than left the gun', { gain_g: 2 }, /133 %.*not from 1 to 100 %.*fully dry/],
    ['nothing to speak of', { gain_g: 0.01 }, /0\.667 %/],
    ['a weight no better than itself', { gainWithin_g: 0.9 }, /gain_g = 0\.9 g is known within 0\.9 g only/],
    ['a weight that is no number', { gain_g: NaN }, /NaN/],
    ['a speed that is no number', { speed_m_s: NaN }, /NaN %/],
  ])('refuses %s', (_, put, message) => {
    expect(() => foilEfficiency({ ...foil, ...put }, RATE, LIQUID)).toThrow(message);
  });
});

describe('efficiency by a wet-film comb', () => {
  const fan = plainSetUp().fan;
  const middle_per_m = { value: strokeProfile(fan)(0), within: 0 };
  const setting = { fluidRate_m3_s: RATE, middle_per_m, volumeSolidsFraction: 0.1, solventKeptFraction: 1 };

  it('makes the film that the stroke in the middle of that fan has', () => {
    const { value, within } = combEfficiency(comb, setting);
    expect((value * (RATE.value / 0.3) * middle_per_m.value) * 1e6).toBeCloseTo(40, 9);
    // The teeth are 20 µm apart: ±10 of 40.
    expect(within / value).toBeCloseTo(0.25, 12);
  });

  it('asks for more where solvent is lost in flight, and carries speed, rate and width', () => {
    const all = combEfficiency(comb, setting);
    const part = combEfficiency({ ...comb, speedWithin_percent: 10 }, { ...setting, solventKeptFraction: 0.8, middle_per_m: { ...middle_per_m, within: 0.1 * middle_per_m.value } });
    expect(part.value / all.value).toBeCloseTo(1 / (0.1 + 0.9 * 0.8), 12);
    expect(part.within / part.value).toBeCloseTo(Math.hypot(0.25, 0.1, 0.1), 12);
  });

  it.each([
    ['teeth the wrong way round', { low_um: 50, high_um: 30 }, /low_um = 50 µm is not below high_um = 30/],
    ['one tooth', { low_um: 50, high_um: 50 }, /not below/],
    ['more than left the gun', { low_um: 200, high_um: 220 }, /of the solids would have landed/],
  ])('refuses %s', (_, put, message) => {
    expect(() => combEfficiency({ ...comb, ...put }, setting)).toThrow(message);
  });
});
