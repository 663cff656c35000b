import { describe, expect, it } from 'vitest';
import { erf } from '../../../sim/base/special.ts';
import { dryDropShare, solventKept } from '../../../sim/gun/drops.ts';
import { arrivalTable, transferEfficiency } from '../../../sim/gun/transfer.ts';
import { plainSetUp } from '../../helpers/sprayCases.ts';

const setUp = plainSetUp({}, { volumeSolidsFraction: 0.12, drops: { meanDiameter_m: 30e-6, spreadRatio: 2, solventSpeedRatio: 5.6, atViscosity_Pa_s: 0.05, atPressure_Pa: 55e3 }, transfer: { efficiencyFraction: 0.65, atDistance_m: 0.2, decayLength_m: 0.6 } });

describe('erf', () => {
  // M. Abramowitz & I.A. Stegun, Handbook of Mathematical Functions, 1964, table 7.1 (10 digits).
  it.each([[0.1, 0.112462916], [0.5, 0.5204998778], [1, 0.8427007929], [2, 0.995322265], [2.6, 0.9997639656]])('erf(%f)', (x, expected) => {
    expect(erf(x)).toBeCloseTo(expected, 9);
    expect(erf(-x)).toBe(-erf(x));
  });
  it('joins its two halves', () => {
    expect(erf(2.5 - 1e-12)).toBeCloseTo(erf(2.5 + 1e-12), 11);
    expect(erf(Infinity)).toBe(1);
    expect(erf(NaN)).toBeNaN();
  });
});

describe('what arrives', () => {
  it('falls by e over the decay length and never passes 1', () => {
    expect(transferEfficiency(setUp.transfer, 0.8)).toBeCloseTo(0.65 / Math.E, 12);
    expect(transferEfficiency({ efficiencyFraction: 1, atDistance_m: 0.2, decayLength_m: 0.5 }, 0.05)).toBe(1);
  });

  it('counts as dry the volume of drops past half solids, as a direct sum over the drops does', () => {
    const spread = Math.log(2);
    const median = 30e-6 * Math.exp(0.5 * spread * spread);
    for (const distance_m of [0.1, 0.2, 0.3, 0.5]) {
      let dry = 0;
      const count = 40_000;
      for (let i = 0; i < count; i++) {
        const z = ((i + 0.5) / count) * 16 - 8;
        const drop_m = median * Math.exp(z * spread);
        const solids = 0.12 / (0.12 + 0.88 * solventKept(distance_m, drop_m, 5.6));
        if (solids > 0.5) dry += (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * (16 / count);
      }
      // One step of the sum: 16/40000 × the normal density's 0.4.
      expect(Math.abs(dryDropShare(setUp, distance_m) - dry)).toBeLessThan(1.6e-4);
    }
  });

  it('knows the ends: no solvent speed, drops all alike', () => {
    const still = { ...setUp, drops: { ...setUp.drops, solventSpeedRatio: 0 } };
    expect(dryDropShare(still, 0.3)).toBe(0);
    const alike = { ...setUp, drops: { ...setUp.drops, spreadRatio: 1 } };
    expect(dryDropShare(alike, 0.1)).toBe(0);
    expect(dryDropShare(alike, 1.2)).toBe(1);
  });

  it('above a third of solids asks for half the solvent lost, whatever is in the cup', () => {
    const third = dryDropShare({ ...setUp, volumeSolidsFraction: 1 / 3 }, 0.2);
    expect(dryDropShare({ ...setUp, volumeSolidsFraction: 0.6 }, 0.2)).toBeCloseTo(third, 12);
    expect(dryDropShare({ ...setUp, volumeSolidsFraction: 0.25 }, 0.2)).toBeGreaterThan(0);
    expect(third).toBeLessThan(1);
  });

  it('is tabled every millimetre from 20 mm to 1.2 m', () => {
    const table = arrivalTable(setUp);
    expect(table.start_m + table.step_m * (table.transferFraction.length - 1)).toBeCloseTo(1.2, 12);
    expect(table.solventKeptFraction[180]).toBeCloseTo(0.6984, 4);
    expect(table.dryFraction[180]).toBe(dryDropShare(setUp, 0.02 + 180 * 0.001));
  });
});
