import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../../sim/job/demo.ts';
import { checkRule } from '../../../../sim/job/checkRule.ts';
import type { Job, SurveySpec } from '../../../../sim/job/schema.ts';
import { surveyJson } from '../../../../sim/report/survey/surveyJson.ts';
import { surveyReason } from '../../../../sim/report/survey/surveyReason.ts';
import { ruleWords } from '../../../../sim/report/survey/ruleWords.ts';
import { judgeAlone, judgeSurvey } from '../../../../sim/run/survey/judgeSurvey.ts';
import { judgeReadings } from '../../../../sim/survey/judgeReadings.ts';
import { combs, gauge, gaugeSpecs, meanEighty, NINETY_TEN, spotsAreas, spotsInMil } from '../../../helpers/surveys.ts';

const job: Job = demoJob();
const [panel] = job.part.panels;
const [coat] = job.coats;
const survey = (changes: Partial<SurveySpec>): SurveySpec => ({ id: 's', name: 'Survey', panel: panel!.id, coats: [], at: '2026-05-04T08:00Z', who: 'A finisher', rule: meanEighty(), readings: [], history: [], ...changes });
const codes = (changes: Partial<SurveySpec>) => judgeSurvey(job, survey(changes)).warnings.map(({ code }) => code);

describe('judgeSurvey', () => {
  it('takes density and solids from the coat’s mix, and says so; a stated one stands before it', () => {
    const readings: SurveySpec['readings'] = [{ kind: 'coupon', before_g: 10, after_g: 10.3, area_cm2: 100 }, { kind: 'comb', low_um: 100, high_um: 125 }];
    const { taken, judged } = judgeSurvey(job, survey({ coats: [coat!.id], readings }));
    expect(taken.dryDensity_kg_m3?.mix).toEqual(expect.any(String));
    expect(judged.readings[0]!.low_m).toBeCloseTo(0.03 / taken.dryDensity_kg_m3!.value, 12);
    expect(judged.readings[1]!.low_m).toBeCloseTo(100e-6 * taken.solidsFraction!.value, 12);
    expect(judgeSurvey(job, survey({ coats: [coat!.id], readings, dryDensity_kg_m3: 1300, solids_percent: 12 })).taken).toEqual({ dryDensity_kg_m3: { value: 1300, mix: null }, solidsFraction: { value: 0.12, mix: null } });
  });
  it('without either it names the field', () => {
    expect(() => judgeSurvey(job, survey({ readings: [{ kind: 'coupon', before_g: 1, after_g: 2, area_cm2: 1 }] }))).toThrow(/dryDensity_kg_m3 is not given/);
  });
  it('warns of gauges on open cloth, thin nominal films, places off the panel, mixed kinds, few readings, films below zero', () => {
    expect(panel!.backing).toBe('open-cloth');
    expect(codes({ readings: gaugeSpecs([100]) })).toEqual(['wrong-gauge', 'few-readings']);
    expect(codes({ rule: meanEighty({ nominal_um: 39 }) })).toContain('rule-scope');
    expect(codes({ readings: [{ kind: 'metal', dry_um: 100, x_mm: -50, y_mm: 10 }] })).toContain('off-panel');
    expect(codes({ readings: [{ kind: 'metal', dry_um: 100 }, { kind: 'micrometer', before_um: 1, after_um: 90 }] })).toContain('mixed-kinds');
    expect(codes({ readings: gaugeSpecs([-1]) })).toContain('below-zero');
    expect(codes({ readings: [{ kind: 'comb', low_um: 100 }], solids_percent: 20 })).toContain('model-limit');
    expect(codes({ readings: gaugeSpecs([100, 101, 102]), rule: spotsAreas(3, 5) })).toEqual(['wrong-gauge', 'few-readings', 'defaults-used', 'few-readings']);
  });
  it('a coat that is gone is told, a panel that is gone is refused', () => {
    expect(codes({ coats: ['gone'] })).toContain('unknown-supply');
    expect(() => judgeSurvey(job, survey({ panel: 'gone' }))).toThrow(/panel "gone" is not in the job/);
  });
  it('says enough readings where there are enough', () => {
    expect(codes({ readings: Array.from({ length: 40 }, (_, i) => ({ kind: 'micrometer' as const, before_um: 0, after_um: 100 + i })) })).toEqual([]);
  });
});

describe('the verdict in words', () => {
  it.each([
    [judgeReadings(meanEighty(), gauge(105, 98, 110, 120, 101)), 'Fails: 1 of 5 readings (20 %) lies from 80 µm to below the nominal 100 µm, and fewer than 20 % may.'],
    [judgeReadings(meanEighty(), gauge(99.96, 99.96)), 'Fails: the mean, 99.96 µm, is below 100 µm; 2 of 2 readings (100 %) lie from 80 µm to below the nominal 100 µm, and fewer than 20 % may.'],
    [judgeReadings(NINETY_TEN, gauge(80, 110)), 'Fails: 1 of 2 readings is below 90 µm (the least is 80 µm); 1 of 2 readings (50 %) lies below the nominal 100 µm, and at most 10 % may.'],
    [judgeReadings(meanEighty(), []), 'Not decided: there are no readings.'],
    [judgeReadings({ kind: 'shop', name: 'x' }, gauge(1)), 'Not decided: the rule states no limit.'],
    [judgeReadings({ kind: 'shop', name: 'x', meanMin_um: 21 }, combs(0.2, [100, 125])), 'Not decided: the mean is 20 to 25 µm, which leaves open whether it reaches 21 µm.'],
    [judgeReadings({ kind: 'shop', name: 'x', eachMin_um: 21 }, gauge(1, 2)), 'Fails: all 2 readings are below 21 µm (the least is 1 µm).'],
    [judgeReadings({ kind: 'shop', name: 'x', spread_percent: 5 }, gauge(90, 110)), 'Fails: the spread is 14.1 % of the mean, and at most 5 % may be.'],
  ])('%#', (judged, words) => {
    expect(surveyReason(judged, 'metric')).toBe(words);
  });
  it('in mil', () => {
    expect(surveyReason(judgeReadings(spotsAreas(2.5, 3, 1), spotsInMil(2.5, 2.1, 2.8, 3.1, 2.5)), 'us')).toBe('Fails: 1 of 5 spots is below 2.5 mil (lowest: spot 2, 2.1 mil); 1 of 5 spots is above 3 mil (highest: spot 4, 3.1 mil).');
  });
  it('every rule names its source and never says that anything conforms', () => {
    const rules = [meanEighty({ correction_um: 25, maximum_um: 200 }), spotsAreas(2.5, null, 5), NINETY_TEN, { kind: 'shop', name: 'Hangar 3', eachMin_um: 3 } as const];
    for (const rule of rules) {
      const { borrowed, asks, note } = ruleWords(rule, 'us');
      expect(borrowed).toMatch(/^(Rule borrowed from|Stated by the shop)/);
      expect([borrowed, ...asks, note].join(' ')).not.toMatch(/\b(conforms to|certif|airworthy|undefined|NaN)/);
    }
  });
});

describe('surveyJson', () => {
  it('holds only what JSON can, numbers from 1, films in µm', () => {
    const json = surveyJson(judgeAlone({ name: 'x', rule: meanEighty(), readings: [...gaugeSpecs([105, 98, 110, 120, 101])] }));
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    expect(json).toMatchObject({ verdict: 'fail', mean_um: 106.8, count: 5, low_um: 98, high_um: 120, spots: [], areas: [], rule: { kind: 'mean-80', nominal_um: 100 } });
    expect((json['checks'] as { check: string; readings: number[] }[])[0]).toMatchObject({ check: 'low-share', readings: [2], found: [20, 20], limit: 20 });
  });
  it('no reading: nulls, no NaN', () => {
    const json = surveyJson(judgeAlone({ name: 'x', rule: spotsAreas(1, 2), readings: [] }));
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    expect(json).toMatchObject({ verdict: 'undecided', mean_um: null, count: 0 });
  });
});

describe('checkRule', () => {
  it('fills the schema’s defaults and refuses what no film could pass', () => {
    expect(checkRule({ kind: 'mean-80', nominal_um: 100 })).toEqual(meanEighty());
    expect(() => checkRule({ kind: 'spots-areas', min_um: 30, max_um: 20 }, '--rule pa2')).toThrow(/--rule pa2: .*no film could pass/);
    expect(() => checkRule({ kind: 'mean-80', nominal_um: 0 })).toThrow(/rule: .*nominal/);
    expect(() => checkRule({ kind: 'spots-areas', min_um: 30, max_um: 20 }, 'rule', { min_um: 'LEAST', max_um: 'MOST' })).toThrow('rule: MOST is below LEAST; no film could pass');
  });
});
