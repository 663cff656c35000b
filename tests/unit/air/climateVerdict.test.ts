import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airAnswer } from '../../../sim/air/airAnswer.ts';
import type { ClimateRuleId } from '../../../sim/air/climateRules.ts';
import { climateVerdict } from '../../../sim/air/climateVerdict.ts';
import { makeAir } from '../../../sim/air/moistAir.ts';
import { genericMixSpec } from '../../../sim/mix/changedMixSpec.ts';
import { makeMix } from '../../../sim/mix/makeMix.ts';

const K = 273.15;
const mixes = { general: makeMix(genericMixSpec('clear-dope', 'general', 1), '/mix'), retarded: makeMix(genericMixSpec('clear-dope', 'retarded', 1), '/mix') };

function verdict(temperature_C: number, humidity_percent: number, { thinner = 'retarded', surface_C = null, ceiling_C = 32.2 }: { thinner?: keyof typeof mixes; surface_C?: number | null; ceiling_C?: number } = {}) {
  const air = makeAir({ temperature_C, humidity_percent, altitude_m: 0, speed_m_s: 0.3, ceiling_C }, '/air');
  return climateVerdict(airAnswer(air, { mix: mixes[thinner], faces: 2, ceiling_K: ceiling_C + K, retarded: [] }), surface_C === null ? null : surface_C + K);
}

/** The windows alone: a film well clear of the dew point. */
function clearVerdict(temperature_C: number, humidity_percent: number) {
  const air = makeAir({ temperature_C, humidity_percent, altitude_m: 0, speed_m_s: 0.3, ceiling_C: 32.2 }, '/air');
  const answer = airAnswer(air, { mix: mixes.retarded, faces: 2, ceiling_K: 32.2 + K, retarded: [] });
  return climateVerdict({ ...answer, blushMargin_K: 5 }, null).verdict;
}

function said(of: ReturnType<typeof verdict>, id: ClimateRuleId): string {
  return of.rules.find(({ rule }) => rule.id === id)!.verdict;
}

describe('climateVerdict', () => {
  it.each<[number, number, string]>([
    // Both edges of 65 to 75 °F as people type them.
    [18.3, 50, 'go'], [23.9, 50, 'go'], [21.1, 64.9, 'go'], [21.1, 65, 'care'],
    [18.2, 50, 'care'], [24, 50, 'care'], [15.6, 50, 'care'], [15.5, 50, 'wait'], [32.2, 30, 'care'],
    [21.1, 75, 'care'], [21.1, 75.1, 'wait'],
    // The army's lower edge of humidity stands beside and does not count.
    [21.1, 30, 'go'],
  ])('reads air as a film that does not chill would: %d °C and %d percent is %s', (celsius, percent, expected) => {
    expect(clearVerdict(celsius, percent)).toBe(expected);
  });

  it('lets each rule speak for itself', () => {
    const dry = verdict(21.1, 30);
    expect([said(dry, 'circular'), said(dry, 'army'), said(dry, 'handbook'), said(dry, 'surface'), said(dry, 'film')]).toEqual(['go', 'wait', 'go', 'unknown', 'go']);
    const cool = verdict(12, 50);
    expect([said(cool, 'circular'), said(cool, 'army'), said(cool, 'handbook')]).toEqual(['care', 'go', 'wait']);
    expect(said(verdict(34, 40), 'handbook')).toBe('go');
  });

  it('waits where the film is colder than the dew point, in air that the circular calls ideal', () => {
    const damp = verdict(21.1, 62, { thinner: 'general' });
    expect(said(damp, 'circular')).toBe('go');
    expect(damp.verdict).toBe('wait');
    expect(damp.reasons).toMatchObject([{ of: 'blushMargin', is: 'low', limit: 0, verdict: 'wait' }]);
    expect(damp.reasons[0]!.value).toBeLessThan(0);
  });

  it('asks for care where the film is barely clear', () => {
    // The general thinner blushes from about 55 %: at 53 % it is half a degree clear.
    const near = verdict(21.1, 53, { thinner: 'general' });
    expect(near.verdict).toBe('care');
    expect(near.reasons).toMatchObject([{ of: 'blushMargin', limit: 1, verdict: 'care' }]);
  });

  it('counts a cold surface, and only one that was measured', () => {
    expect(said(verdict(21.1, 60, { surface_C: 15 }), 'surface')).toBe('wait');
    expect(verdict(21.1, 60, { surface_C: 15 }).verdict).toBe('wait');
    expect(said(verdict(21.1, 60, { surface_C: 20 }), 'surface')).toBe('go');
    expect(verdict(21.1, 60).surfaceMargin_K).toBeNull();
    expect(verdict(20, 50, { surface_C: 20 }).surfaceMargin_K).toBeCloseTo(20 - 9.27, 2);
    // Wet air fails it without a surface too.
    expect(said(verdict(21.1, 90), 'surface')).toBe('wait');
  });

  it('never says better than wait above the ceiling', () => {
    fc.assert(fc.property(fc.double({ min: 15, max: 32, noNaN: true }), fc.double({ min: 0.1, max: 28, noNaN: true }), fc.double({ min: 5, max: 90, noNaN: true }), (ceiling_C, over_C, humidity_percent) => {
      expect(verdict(ceiling_C + over_C, humidity_percent, { ceiling_C }).verdict).toBe('wait');
    }), { numRuns: 100 });
    expect(verdict(33, 30, { ceiling_C: 60 }).verdict).toBe('wait');
  });
});
