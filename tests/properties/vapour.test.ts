import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { explosiveAir_m3, exposureAir_m3 } from '../../sim/air/dilution.ts';
import { vapourCourse } from '../../sim/air/roomVapour.ts';
import { explosiveLimits, vapourInRoom, type LiquidPart } from '../../sim/air/vapour.ts';
import { SOLVENTS } from '../../sim/materials/solvents.ts';

const air = fc.record({ temperature_K: fc.double({ min: 260, max: 320, noNaN: true }), pressure_Pa: fc.double({ min: 6e4, max: 1.05e5, noNaN: true }) });
const liquids: fc.Arbitrary<LiquidPart[]> = fc
  .uniqueArray(fc.record({ solvent: fc.constantFrom(...SOLVENTS), liquid_m3: fc.double({ min: 1e-6, max: 0.05, noNaN: true }) }), { minLength: 1, maxLength: 6, selector: ({ solvent }) => solvent.id });
const room_m3 = fc.double({ min: 1, max: 1e5, noNaN: true });

function near(a: number, b: number): void {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(a), Math.abs(b)));
}

describe('vapour', () => {
  it('doubles with the liquid and halves with the room', () => {
    fc.assert(fc.property(liquids, room_m3, air, (parts, volume_m3, about) => {
      const once = vapourInRoom(parts, volume_m3, about);
      const twice = vapourInRoom(parts.map((part) => ({ ...part, liquid_m3: 2 * part.liquid_m3 })), volume_m3, about);
      near(twice.lelFraction, 2 * once.lelFraction);
      near(twice.timesLimit ?? 0, 2 * (once.timesLimit ?? 0));
      near(explosiveAir_m3(twice.parts, about), 2 * explosiveAir_m3(once.parts, about));
      near(exposureAir_m3(twice.parts, about, 4), 2 * exposureAir_m3(once.parts, about, 4));
      if (volume_m3 <= 5e4) near(vapourInRoom(parts, 2 * volume_m3, about).lelFraction, once.lelFraction / 2);
    }));
  });

  it('has a blend whose limit lies between the least and the most of its parts, and whose share is its air over that limit', () => {
    fc.assert(fc.property(liquids, room_m3, air, (parts, volume_m3, about) => {
      const { blendLel, lelFraction, airFraction } = vapourInRoom(parts, volume_m3, about);
      const each = parts.map(({ solvent }) => explosiveLimits(solvent)[0]!.fraction);
      expect(blendLel).toBeGreaterThanOrEqual(Math.min(...each) * (1 - 1e-12));
      expect(blendLel).toBeLessThanOrEqual(Math.max(...each) * (1 + 1e-12));
      near(lelFraction, airFraction / blendLel);
    }));
  });

  it('asks for more air by the exposure limits than by a quarter of the explosive one', () => {
    fc.assert(fc.property(liquids, air, (parts, about) => {
      const limited = parts.filter(({ solvent }) => solvent.oshaPel_ppm !== null);
      if (limited.length > 0) expect(exposureAir_m3(limited, about, 1)).toBeGreaterThan(explosiveAir_m3(limited, about));
    }));
  });

  it('never has less than nothing in the air, and loses none of it', () => {
    const sources = fc.array(fc.oneof(fc.constant(0), fc.double({ min: 1e-12, max: 0.5, noNaN: true })), { minLength: 1, maxLength: 80 });
    const room = fc.record({ volume_m3: room_m3, fresh_m3_s: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 300, noNaN: true })), mixing: fc.double({ min: 1, max: 10, noNaN: true }) });
    fc.assert(fc.property(sources, room, (vapour_m3, where) => {
      const { solvents, lelFraction } = vapourCourse([{ solvent: SOLVENTS[0]!, vapour_m3: Float64Array.from(vapour_m3) }], 60, where);
      const [{ airFraction, entered_m3, left_m3, there_m3 }] = solvents as [typeof solvents[number]];
      expect(Math.min(...airFraction, ...lelFraction, left_m3)).toBeGreaterThanOrEqual(0);
      expect(Math.abs(entered_m3 - left_m3 - there_m3)).toBeLessThanOrEqual(1e-9 * entered_m3);
    }));
  });
});
