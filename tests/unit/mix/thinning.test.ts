import { describe, expect, it } from 'vitest';
import { cupById, cupByWord, CUPS } from '../../../sim/materials/cups.ts';
import { productOf } from '../../../sim/mix/between.ts';
import { refutasBlend_m2_s, thinningGuess } from '../../../sim/mix/blendRules.ts';
import { genericMixSpec } from '../../../sim/mix/changedMixSpec.ts';
import { cupTime, cupTimeAt, secondsInRange, viscosityInRange_m2_s } from '../../../sim/mix/cupTime.ts';
import { makeMix } from '../../../sim/mix/makeMix.ts';
import { batchLiquid_m3, fillPots, mixedParts, wetForDry_m } from '../../../sim/mix/mixBatch.ts';
import { evaporationTimeRatio, judgeRetarder } from '../../../sim/mix/retarder.ts';
import { fitThinning, ratioForViscosity, thinnedViscosity, type ThinningReading } from '../../../sim/mix/thinningLaw.ts';
import { exactly } from '../../../sim/scheme/spread.ts';

const DENSITIES = { finish_kg_m3: 900, thinner_kg_m3: 800, retarder_kg_m3: 1000 };

describe('cupByWord', () => {
  it.each([['ford4', 'ford-4'], ['Ford No. 4', 'ford-4'], ['FORD-4', 'ford-4'], ['ford cup no 4', 'ford-4'], ['zahn #2', 'zahn-2'], ['ISO 4 mm', 'iso-4'], ['iso4mm', 'iso-4'], ['din4', 'din-4']])('reads %s', (word, id) => {
    expect(cupByWord(word).id).toBe(id);
  });

  it('reads every id and every name', () => {
    for (const cup of CUPS) for (const word of [cup.id, cup.name, cup.id.replace('-', ''), cup.id.replace('-', ' ')]) expect(cupByWord(word)).toBe(cup);
  });

  it.each([['frod4', /did you mean "ford-4"/], ['zahn9', /did you mean "zahn-\d"/], ['', /unknown cup ""/], ['ford', /unknown cup "ford"/]])('refuses %s', (word, words) => {
    expect(() => cupByWord(word)).toThrow(words);
  });
});

describe('cupTime', () => {
  const ford4 = cupById('ford-4');

  it('gives no figure outside the range, and names a cup that fits', () => {
    expect(cupTime(ford4, 100e-6).seconds).toBeCloseTo(30.464, 3);
    const thin = cupTime(ford4, 40e-6);
    expect([thin.seconds, thin.fitting?.id]).toEqual([null, 'zahn-2']);
    // 33 mm²/s is 23.4 s in a Zahn No. 2, as sprayed lacquers are; 10 mm²/s is too thin for it, 450 mm²/s no longer sprayed.
    expect([33e-6, 10e-6, 450e-6].map((thinner) => cupTime(ford4, thinner).fitting?.id)).toEqual(['zahn-2', 'ford-1', 'ford-5']);
    expect(cupTime(cupById('iso-6'), 40e-6).fitting?.id).toBe('zahn-2');
    expect(cupTime(cupById('zahn-5'), 85e-6).fitting?.id).toBe('zahn-2');
    // Thicker than any cup known.
    expect(cupTime(ford4, 1)).toMatchObject({ seconds: null, fitting: null });
  });

  it('refuses seconds out of range either way', () => {
    expect(viscosityInRange_m2_s(ford4, 20)).toBeCloseTo(59.7135e-6, 9);
    expect(() => viscosityInRange_m2_s(ford4, 19)).toThrow('19 s is outside the range of the Ford cup No. 4, 20 to 100 s, so no viscosity is given; use one that fits, such as the Zahn cup No. 2 (zahn-2, 20 to 80 s)');
    expect(() => viscosityInRange_m2_s(ford4, 3)).toThrow('use a cup with a smaller hole');
    expect(() => viscosityInRange_m2_s(ford4, 150)).toThrow('Ford cup No. 5');
    expect(() => viscosityInRange_m2_s(ford4, NaN)).toThrow();
    expect(() => secondsInRange(cupById('iso-4'), 500e-6)).toThrow(/500 mm²\/s is too thick for the ISO cup, 4 mm, which holds for 30 to 100 s \(34\.4 to 135 mm²\/s\).*ISO cup, 6 mm/);
    expect(() => secondsInRange(ford4, 1)).toThrow('larger hole');
  });

  it('warms a mix in the same cup, and stops where the cup does', () => {
    const cold = cupTimeAt(ford4, 3.85e-6 * (40 - 4.49), 298.15, 288.15, { value: 2000, low: 1500, high: 2500 });
    expect(cold.time.seconds).toBeCloseTo(4.49 + 1.2621 * 35.51, 2);
    expect(cold.low_s!).toBeLessThan(cold.time.seconds!);
    expect(cold.high_s!).toBeGreaterThan(cold.time.seconds!);
    const warm = cupTimeAt(ford4, 3.85e-6 * (21 - 4.49), 288.15, 303.15, exactly(2000));
    expect([warm.time.seconds, warm.time.fitting?.id]).toEqual([null, 'zahn-2']);
  });
});

describe('fitThinning', () => {
  const at = (thinnerPerFinish: number, mm2_s: number, celsius = 20): ThinningReading => ({ thinnerPerFinish, viscosity_m2_s: mm2_s * 1e-6, temperature_K: celsius + 273.15 });

  it('runs through both readings and back to the ratio, and says when it is beyond them', () => {
    const law = fitThinning([at(0.25, 98), at(1, 30)], 2000, 293.15);
    expect(thinnedViscosity(law, 0.25)).toMatchObject({ isBeyondReadings: false });
    expect(thinnedViscosity(law, 1).viscosity_m2_s).toBeCloseTo(30e-6, 15);
    expect(ratioForViscosity(law, 98e-6).thinnerPerFinish).toBeCloseTo(0.25, 10);
    expect(ratioForViscosity(law, 20e-6).isBeyondReadings).toBe(true);
    expect(thinnedViscosity(law, 0.2).isBeyondReadings).toBe(true);
    expect(law.sensitivityFitted).toBe(false);
  });

  it('brings a reading at another temperature to one, by the given or its own coefficient', () => {
    const factor = Math.exp(2000 * (1 / 288.15 - 1 / 293.15));
    const law = fitThinning([at(0.25, 98), at(1, 30 * factor, 15)], 2000, 293.15);
    expect(thinnedViscosity(law, 1).viscosity_m2_s).toBeCloseTo(30e-6, 12);
    const own = Math.exp(1600 * (1 / 288.15 - 1 / 293.15));
    const fitted = fitThinning([at(0.25, 98), at(0.25, 98 * own, 15), at(1, 30)], 2000, 293.15);
    expect(fitted.sensitivity_K).toBeCloseTo(1600, 6);
    expect(fitted.sensitivityFitted).toBe(true);
    expect(thinnedViscosity(fitted, 0.25).viscosity_m2_s).toBeCloseTo(98e-6, 12);
  });

  it('refuses what fixes no law', () => {
    expect(() => fitThinning([at(0.25, 98)], 2000, 293.15)).toThrow('of one ratio');
    expect(() => fitThinning([at(0.25, 98), at(0.26, 90)], 2000, 293.15)).toThrow('nearly alike');
    expect(() => fitThinning([at(0.25, 30), at(1, 98)], 2000, 293.15)).toThrow('not thinner with more thinner');
    expect(() => fitThinning([at(0.25, 0), at(1, 98)], 2000, 293.15)).toThrow('viscosity');
    expect(() => fitThinning([at(11, 1), at(1, 98)], 2000, 293.15)).toThrow('thinner per finish');
    const law = fitThinning([at(0, 98), at(1, 30)], 2000, 293.15);
    expect(() => ratioForViscosity(law, 200e-6)).toThrow('before any thinner is added');
    expect(() => ratioForViscosity(law, 1e-6)).toThrow('more than 10 volumes');
  });
});

describe('blend rules', () => {
  it('fail where they have no value, and say so', () => {
    expect(() => refutasBlend_m2_s([{ massFraction: 1, viscosity_m2_s: 0.2e-6 }])).toThrow('cube-root rule');
  });

  it('lie tenfold apart for a finish and its thinner', () => {
    const guess = thinningGuess({ massFraction: 0.5, viscosity_m2_s: 400e-6 }, { massFraction: 0.5, viscosity_m2_s: 0.6e-6 });
    expect(guess.spreadRatio).toBeCloseTo(69.21 / 3.337, 1);
  });
});

describe('batch', () => {
  it('is area, film and coats over what lands, with what is left', () => {
    const need = { area_m2: 6, coatCount: 2, wet_m: { value: 100e-6, low: 80e-6, high: 120e-6 }, landedFraction: { value: 0.6, low: 0.5, high: 0.8 }, left_m3: 100e-6 };
    const { value, low, high } = batchLiquid_m3(need);
    expect([value, low, high].map((each) => Number((each * 1e6).toFixed(6)))).toEqual([2100, 1300, 2980]);
    expect(() => batchLiquid_m3({ ...need, area_m2: -1 })).toThrow('mix: area = -1 m²');
    expect(() => batchLiquid_m3({ ...need, landedFraction: exactly(0) })).toThrow('share landed');
    expect(() => batchLiquid_m3({ ...need, left_m3: NaN })).toThrow('left in pot');
  });

  it('carries the spread of the solids into the wet film', () => {
    const { low, high } = wetForDry_m(exactly(25e-6), { value: 0.2, low: 0.12, high: 0.25 }, 0.25);
    expect([low * 1e6, high * 1e6].map((each) => Number(each.toFixed(3)))).toEqual([125, 260.417]);
    expect(() => productOf([[exactly(0), -1]])).toThrow('productOf');
  });

  it('is poured to marks that say how far the pot is filled', () => {
    const ratio = { thinnerPerFinish: 0.25, retarderFraction: 0.5 };
    const fill = fillPots(3e-3, 2e-3, ratio, DENSITIES);
    expect(fill.potCount).toBe(2);
    expect(fill.pours.map(({ part, upTo }) => [part, Number((upTo.volume_m3 * 1e6).toFixed(6)), Number((upTo.weight_kg * 1e3).toFixed(6))])).toEqual([['finish', 1200, 1080], ['thinner', 1350, 1200], ['retarder', 1500, 1350]]);
    // Two pots to the brim are two pots.
    expect(fillPots(4e-3, 2e-3, ratio, DENSITIES).potCount).toBe(2);
    expect(fillPots(1e-3, 2e-3, { thinnerPerFinish: 0, retarderFraction: 0 }, DENSITIES).pours).toHaveLength(1);
    expect(() => fillPots(1e-3, 0, ratio, DENSITIES)).toThrow('mix: pot');
    expect(mixedParts(1e-3, ratio, DENSITIES).total.weight_kg).toBeCloseTo(0.9, 12);
  });
});

describe('retarder', () => {
  it('is judged against practice', () => {
    expect([0, 0.03, 0.05, 0.1, 0.15, 0.2, 0.25, 0.26].map(judgeRetarder)).toEqual(['none', 'below-usual', 'usual', 'usual', 'usual', 'above-usual', 'above-usual', 'too-much']);
  });

  it('lengthens the time that the solvents take', () => {
    const plain = genericMixSpec('clear-dope', 'general', 1);
    const [without, withIt] = [makeMix(plain, '/m').solvents, makeMix({ ...plain, retarder: { solvent: 'n-butanol', percent: 20 } }, '/m').solvents];
    expect(evaporationTimeRatio(without, without)).toBe(1);
    expect(evaporationTimeRatio(withIt, without)).toBeGreaterThan(1.1);
  });
});
