import { describe, expect, it } from 'vitest';
import { knownWithin, movedSetUp, UNMEASURED } from '../../../sim/gun/knownWithin.ts';
import { plainSetUp } from '../../helpers/sprayCases.ts';

describe('how well a set-up is known', () => {
  const setUp = plainSetUp({}, { transfer: { efficiencyFraction: 0.6, atDistance_m: 0.2, decayLength_m: 0.6 } });

  it('is as stated, in SI', () => {
    const known = knownWithin(setUp, { width_percent: 2, beta1: 0.1, fluidRate_percent: 3, efficiency_percent: 5 });
    expect(known.width_m).toBeCloseTo(0.02 * 0.3, 12);
    expect(known.beta1).toBe(0.1);
    expect(known.fluidRate_m3_s).toBeCloseTo(0.03 * setUp.fluidRate_m3_s, 12);
    expect(known.efficiencyFraction).toBeCloseTo(0.03, 12);
    expect(known.assumed).toEqual([]);
  });

  it('is wide where nobody measured, and says which numbers those are', () => {
    const known = knownWithin(setUp, { fluidRate_percent: 0 });
    expect(known.fluidRate_m3_s).toBe(0);
    expect(known.width_m).toBeCloseTo(UNMEASURED.widthRatio * 0.3, 12);
    expect(known.assumed).toEqual(['width', 'beta1', 'efficiency']);
    expect(knownWithin(setUp, undefined).assumed).toHaveLength(4);
  });

  it('has no exponent to be unsure of where the profile has none', () => {
    const known = knownWithin(plainSetUp({ profile: { family: 'triangle' } }), undefined);
    expect(known.beta1).toBe(0);
    expect(known.assumed).not.toContain('beta1');
  });

  it('makes an absolute film of about ±30 % where nothing was measured', () => {
    expect(Math.hypot(UNMEASURED.fluidRateRatio, UNMEASURED.efficiencyRatio)).toBeCloseTo(0.3, 1);
  });
});

describe('a moved set-up', () => {
  const known = { width_m: 0.03, beta1: 0.5, fluidRate_m3_s: 1e-6, efficiencyFraction: 0.1, assumed: [] };

  it('is the set-up itself where nothing is moved', () => {
    expect(movedSetUp(plainSetUp(), known, {})).toEqual(plainSetUp());
  });

  it('moves each number by its half interval', () => {
    const plain = plainSetUp();
    const moved = movedSetUp(plain, known, { width: 1, beta1: -1, fluidRate: -1, efficiency: -1 });
    expect(moved.fan.width_m).toBeCloseTo(0.33, 12);
    expect(moved.fan.profile).toEqual({ family: 'double-beta', beta1: 2.5, beta2: 3 });
    expect(moved.fluidRate_m3_s).toBeCloseTo(plain.fluidRate_m3_s - 1e-6, 15);
    expect(moved.transfer.efficiencyFraction).toBeCloseTo(0.9, 12);
  });

  it('stretches tapers and measured places with the fan', () => {
    const flat = movedSetUp(plainSetUp({ profile: { family: 'flat-top', taper_m: 0.05 } }), known, { width: 1 });
    expect(flat.fan.profile).toEqual({ family: 'flat-top', taper_m: 0.05 * (0.33 / 0.3) });
    const table = movedSetUp(plainSetUp({ profile: { family: 'table', place_m: [-0.1, 0, 0.1], film: [0, 1, 0] } }), known, { width: -1 });
    expect(table.fan.profile).toMatchObject({ place_m: [-0.1 * 0.9, 0, 0.1 * 0.9] });
  });

  it('keeps an exponent at 1 or more', () => {
    const moved = movedSetUp(plainSetUp({ profile: { family: 'double-beta', beta1: 1.2, beta2: 3 } }), known, { beta1: -1 });
    expect(moved.fan.profile).toMatchObject({ beta1: 1 });
  });
});
