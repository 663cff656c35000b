import { describe, expect, it } from 'vitest';
import { defaultMix } from '../../../sim/job/defaults.ts';
import type { MixSpec, SupplySpec } from '../../../sim/job/schema.ts';
import { costSentence } from '../../../sim/report/amountsWords.ts';
import { addedWeight } from '../../../sim/scheme/addedWeight.ts';
import { schemeAmounts, USUAL_AMOUNTS } from '../../../sim/scheme/amounts.ts';
import { coverageOf } from '../../../sim/scheme/coverage.ts';
import { labourOf } from '../../../sim/scheme/labour.ts';
import { purchaseOf } from '../../../sim/scheme/purchase.ts';
import { chooseTins } from '../../../sim/scheme/tins.ts';
import { thrownBy } from '../job/fixtures.ts';
import { handPlan } from './handPlan.ts';

/** The mix that a hand-made plan's coats name: 0.33 of general thinner to one. */
const MIXES: readonly MixSpec[] = [defaultMix('m', 'a mix')];
const RETARDED: readonly MixSpec[] = [{ ...defaultMix('m', 'a mix'), retarder: { solvent: 'n-butanol', percent: 10 } }];
const CREAM = { id: 'cream', name: 'Cream', reflectance_percent: 78, scatter_per_mm: 90, bleeds: false };
const BLUE = { ...CREAM, id: 'blue', name: 'Blue' };

describe('schemeAmounts', () => {
  it('of a sprayed coat: on the part, missed and left in the pot add to what is mixed', () => {
    const { coats: [coat], total } = schemeAmounts(handPlan([{ kind: 'spray' }]), MIXES);
    const { net_m3, missed_m3, left_m3, mixed_m3 } = coat!.liquid;
    // 100 mL of liquid, 65 % landed, and 100 mL + 5 % left.
    expect(net_m3.value).toBeCloseTo(65e-6, 12);
    expect(missed_m3.value).toBeCloseTo(35e-6, 12);
    expect(left_m3.value).toBeCloseTo(105e-6, 12);
    for (const end of ['value', 'low', 'high'] as const) expect(mixed_m3[end]).toBeCloseTo(net_m3[end] + missed_m3[end] + left_m3[end], 15);
    expect(total.mixed_m3).toEqual(mixed_m3);
  });

  it('of a brushed coat: its stated loss is what stays in the pot, and nothing misses', () => {
    const { coats: [coat] } = schemeAmounts(handPlan([{ kind: 'brush' }]), MIXES);
    expect(coat!.liquid.missed_m3.value).toBe(0);
    expect(coat!.liquid.left_m3.value).toBeCloseTo(35e-6, 12);
    expect(coat!.liquid.mixed_m3.value).toBeCloseTo(100e-6, 12);
  });

  it('groups products over coats: one finish, each colour by itself, one thinner, the retarder by its solvent; together they are the liquid', () => {
    const plan = handPlan([{ kind: 'spray', retarder_percent: 10 }, { kind: 'spray', retarder_percent: 10 }, { kind: 'spray', layer: 'colour', colour: CREAM }, { kind: 'spray', layer: 'colour', colour: BLUE }]);
    const { products, total } = schemeAmounts(plan, RETARDED);
    expect(products.map(({ product }) => product.name)).toEqual(['clear dope', 'general thinner', 'retarder, n-butyl alcohol', 'colour dope, Cream', 'colour dope, Blue']);
    expect(products.map(({ product }) => product.supply)).toEqual(['clear-dope', 'thinner', 'retarder', 'colour-dope', 'colour-dope']);
    expect(products.reduce((sum, { volume_m3 }) => sum + volume_m3.value, 0)).toBeCloseTo(total.mixed_m3.value, 15);
    expect(products[0]!.steps).toHaveLength(2);
  });

  it('keeps thinners of other blends apart, by what is in them', () => {
    const plan = handPlan([{ kind: 'spray' }]);
    const [product] = schemeAmounts(plan, [{ ...MIXES[0]!, thinner: [{ solvent: 'toluene', percent: 60 }, { solvent: 'mek', percent: 40 }] }]).products.slice(1);
    expect(product!.product).toMatchObject({ supply: 'thinner', name: 'thinner of toluene 60 %, methyl ethyl ketone 40 %' });
    // A coat whose mix is not in the job is thinned with the general one, as the model takes it to be.
    expect(schemeAmounts(plan, []).products[1]!.product.name).toBe('general thinner');
  });

  it('weighs the aluminium paste by the unthinned finish', () => {
    const { paste_kg, products } = schemeAmounts(handPlan([{ kind: 'spray', layer: 'aluminium', paste_g_L: 22 }]), MIXES);
    expect(paste_kg.value).toBeCloseTo(products[0]!.volume_m3.value * 22, 15);
  });

  it('doubts a coat that lays nothing', () => {
    const plan = handPlan([{ kind: 'spray' }]);
    const [step] = plan.steps;
    const none = { ...plan, steps: [{ ...step!, coat: { ...step!.coat!, landedFraction: 0 } }] };
    expect(schemeAmounts(none, MIXES).doubts[0]!.text).toMatch(/lays no film/);
  });
});

describe('purchaseOf', () => {
  const amounts = schemeAmounts(handPlan([{ kind: 'spray' }]), MIXES, USUAL_AMOUNTS);
  const dope: SupplySpec = { product: 'clear-dope', tins: [{ size_mL: 250, price: 8 }, { size_mL: 1000, price: 24 }], currency: 'EUR' };
  const thinner: SupplySpec = { product: 'thinner', tins: [{ size_mL: 500, price: 6.5 }], currency: 'EUR' };

  it('adds the prices where all are stated', () => {
    const { total, products } = purchaseOf(amounts, [dope, thinner]);
    expect(total).toEqual({ cost: 14.5, high: 14.5, currency: 'EUR', missing: [] });
    expect(products[0]!.usual!.tins).toEqual([{ size_m3: 250e-6, price: 8, count: 1 }]);
  });

  it('says what is missing, and never a cost of 0 in its place', () => {
    const { total } = purchaseOf(amounts, [dope, { ...thinner, tins: [{ size_mL: 500 }] }]);
    expect(total).toMatchObject({ cost: null, high: null, missing: [{ kind: 'price', product: 'general thinner', sizes_m3: [expect.closeTo(500e-6, 12)] }] });
    expect(purchaseOf(amounts, [dope]).total).toMatchObject({ cost: null, missing: [{ kind: 'tins', product: 'general thinner' }] });
    expect(purchaseOf(amounts, []).total.cost).toBeNull();
  });

  it('adds no prices of several currencies', () => {
    expect(purchaseOf(amounts, [dope, { ...thinner, currency: 'USD' }]).total).toMatchObject({ cost: null, missing: [{ kind: 'one-currency', currencies: ['EUR', 'USD'] }] });
    const { total } = purchaseOf(amounts, [dope, { product: 'thinner', tins: thinner.tins }]);
    expect(costSentence(total, 'metric')).toBe('Cost: not known. Missing: one currency for all prices; they are in EUR and no stated one, and nothing is exchanged here.');
  });

  it('names the known products where one is unknown, or stated twice', () => {
    const { doubts } = purchaseOf(amounts, [{ ...dope, product: 'clear-doep' }, thinner, thinner]);
    expect(doubts.map(({ text }) => text)).toEqual([
      'The tins of "clear-doep" belong to no product; did you mean "clear-dope"? known are clear-dope, aluminium-dope, colour-dope, lacquer, primer, enamel, thinner, retarder.',
      'The tins of "thinner" are stated twice; the first are used, put all its sizes there.',
    ]);
    expect(doubts[0]!.place.pointer).toBe('/supplies/0/product');
  });
});

describe('chooseTins', () => {
  it('takes one larger tin where that is cheaper, and two small ones where not', () => {
    const of = (large: number) => chooseTins([{ size_m3: 1e-3, price: 24 }, { size_m3: 5e-3, price: large }], 1.4e-3).tins.map(({ size_m3, count }) => [count, size_m3]);
    expect(of(60)).toEqual([[2, 1e-3]]);
    expect(of(45)).toEqual([[1, 5e-3]]);
  });

  it('refuses a need that is none, no size, and more than it can count', () => {
    expect(thrownBy(() => chooseTins([{ size_m3: 1e-3, price: 1 }], NaN))).toMatchObject({ code: 'range' });
    expect(thrownBy(() => chooseTins([{ size_m3: 1e-3, price: 1 }], -1))).toMatchObject({ code: 'range' });
    expect(thrownBy(() => chooseTins([], 1))).toMatchObject({ code: 'range' });
    expect(thrownBy(() => chooseTins([{ size_m3: 0, price: 1 }], 1))).toMatchObject({ code: 'range' });
    expect(thrownBy(() => chooseTins([{ size_m3: 1.0007e-3, price: 1 }, { size_m3: 1e-3, price: 1 }], 900))).toMatchObject({ code: 'limit' });
    expect(chooseTins([{ size_m3: 1e-3, price: 1 }], 0)).toMatchObject({ tins: [], cost: 0 });
  });
});

describe('addedWeight', () => {
  const panels = [{ id: 'p', name: 'Left', area_m2: 1.5 }, { id: 'q', name: 'Right', area_m2: 0.5 }];
  const plan = handPlan([{ kind: 'spray', dry_um: 30 }, { kind: 'spray', dry_um: 10, layer: 'colour' }, { kind: 'sand' }]);

  it('shares the plan’s weight by area, and the parts add to the whole', () => {
    const weight = addedWeight(plan, panels, null);
    expect(weight.panels.map(({ added_kg }) => added_kg.value / weight.total_kg.value)).toEqual([0.75, 0.25]);
    expect(weight.steps.reduce((sum, { added_kg }) => sum + added_kg.value, 0)).toBeCloseTo(weight.total_kg.value, 12);
    expect(weight.mean_kg_m2.value).toBeCloseTo(weight.total_kg.value / 2, 12);
    expect(weight.cloth_kg).toBe(0);
  });

  it('names the coats heaviest first, and counts cloth where asked', () => {
    const weight = addedWeight(plan, panels, 0.1367);
    expect(weight.heaviest).toEqual([0, 1]);
    expect(weight.cloth_kg).toBeCloseTo(0.2734, 12);
    expect(weight.panels[1]!.cloth_kg).toBeCloseTo(0.06835, 12);
  });
});

describe('labourOf', () => {
  it('adds hours by kind, and keeps waits apart', () => {
    const labour = labourOf(handPlan([{ kind: 'brush', work_min: 20, wait_h: 3 }, { kind: 'sand', work_min: 40, wait_h: 0 }, { kind: 'brush', work_min: 10, wait_h: 1 }]));
    expect(labour.kinds).toEqual([{ kind: 'brush', steps: 2, work_s: 1800, stated: 2 }, { kind: 'sand', steps: 1, work_s: 2400, stated: 1 }]);
    expect([labour.work_s, labour.wait_s]).toEqual([4200, 4 * 3600]);
  });
});

describe('coverageOf', () => {
  const reading = { used_m3: 1e-3, volumeSolidsFraction: 0.15, solidsDensity_kg_m3: 1250, gained_kg: 0.075, area_m2: 3 };

  it('finds the landed share and how far a litre went', () => {
    const answer = coverageOf(reading);
    // 60 mL of solids on the part out of 150 mL used.
    expect(answer.landedFraction).toBeCloseTo(0.4, 12);
    expect(answer.dry_m).toBeCloseTo(20e-6, 12);
    expect(answer.covered_m2_m3 / answer.lossless_m2_m3).toBeCloseTo(0.4, 12);
    expect(answer).toMatchObject({ isPossible: true });
  });

  it('says where more is on the part than was used, and refuses what is no reading', () => {
    expect(coverageOf({ ...reading, gained_kg: 0.3 }).isPossible).toBe(false);
    expect(coverageOf({ ...reading, gained_kg: 0 })).toMatchObject({ landedFraction: 0, lossless_m2_m3: Infinity });
    for (const bad of [{ used_m3: 0 }, { volumeSolidsFraction: 0 }, { solidsDensity_kg_m3: NaN }, { gained_kg: -1 }, { area_m2: 0 }]) {
      expect(thrownBy(() => coverageOf({ ...reading, ...bad }))).toMatchObject({ code: 'range' });
    }
  });
});
