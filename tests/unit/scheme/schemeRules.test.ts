import { describe, expect, it } from 'vitest';
import type { ColourSpec } from '../../../sim/job/schema.ts';
import { ALUMINIUM_REFLECTANCE } from '../../../sim/materials/aluminiumFilm.ts';
import type { SchemeRule } from '../../../sim/scheme/finding.ts';
import { contrastOver } from '../../../sim/scheme/hiding.ts';
import { hidingRows } from '../../../sim/scheme/hidingRows.ts';
import { schemeFindings } from '../../../sim/scheme/schemeRules.ts';
import { changedStep, handPlan, SOUND_STEPS, without, type HandStep } from './handPlan.ts';

type Change = Parameters<typeof handPlan>[1];

const CREAM: ColourSpec = { id: 'cream', name: 'Cream', reflectance_percent: 78, scatter_per_mm: 90, bleeds: false };
const BLUE: ColourSpec = { id: 'blue', name: 'Dark blue', reflectance_percent: 6, scatter_per_mm: 25, bleeds: false };
const MAROON: ColourSpec = { id: 'maroon', name: 'Maroon', reflectance_percent: 8, scatter_per_mm: 40, bleeds: true };
const NO_FABRIC: Change = { clearCoats: 0 };

function rules(steps: readonly HandStep[], scheme: Change = {}, waitRatio = 1): [SchemeRule, 'stop' | 'doubt', number][] {
  return schemeFindings(handPlan(steps, scheme), waitRatio).map(({ rule, severity, stepIndex }) => [rule, severity, stepIndex]);
}

const spray = (step: Partial<HandStep> = {}): HandStep => ({ kind: 'spray', layer: 'colour', ...step });

it('has nothing against a sound scheme', () => {
  expect(rules(SOUND_STEPS)).toEqual([]);
});

describe('coats and their order', () => {
  it('counts whole clear coats: over tapes alone is none', () => {
    expect(rules(changedStep('Clear 3', { share_percent: 20 }))).toEqual([['few-clear', 'stop', 1]]);
    expect(rules(SOUND_STEPS, { clearCoats: 4 })).toEqual([['few-clear', 'stop', 3]]);
    expect(rules(without('Clear 3'), { clearCoats: 2 })).toEqual([]);
  });

  it('asks for two aluminium coats before colour', () => {
    expect(rules(without('Aluminium 2', 'Level'))).toEqual([['few-aluminium', 'stop', 5]]);
    expect(rules([spray(), spray()], NO_FABRIC)).toEqual([]);
  });

  it('wants aluminium over clear and under colour', () => {
    const early = [SOUND_STEPS[6]!, ...without('Aluminium 2')];
    expect(rules(early)).toContainEqual(['aluminium-before-clear', 'stop', 0]);
    const late = [...SOUND_STEPS, { ...SOUND_STEPS[6]!, name: 'More' }];
    expect(rules(late)).toEqual([['aluminium-after-colour', 'stop', 10]]);
  });

  it('asks why clear lies over colour, and takes a remark for an answer', () => {
    expect(rules([...SOUND_STEPS, { kind: 'spray', layer: 'clear' }])).toEqual([['clear-over-colour', 'doubt', 10]]);
    expect(rules([...SOUND_STEPS, { kind: 'spray', layer: 'clear', note: 'Gloss' }])).toEqual([]);
  });

  it('brushes the first two clear coats', () => {
    expect(rules(changedStep('Clear 2', { kind: 'spray' }))).toEqual([['first-coat-sprayed', 'doubt', 1]]);
  });

  it('limits aluminium paste to 3 oz a gallon', () => {
    expect(rules(changedStep('Aluminium 1', { paste_g_L: 23 }))).toEqual([['paste', 'stop', 4]]);
    expect(rules(changedStep('Aluminium 1', { paste_g_L: 22.47 }))).toEqual([]);
  });

  it('finds nitrate over butyrate where the names say so', () => {
    expect(rules(changedStep('Clear 3', { mixName: 'Butyrate clear' }))).toEqual([]);
    const mixed = changedStep('Clear 3', { mixName: 'Butyrate clear' }).map((step) => (step.name === 'Aluminium 1' ? { ...step, mixName: 'Nitrate aluminium' } : step));
    expect(rules(mixed)).toEqual([['nitrate-over-butyrate', 'stop', 4]]);
    const under = changedStep('Clear 1', { mixName: 'Nitrate clear' }).map((step) => (step.name === 'Clear 3' ? { ...step, mixName: 'Butyrate clear' } : step));
    expect(rules(under)).toEqual([]);
  });

  it('sets tapes only on cloth that dope has drawn taut', () => {
    const [clear1, clear2, tapes, ...rest] = SOUND_STEPS as [HandStep, HandStep, HandStep, ...HandStep[]];
    expect(rules([tapes, clear1, clear2, ...rest])).toEqual([['tapes-on-bare-cloth', 'stop', 0]]);
    expect(rules([clear1, tapes, clear2, ...rest])).toEqual([['tapes-before-taut', 'doubt', 1]]);
    expect(rules(changedStep('Clear 2', { wait_h: 1.5 }))).toEqual([['tapes-before-taut', 'doubt', 2]]);
    expect(rules([{ ...tapes, what: 'lacing' }, clear1, clear2, ...rest])).toEqual([]);
  });
});

describe('waits', () => {
  const two = (step: Partial<HandStep>): HandStep[] => [spray(step), spray({ name: 'Next' })];

  it('stops at a coat over one that is not touch-dry, doubts one that is not ready', () => {
    expect(rules(two({ wait_h: 0.1 }), NO_FABRIC)).toEqual([['wet-beneath', 'stop', 0]]);
    expect(rules(two({ wait_h: 0.5 }), NO_FABRIC)).toEqual([['wait-short', 'doubt', 0]]);
    expect(rules(two({ wait_h: 0.7 }), NO_FABRIC)).toEqual([]);
    expect(rules(two({ recoat_min: null }), NO_FABRIC)).toEqual([['never-dry', 'doubt', 0]]);
    expect(rules([spray({ wait_h: 0 })], NO_FABRIC)).toEqual([]);
  });

  it('stretches stated waits by the rule in cold air', () => {
    expect(rules(two({ wait_h: 0.4 }), NO_FABRIC, 2)).toEqual([]);
    expect(rules(two({ wait_h: 1 }), NO_FABRIC, 0.5)).toEqual([['wait-short', 'doubt', 0]]);
  });

  it('counts work between as time to dry', () => {
    expect(rules([spray({ wait_h: 0.3 }), { kind: 'unmask', wait_h: 0, work_min: 30 }, spray()], NO_FABRIC)).toEqual([]);
  });

  it('lets nobody sand or mask a film that takes a fingerprint', () => {
    expect(rules([spray({ wait_h: 0.1 }), { kind: 'sand' }], NO_FABRIC)).toEqual([['touch-wet', 'stop', 0]]);
    expect(rules([spray({ wait_h: 0.2 }), { kind: 'sand' }], NO_FABRIC)).toEqual([]);
    expect(rules([spray({ wait_h: 0.1 }), { kind: 'mask' }], NO_FABRIC)).toEqual([['touch-wet', 'stop', 0], ['mask-early', 'doubt', 1]]);
  });

  it('lets a film dry overnight before tape, and tape stay no more than a day', () => {
    expect(rules([spray({ wait_h: 11 }), { kind: 'mask' }], NO_FABRIC)).toEqual([['mask-early', 'doubt', 1]]);
    expect(rules([spray({ wait_h: 12 }), { kind: 'mask', wait_h: 0 }, spray({ wait_h: 25 }), { kind: 'unmask' }], NO_FABRIC)).toEqual([['tape-long', 'doubt', 1]]);
  });

  it("keeps the circular's waits after aluminium", () => {
    expect(rules(changedStep('Aluminium 1', { wait_h: 3.5 }))).toEqual([['trade-wait', 'doubt', 4]]);
    expect(rules(changedStep('Aluminium 2', { wait_h: 0.9 }))).toEqual([['trade-wait', 'doubt', 6]]);
  });

  it('finds a next step whose latest start has passed before it may begin', () => {
    expect(rules(two({ wait_h: 2, latest_h: 3 }), NO_FABRIC)).toEqual([]);
    expect(rules(two({ wait_h: 2, latest_h: 3 }), NO_FABRIC, 2)).toEqual([['too-late', 'stop', 0]]);
    expect(rules(two({ wait_h: 0.1, latest_h: 0.5 }), NO_FABRIC)).toContainEqual(['too-late', 'stop', 0]);
  });
});

describe('sanding', () => {
  it('leaves the last aluminium coat alone', () => {
    expect(rules([...without('Level').slice(0, 6), { kind: 'sand', name: 'Level' }, ...SOUND_STEPS.slice(7)])).toContainEqual(['sand-last-aluminium', 'stop', 6]);
  });

  it('never goes through to the layer beneath, whatever the coats on top', () => {
    expect(rules(changedStep('Level', { removes_um: 20 }))).toEqual([['sand-through', 'stop', 5]]);
    expect(rules(changedStep('Level', { removes_um: 19 }))).toEqual([]);
    expect(rules([{ kind: 'sand', removes_um: 5 }, spray()], NO_FABRIC)).toEqual([]);
    const twice: HandStep[] = [spray({ layer: 'primer', dry_um: 10 }), spray(), { kind: 'sand', removes_um: 12, wait_h: 0 }, { kind: 'sand', removes_um: 12 }];
    expect(rules(twice, NO_FABRIC)).toEqual([['sand-through', 'stop', 3]]);
  });

  it('says where not to sand', () => {
    expect(rules(changedStep('Level', { keepOff: [] }))).toEqual([['sand-keep-off', 'stop', 5]]);
    expect(rules(changedStep('Level', { keepOff: ['Lacing'] }))).toEqual([['sand-keep-off', 'doubt', 5]]);
  });

  it('takes no paper coarser than 280 to aluminium', () => {
    expect(rules(changedStep('Level', { grit: 240 }))).toEqual([['sand-coarse', 'doubt', 5]]);
  });
});

describe('film and weight', () => {
  it('stops where the limit is passed, doubts where it may be', () => {
    // Four coats of 20 µm lie on each other after the fifth step.
    expect(rules(SOUND_STEPS.slice(0, 5), { most_um: 79 })).toEqual([['too-thick', 'stop', 4]]);
    expect(rules(SOUND_STEPS.slice(0, 4), { most_um: 63 })).toEqual([['too-thick', 'doubt', 3]]);
    expect(rules(SOUND_STEPS.slice(0, 4), { most_um: 67 })).toEqual([]);
    // 20 µm of clear solids at 1250 kg/m³ are 25 g/m².
    expect(rules(SOUND_STEPS.slice(0, 4), { most_g_m2: 74 })).toEqual([['too-heavy', 'stop', 3]]);
    expect(rules(SOUND_STEPS.slice(0, 4), { most_g_m2: 80 })).toEqual([['too-heavy', 'doubt', 3]]);
    expect(rules(SOUND_STEPS.slice(0, 4), { most_g_m2: 83 })).toEqual([]);
  });

  it('notes a coat that is heavier than usual, and much retarder', () => {
    expect(rules(changedStep('Clear 2', { dry_um: 30 }))).toEqual([['heavy-coat', 'doubt', 1]]);
    expect(rules(changedStep('Clear 2', { dry_um: 29 }))).toEqual([]);
    expect(rules(changedStep('Clear 2', { retarder_percent: 26 }))).toEqual([['retarder', 'doubt', 1]]);
    expect(rules(changedStep('Clear 2', { retarder_percent: 25 }))).toEqual([]);
  });
});

describe('colours', () => {
  const colour = (one: ColourSpec, dry_um: number): HandStep => spray({ colour: one, dry_um });

  it('puts the darker over the lighter', () => {
    expect(rules([colour(CREAM, 80), colour(BLUE, 60)], NO_FABRIC).map(([rule]) => rule)).not.toContain('dark-first');
    expect(rules([colour(BLUE, 60), colour(CREAM, 80)], NO_FABRIC)).toContainEqual(['dark-first', 'doubt', 1]);
  });

  it('keeps a colour that stains on top, or behind aluminium', () => {
    expect(rules([colour(MAROON, 100), colour(BLUE, 60)], NO_FABRIC)).toContainEqual(['bleeds', 'doubt', 1]);
    expect(rules([colour(CREAM, 80), colour(MAROON, 100)], NO_FABRIC).map(([rule]) => rule)).not.toContain('bleeds');
    expect(rules([colour(MAROON, 100), spray({ layer: 'aluminium' })], NO_FABRIC).map(([rule]) => rule)).not.toContain('bleeds');
  });

  it('judges a colour over aluminium by that, clear between or not; over black and white where aluminium covers a part, or another coat lies between', () => {
    const row = (...between: HandStep[]) => hidingRows(handPlan([...between, colour(CREAM, 40)], NO_FABRIC))[0]!;
    const chart = row();
    const aluminium = row(spray({ layer: 'aluminium' }));
    expect([chart.run.isOverAluminium, aluminium.run.isOverAluminium]).toEqual([false, true]);
    expect(aluminium.contrast).toBe(contrastOver(aluminium.run.optics, aluminium.run.film_m, 0.55));
    // A ground nearer to the colour than a chart's black asks for less film.
    expect(aluminium.hiding_m).toBeLessThan(chart.hiding_m);
    expect(row(spray({ layer: 'aluminium' }), spray({ layer: 'clear' })).hiding_m).toBe(aluminium.hiding_m);
    for (const other of [row(spray({ layer: 'aluminium', share_percent: 30 })), row(spray({ layer: 'aluminium' }), spray({ layer: 'primer' })), row(spray({ layer: 'aluminium' }), spray({ layer: 'colour' }))]) {
      expect([other.run.isOverAluminium, other.hiding_m]).toEqual([false, chart.hiding_m]);
    }
    expect(ALUMINIUM_REFLECTANCE.source).toMatch(/^Assumed/);
  });

  it('says how many coats more a colour needs to hide', () => {
    const thin = schemeFindings(handPlan([colour(CREAM, 20), colour(CREAM, 20)], NO_FABRIC), 1).find(({ rule }) => rule === 'shows-through');
    expect(thin).toMatchObject({ rule: 'shows-through', colour: 'Cream', moreCoats: 2, stepIndex: 1 });
    expect(rules([colour(CREAM, 20), colour(CREAM, 20), colour(CREAM, 20), colour(CREAM, 20)], NO_FABRIC).map(([rule]) => rule)).not.toContain('shows-through');
  });
});

it('puts the gravest first, then by step, each with its place and source', () => {
  const found = schemeFindings(handPlan(changedStep('Aluminium 1', { paste_g_L: 40, wait_h: 3 })), 1);
  expect(found.map(({ rule }) => rule)).toEqual(['paste', 'trade-wait']);
  expect(found[0]).toMatchObject({ pointer: '/schemes/0/steps/4/paste_g_L', source: expect.stringContaining('2-21g') as string });
});
