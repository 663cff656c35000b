import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../sim/job/demo.ts';
import { schemeJson } from '../../../sim/report/schemeJson.ts';
import { schemeFindingWords } from '../../../sim/report/schemeRuleWords.ts';
import { layerSums, spreadWords } from '../../../sim/report/schemeSections.ts';
import { schemeText } from '../../../sim/report/schemeText.ts';
import { shownPaste } from '../../../sim/report/pasteWords.ts';
import { stepReason } from '../../../sim/report/schemeWords.ts';
import { planScheme } from '../../../sim/run/scheme/planScheme.ts';
import { reportScheme } from '../../../sim/run/scheme/reportScheme.ts';
import { RULE_SOURCES, type SchemeFinding } from '../../../sim/scheme/finding.ts';
import { schemeFindings } from '../../../sim/scheme/schemeRules.ts';
import { changedStep, handPlan, SOUND_STEPS } from '../scheme/handPlan.ts';

const report = reportScheme(planScheme(demoJob()));
const flat = (text: string): string => text.replaceAll(/\s+/g, ' ');
const first = (findings: readonly SchemeFinding[]): SchemeFinding => findings[0] as SchemeFinding;

describe('words of a scheme', () => {
  it('gives paste, film and spread in both systems', () => {
    expect([shownPaste(22.5, 'metric'), shownPaste(22.47, 'us')]).toEqual(['22.5 g/L', '3 oz (weight)/US gal']);
    expect(spreadWords({ value: 25.4e-6, low: 12.7e-6, high: 50.8e-6 }, 'film', 'us')).toBe('1 mil (0.5 to 2)');
    expect(spreadWords({ value: 1e-6, low: 1e-6, high: 1e-6 }, 'film', 'metric')).toBe('1 µm');
  });

  it('says what was found with its figures, and what to do, in the units of the reader', () => {
    const paste = first(schemeFindings(handPlan(changedStep('Aluminium 1', { paste_g_L: 30 })), 1));
    expect(schemeFindingWords(paste, 'metric')).toMatchObject({ title: 'Too much aluminium paste', found: '30 g/L of unthinned finish, and the most is 22.5 g/L.' });
    expect(schemeFindingWords(paste, 'us').found).toBe('4.01 oz (weight)/US gal of unthinned finish, and the most is 3 oz (weight)/US gal.');
    const wet = first(schemeFindings(handPlan(changedStep('Clear 3', { wait_h: 0.1 })), 1));
    expect(schemeFindingWords(wet, 'metric').found).toBe('“Aluminium 1” begins 6 min after this coat, which is dry to touch after 10 min in this air.');
  });

  it('says over which ground a colour is judged, and that an aluminium one is assumed', () => {
    const cream = { id: 'cream', name: 'Cream', reflectance_percent: 78, scatter_per_mm: 90, bleeds: false };
    const over = reportScheme(handPlan([{ kind: 'spray', layer: 'aluminium' }, { kind: 'spray', layer: 'colour', colour: cream, dry_um: 5 }], { clearCoats: 0 }));
    expect(flat(schemeText(over, 'metric'))).toContain('Cream over aluminium, taken as 55 % bright, assumed: 1 coat');
    expect(schemeFindingWords(over.findings.find(({ rule }) => rule === 'shows-through')!, 'metric').found).toMatch(/^Cream has 5 µm dry in all over aluminium, taken as 55 % bright, assumed, contrast/);
    expect(JSON.stringify(schemeJson(over, 'metric'))).toContain('"overAluminium":{"taken_percent":55');
  });

  it('has a source for every rule, and no verdict of airworthiness anywhere', () => {
    expect(Object.values(RULE_SOURCES).filter((source) => source.length < 10)).toEqual([]);
    expect(schemeText(report, 'metric').match(/airworthy/g)).toEqual(['airworthy']);
    expect(flat(schemeText(report, 'metric'))).toContain('never calls a room safe, a booth legal or a repair airworthy');
  });

  it('says why a coat is there', () => {
    expect(stepReason(report.plan.steps[5]!.spec)).toContain('keep light');
    expect(stepReason(report.plan.steps[0]!.spec)).toContain('Brushed, it is worked into the cloth');
  });
});

describe('the ledger', () => {
  it('adds up: layers less sanding, with what is set on, are the weight at the end', () => {
    const { steps } = report.plan;
    const film_kg = layerSums(report.plan).reduce((sum, { weight_kg }) => sum + weight_kg, 0);
    const sand = steps[6]!;
    const sanded_kg = sand.added_kg.value - steps[5]!.added_kg.value;
    const tapes_kg = 0.095;
    expect(film_kg + sanded_kg + tapes_kg).toBeCloseTo(steps.at(-1)!.added_kg.value, 12);
    expect(layerSums(report.plan).map(({ layer, coats }) => [layer, coats])).toEqual([['clear', 4], ['aluminium', 2], ['colour', 4]]);
  });
});

describe('text and JSON', () => {
  it('print every step with its source, the definitions, and what is not looked into', () => {
    const text = flat(schemeText(report, 'metric'));
    for (const { spec } of report.plan.steps) expect(text).toContain(flat(spec.name));
    for (const words of ['What a coat is', 'Where each figure comes from', 'Not looked into', 'Leaving a coat out', `limit ${report.plan.scheme.most_g_m2} g/m²`, '46 lb/in is the floor']) expect(text).toContain(words);
    expect(flat(schemeText(report, 'us'))).toContain('oz/yd²');
  });

  it('says so where nothing is found', () => {
    expect(schemeText(reportScheme(handPlan(SOUND_STEPS)), 'metric')).toContain('find nothing against it');
  });

  it('give the same figures', () => {
    const json = JSON.parse(JSON.stringify(schemeJson(report, 'metric'))) as { steps: { after_um: number; afterHigh_um: number; coat: { dry_um: number } | null }[]; findings: { rule: string; title: string }[]; strength: { floor_lb_in: number }[] };
    expect(json.steps).toHaveLength(14);
    expect(json.steps.at(-1)!.after_um).toBeCloseTo(report.plan.steps.at(-1)!.after_m.value * 1e6, 6);
    expect(json.steps[2]!.coat).toBeNull();
    expect(json.findings.map(({ rule }) => rule)).toEqual(report.findings.map(({ rule }) => rule));
    expect(json.strength.map(({ floor_lb_in }) => floor_lb_in)).toEqual([56, 45.5, 35]);
  });
});
