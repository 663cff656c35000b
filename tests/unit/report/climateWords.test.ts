import { describe, expect, it } from 'vitest';
import { airAnswer } from '../../../sim/air/airAnswer.ts';
import { CLIMATE_RULES } from '../../../sim/air/climateRules.ts';
import { climateVerdict } from '../../../sim/air/climateVerdict.ts';
import { makeAir } from '../../../sim/air/moistAir.ts';
import { genericMixSpec } from '../../../sim/mix/changedMixSpec.ts';
import { makeMix } from '../../../sim/mix/makeMix.ts';
import { climateSentence, ruleVerdictWords, ruleWords } from '../../../sim/report/climateWords.ts';

const K = 273.15;

function told(temperature_C: number, humidity_percent: number, surface_C: number | null = null) {
  const air = makeAir({ temperature_C, humidity_percent, altitude_m: 0, speed_m_s: 0.3, ceiling_C: 32.2 }, '/air');
  const answer = airAnswer(air, { mix: makeMix(genericMixSpec('clear-dope', 'general', 1), '/mix'), faces: 2, ceiling_K: 32.2 + K, retarded: [] });
  const verdict = climateVerdict(answer, surface_C === null ? null : surface_C + K);
  return { verdict, us: climateSentence(verdict, answer, 'us'), metric: climateSentence(verdict, answer, 'metric') };
}

describe('climate words', () => {
  it('states each rule in both systems', () => {
    const rules = Object.fromEntries(CLIMATE_RULES.map((rule) => [rule.id, [ruleWords(rule, 'us'), ruleWords(rule, 'metric')]]));
    expect(rules).toMatchObject({
      circular: ['air from 65 °F to 75 °F; humidity below 65 %', 'air from 18.3 °C to 23.9 °C; humidity below 65 %'],
      army: ['air from 50 °F to 90 °F; humidity from 40 % to 75 %', 'air from 10 °C to 32.2 °C; humidity from 40 % to 75 %'],
      handbook: ['air from 60 °F to 95 °F; humidity at most 80 %', 'air from 15.6 °C to 35 °C; humidity at most 80 %'],
      surface: ['surface at least 5.4 °F above the dew point; humidity below 85 %', 'surface at least 3 °C above the dew point; humidity below 85 %'],
    });
  });

  it('says a go with its margin', () => {
    expect(told(21.1, 45).metric).toMatch(/^Go: 21\.1 °C and 45 % humidity are within all that could be checked, and the wet film stays \d\.\d °C above the dew point\.$/);
    expect(told(21.1, 45, 21).us).toMatch(/within all that count, and the wet film stays \d\.\d °F, the surface 2\d\.\d °F above the dew point/);
  });

  it('says why to wait, the worst first', () => {
    expect(told(12, 80, 7).metric).toMatch(/^Wait: the air, 12\.0 °C, is colder than 15\.6 °C; the humidity, 80 %, is above 75 %; the surface is 1\.\d °C below the dew point, so water stands on it; the wet film falls \d\.\d °C below the dew point, so it can blush\.$/);
  });

  it('keeps quiet on a surface that nobody measured', () => {
    const { verdict } = told(21.1, 45);
    const surface = verdict.rules.find(({ rule }) => rule.id === 'surface')!;
    expect(ruleVerdictWords(surface, 'metric')).toBe('Not known: the part’s surface was not measured.');
  });
});
