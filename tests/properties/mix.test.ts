import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CUPS } from '../../sim/materials/cups.ts';
import { cupTime } from '../../sim/mix/cupTime.ts';
import { cupViscosity_m2_s } from '../../sim/mix/cups.ts';
import { fillPots, mixedParts } from '../../sim/mix/mixBatch.ts';
import { parseRatio, type MixRatio } from '../../sim/mix/mixRatio.ts';
import { fitThinning, ratioForViscosity, thinnedViscosity } from '../../sim/mix/thinningLaw.ts';
import { ratioAsTyped } from '../../sim/report/ratioWords.ts';

const DENSITIES = { finish_kg_m3: 930, thinner_kg_m3: 850, retarder_kg_m3: 810 };
const ratios = fc.record({
  thinnerPerFinish: fc.oneof(fc.double({ min: 0.001, max: 9.999, noNaN: true }), fc.integer({ min: 1, max: 20 }).map((n) => 1 / n), fc.integer({ min: 1, max: 10 }), fc.constant(0)),
  retarderFraction: fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: 1, noNaN: true }), fc.constantFrom(0.05, 0.1, 0.25, 0.5)),
}).map(({ thinnerPerFinish, retarderFraction }): MixRatio => ({ thinnerPerFinish, retarderFraction: thinnerPerFinish === 0 ? 0 : retarderFraction }));

function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-8 * Math.max(1, Math.abs(b));
}

describe('mix', () => {
  it('writes a ratio so that it reads back as it was', () => {
    fc.assert(fc.property(ratios, (ratio) => {
      const back = parseRatio(ratioAsTyped(ratio), DENSITIES);
      return near(back.thinnerPerFinish, ratio.thinnerPerFinish) && near(back.retarderFraction, ratio.retarderFraction);
    }), { examples: [[{ thinnerPerFinish: 10, retarderFraction: 0.0037872991210050008 }]] });
  });

  it('reads parts by weight as the volumes that weigh so much', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 }), (finish, thinner, retarder) => {
      fc.pre((thinner + retarder) / finish < 9);
      const { finish: f, thinner: t, retarder: r } = mixedParts(1e-3, parseRatio(`${finish}:${thinner}:${retarder} by weight`, DENSITIES), DENSITIES);
      return near(t.weight_kg * finish, f.weight_kg * thinner) && near(r.weight_kg * finish, f.weight_kg * retarder);
    }));
  });

  it('adds its parts up to the batch, and pots keep the ratio', () => {
    fc.assert(fc.property(ratios, fc.double({ min: 1e-5, max: 0.05, noNaN: true }), fc.double({ min: 1e-4, max: 0.02, noNaN: true }), (ratio, total_m3, pot_m3) => {
      const { potCount, each, pours } = fillPots(total_m3, pot_m3, ratio, DENSITIES);
      const whole = mixedParts(total_m3, ratio, DENSITIES);
      expect(near(whole.finish.volume_m3 + whole.thinner.volume_m3 + whole.retarder.volume_m3, total_m3)).toBe(true);
      expect(Math.abs(each.total.volume_m3 * potCount - total_m3)).toBeLessThan(1e-12 * total_m3 + 1e-18);
      expect(each.total.volume_m3).toBeLessThanOrEqual(pot_m3 * (1 + 1e-8));
      expect((potCount - 1) * pot_m3).toBeLessThan(total_m3);
      expect(Math.abs((each.thinner.volume_m3 + each.retarder.volume_m3) / each.finish.volume_m3 - ratio.thinnerPerFinish)).toBeLessThan(1e-9);
      // The last mark is the whole pot; marks only rise.
      expect(Math.abs(pours.at(-1)!.upTo.volume_m3 - each.total.volume_m3)).toBeLessThan(1e-12);
      for (const [i, pour] of pours.entries()) if (i > 0) expect(pour.upTo.volume_m3).toBeGreaterThanOrEqual(pours[i - 1]!.upTo.volume_m3);
    }));
  });

  it('gives seconds in a cup that read back as the viscosity, or none', () => {
    fc.assert(fc.property(fc.constantFrom(...CUPS), fc.double({ min: 1e-6, max: 3e-3, noNaN: true }), (cup, viscosity_m2_s) => {
      const { seconds, fitting } = cupTime(cup, viscosity_m2_s);
      if (seconds === null) return fitting === null || (fitting !== cup && cupTime(fitting, viscosity_m2_s).seconds !== null);
      return seconds >= cup.least_s && seconds <= cup.most_s && near(cupViscosity_m2_s(cup, seconds) * 1e6, viscosity_m2_s * 1e6);
    }));
  });

  it('finds the ratio again whose viscosity it gave', () => {
    const temperature = fc.double({ min: 283, max: 305, noNaN: true });
    fc.assert(fc.property(fc.double({ min: 0.1, max: 0.9, noNaN: true }), temperature, temperature, temperature, (ratio, a_K, b_K, at_K) => {
      const law = fitThinning([{ thinnerPerFinish: 0.1, viscosity_m2_s: 2e-4, temperature_K: a_K }, { thinnerPerFinish: 1, viscosity_m2_s: 2e-5, temperature_K: b_K }], 2000, at_K);
      return near(ratioForViscosity(law, thinnedViscosity(law, ratio).viscosity_m2_s).thinnerPerFinish, ratio);
    }));
  });
});
