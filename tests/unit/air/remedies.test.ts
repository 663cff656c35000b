import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { climateVerdict } from '../../../sim/air/climateVerdict.ts';
import { filmIn } from '../../../sim/air/dayVerdicts.ts';
import { airAdvice } from '../../../sim/run/scheme/airAdvice.ts';
import type { HourSpec } from '../../../sim/job/schema.ts';
import { genericMixSpec } from '../../../sim/mix/changedMixSpec.ts';
import { noRemedyWords, remedyHead, remedyTail } from '../../../sim/report/remedyWords.ts';

const K = 273.15;
const general = genericMixSpec('clear-dope', 'general', 1);

function advice(temperature_C: number, humidity_percent: number, { ceiling_C = 32, surface_C, hours = [], mix = general }: { ceiling_C?: number; surface_C?: number; hours?: HourSpec[]; mix?: typeof general } = {}) {
  return airAdvice({ air: { temperature_C, humidity_percent, altitude_m: 0, speed_m_s: 0.3, ceiling_C }, mix, pointer: '/mix', faces: 2, surface_K: surface_C === undefined ? null : surface_C + K, hours, minute: null });
}

describe('remedies', () => {
  it('has nothing to mend where it goes', () => {
    expect(advice(21.1, 45).remedies).toMatchObject({ now: { verdict: 'go' }, found: [] });
  });

  it('warms the same air just enough', () => {
    const { found } = advice(18, 70).remedies;
    const warm = found.find(({ kind, reaches }) => kind === 'warm' && reaches === 'go')!;
    expect(warm.air.temperature_K * 10 - K * 10).toBeCloseTo(Math.round(warm.air.temperature_K * 10 - K * 10), 6);
    const { answer } = advice(18, 70);
    expect(warm.air.humidityRatio).toBe(answer.air.humidityRatio);
    // A tenth of a degree less does not do.
    const less = airAdvice({ air: { temperature_C: warm.air.temperature_K - K - 0.1, humidity_percent: warm.air.relativeHumidityFraction * 100 * 1.006, altitude_m: 0, speed_m_s: 0.3, ceiling_C: 32 }, mix: general, pointer: '/mix', faces: 2, surface_K: null, hours: [], minute: null });
    expect(less.remedies.now.verdict).not.toBe('go');
    expect(warm.evaporationRatio).toBeLessThan(1);
    expect(warm.waitsRatio).toBeLessThan(1);
  });

  it('finds retarder where it is enough, and what it costs', () => {
    const { found } = advice(21.1, 53.5).remedies;
    const retard = found.find(({ kind }) => kind === 'retard')!;
    expect(retard.reaches).toBe('go');
    expect(retard.evaporationRatio).toBeGreaterThan(1);
    expect(retard.waitsRatio).toBe(1);
    expect(remedyHead(retard, 'metric', 0)).toMatch(/^Use (5|10|15|20|25) % retarder$/);
    expect(remedyTail(retard, 'metric')).toMatch(/n-butyl alcohol.*of the thinner\. The first evaporation takes 1\.\d+ times as long as now \(model\); the trade’s rule leaves the waits as they are\. The retarder itself leaves last/);
  });

  it('waits for an hour that goes', () => {
    const hours = [{ at: '2026-05-04T08:00', temperature_C: 15, humidity_percent: 85 }, { at: '2026-05-04T14:00', temperature_C: 22, humidity_percent: 45 }];
    const { found } = advice(15, 85, { hours }).remedies;
    const later = found.filter(({ kind }) => kind === 'later');
    expect(later.map(({ reaches }) => reaches)).toContain('go');
    expect(remedyHead(later.at(-1)!, 'us', later.at(-1)!.minute!)).toMatch(/^Wait until 1[234]:00$/);
  });

  it('joins warmth and retarder where neither alone will do', () => {
    const { found } = advice(21.1, 55.2, { ceiling_C: 22 }).remedies;
    expect(found.filter(({ kind }) => kind === 'warm' || kind === 'retard').every(({ reaches }) => reaches === 'care')).toBe(true);
    const pair = found.find(({ kind }) => kind === 'warm-retard')!;
    expect(pair.reaches).toBe('go');
    expect(remedyHead(pair, 'metric', 0)).toMatch(/^Warm the room to 2\d\.\d °C and use \d+ % retarder$/);
  });

  it('says plainly where nothing up to the ceiling helps', () => {
    const hot = advice(30, 75);
    expect(hot.remedies.found).toEqual([]);
    expect(noRemedyWords(hot.remedies, 'metric')).toBe('Nothing that was tried makes it go: warmth up to the ceiling of 32.0 °C, retarder up to 25 % of the thinner, alone and with retarder.');
    expect(noRemedyWords(advice(34, 40, { ceiling_C: 60 }).remedies, 'us')).toMatch(/the ceiling of 90\.0 °F/);
  });

  it('lets a cold part be warmed with the room, and says how warm', () => {
    const { found, now } = advice(20, 50, { surface_C: 10 }).remedies;
    expect(now.verdict).toBe('wait');
    const warm = found.find(({ kind }) => kind === 'warm')!;
    // Dew point 9.27 °C (ASHRAE) and 3 °C.
    expect(warm.surfaceLeast_K! - K).toBeCloseTo(12.27, 2);
    expect(remedyTail(warm, 'metric')).toContain('the part itself must then be 12.3 °C or warmer');
  });

  it('leaves an unthinned mix without retarder', () => {
    expect(advice(18, 70, { mix: { ...general, thinnerPerFinish: 0 } }).remedies.tried.mostRetarderFraction).toBeNull();
  });

  it('gives what it promises when it is applied, and never above the ceiling', () => {
    fc.assert(fc.property(fc.double({ min: 5, max: 34, noNaN: true }), fc.double({ min: 20, max: 95, noNaN: true }), fc.double({ min: 20, max: 40, noNaN: true }), fc.option(fc.double({ min: 0, max: 30, noNaN: true }), { nil: undefined }), (celsius, percent, ceiling_C, surface_C) => {
      const { answer, remedies } = advice(celsius, percent, { ceiling_C, ...(surface_C === undefined ? {} : { surface_C }) });
      const worth = { go: 0, care: 1, wait: 2 };
      for (const { air, mix, reaches, surfaceLeast_K } of remedies.found) {
        expect(worth[reaches]).toBeLessThan(worth[remedies.now.verdict]);
        expect(air.temperature_K).toBeLessThanOrEqual(Math.min(ceiling_C, 32.3) + K + 1e-6);
        expect(Math.abs(air.dewPoint_K - answer.air.dewPoint_K)).toBeLessThan(0.003);
        const again = climateVerdict(filmIn(air, { mix, faces: 2, ceiling_K: ceiling_C + K }), surface_C === undefined ? null : Math.max(surface_C + K, (surfaceLeast_K ?? 0) + 0.001));
        expect(again.verdict).toBe(reaches);
      }
    }), { numRuns: 40 });
  });
});
