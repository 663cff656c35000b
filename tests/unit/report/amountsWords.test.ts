import { describe, expect, it } from 'vitest';
import { defaultMix } from '../../../sim/job/defaults.ts';
import { liquidText, tinsText, weightText } from '../../../sim/report/amountsWords.ts';
import { coverageSentence, coverageWorking } from '../../../sim/report/coverageWords.ts';
import { shownMoment } from '../../../sim/report/momentWords.ts';
import { afterWords, lightSentence, stepHead, stepRow } from '../../../sim/report/schemeSections.ts';
import { tinLabel } from '../../../sim/report/tinLabel.ts';
import { shownRoughPercent } from '../../../sim/report/units.ts';
import { reportScheme } from '../../../sim/run/scheme/reportScheme.ts';
import { schemeAmounts } from '../../../sim/scheme/amounts.ts';
import { coatCoverage, coverageOf } from '../../../sim/scheme/coverage.ts';
import { handPlan, SOUND_STEPS } from '../scheme/handPlan.ts';

describe('tins', () => {
  it.each([
    [1000, '1 L', '1 L (1.06 US qt)'],
    [5000, '5 L', '5 L (1.32 US gal)'],
    [250, '250 mL', '250 mL (8.45 fl oz US)'],
    [375, '375 mL', '375 mL (12.7 fl oz US)'],
    // 140 L are 36.98 US gal: a round number of litres is metric.
    [140000, '140 L', '140 L (37 US gal)'],
    [946, '1 US qt (946 mL)', '1 US qt'],
    [946.352946, '1 US qt (946 mL)', '1 US qt'],
    [473, '1 US pt (473 mL)', '1 US pt'],
    [3785, '1 US gal (3.78 L)', '1 US gal'],
    [4546.09, '1 imp gal (4.55 L)', '1 imp gal (1.2 US gal)'],
  ])('of %d mL keep the label they are sold by: %s; %s for a US reader', (size_mL, metric, us) => {
    expect([tinLabel(size_mL * 1e-6, 'metric'), tinLabel(size_mL * 1e-6, 'us')]).toEqual([metric, us]);
  });

  it('are counted by their labels', () => {
    const choice = { need_m3: 0, held_m3: 0, over_m3: 0, cost: null, rule: 'least cost', tins: [{ size_m3: 5e-3, price: 1, count: 1 }, { size_m3: 1e-3, price: 1, count: 2 }] } as const;
    expect(tinsText(choice, 'metric')).toBe('1 × 5 L and 2 × 1 L');
    expect(tinsText(choice, 'us')).toBe('1 × 5 L (1.32 US gal) and 2 × 1 L (1.06 US qt)');
  });
});

describe('ranges', () => {
  it('have one unit, that of the value', () => {
    const liquid = { value: 804e-6, low: 624e-6, high: 1010e-6 };
    expect(liquidText(liquid, 'us')).toBe('27.2 fl oz US (21.1 to 34.2)');
    expect(liquidText(liquid, 'metric')).toBe('804 mL (624 to 1010)');
    expect(liquidText({ value: 1.2e-3, low: 0.9e-3, high: 1.5e-3 }, 'metric')).toBe('1.2 L (0.9 to 1.5)');
    expect(weightText({ value: 0.95, low: 0.8, high: 1.1 }, 'metric')).toBe('950 g (800 to 1100)');
    expect(weightText({ value: 0.45359237, low: 0.45359237, high: 0.45359237 }, 'us')).toBe('1 lb');
  });
});

describe('what is known to two figures is shown to two', () => {
  it('a moment: the workshop’s unit first, its ends in that unit, whichever way it turns', () => {
    // 0.109 kg m · 9.80665 m/s² = 1.07 N m; one in lb is 0.4536 kg · 0.0254 m.
    const moment = { value: 0.109, low: 0.0833, high: 0.134 };
    expect(shownMoment(moment, 'metric')).toBe('1.1 N m, from 0.82 to 1.3 as the weight is known (9.5 in lb, 110000 g mm)');
    expect(shownMoment(moment, 'us')).toBe('9.5 in lb, from 7.2 to 12 as the weight is known (1.1 N m, 110000 g mm)');
    expect(shownMoment({ value: -0.109, low: -0.0833, high: -0.134 }, 'metric')).toBe(shownMoment(moment, 'metric'));
    expect(shownMoment({ value: 0.1, low: 0.1, high: 0.1 }, 'metric')).toBe('0.98 N m (8.7 in lb, 100000 g mm)');
  });

  it('light through aluminium', () => {
    expect([0.0304, 0.344, 0.0004, 0.0625, 0.996, 0].map(shownRoughPercent)).toEqual(['3 %', '34 %', '<0.1 %', '6.3 %', '99.6 %', '0 %']);
    expect(lightSentence(reportScheme(handPlan(SOUND_STEPS)), 'metric')).toMatch(/may let (<0\.1|[\d.]{1,3}) % of light through \((<0\.1|[\d.]{1,3}) % to [\d.]{1,3} %: flakes differ\)/);
  });
});

it('a step says what lies there after it, dry and added, apart from its own film', () => {
  const step = { after_m: { value: 58e-6, low: 50e-6, high: 66e-6 }, added_kg: { value: 0.094, low: 0.08, high: 0.11 } };
  expect(afterWords(step, 'metric')).toBe('after it: 58 µm dry, 94 g added');
  expect(afterWords(step, 'us')).toBe('after it: 2.28 mil dry, 0.207 lb added');
  const plan = handPlan([{ kind: 'brush', dry_um: 20 }, { kind: 'brush', dry_um: 30 }]);
  expect(stepHead('metric').slice(0, 4)).toEqual(['step', 'its own dry µm', 'after it: dry', 'added']);
  // 50 µm of clear solids at 1250 kg/m³ on 2 m².
  expect(stepRow(plan.steps[1]!, 1, 'metric').slice(1, 4)).toEqual(['30', '50 µm', '125 g']);
});

describe('coverage', () => {
  const [coat] = schemeAmounts(handPlan([{ kind: 'spray' }]), [defaultMix('m', 'a mix')]).coats;
  const { step, coat: { mix } } = coat!;

  it('of a planned coat takes its mix and its area', () => {
    const reading = { used_m3: 5e-4, gained_kg: 0.02 };
    const direct = coverageOf({ ...reading, area_m2: step.area_m2, volumeSolidsFraction: mix.volumeSolidsFraction, solidsDensity_kg_m3: mix.finish.solidsDensity_kg_m3.value });
    expect(coatCoverage(coat!, reading.used_m3, reading.gained_kg)).toEqual(direct);
  });

  it('says what landed, or that it cannot be; without a gain there is no figure of nothing lost', () => {
    const said = (gained_kg: number): string => coverageSentence(coatCoverage(coat!, 5e-4, gained_kg), coat!, 'metric');
    expect(said(0.02)).toMatch(/% of the solids used are on the part, 8 µm dry on average; .* where nothing lost would be [\d.]+ m²\/L at that film\.$/);
    expect(said(0)).toMatch(/A unit of volume covered 4 m²\/L\.$/);
    expect(said(2)).toMatch(/^That cannot be: the part would hold \d+ % of the solids used/);
    expect(coverageWorking(coat!, 'metric')).toContain('(1250 kg/m³) = solids on the part');
  });
});
