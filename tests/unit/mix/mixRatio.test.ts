import { describe, expect, it } from 'vitest';
import { genericMixSpec } from '../../../sim/mix/changedMixSpec.ts';
import { parseRatio, partFractions } from '../../../sim/mix/mixRatio.ts';
import { partDensities, specRatio } from '../../../sim/mix/partDensities.ts';

const DENSITIES = { finish_kg_m3: 900, thinner_kg_m3: 800, retarder_kg_m3: 1000 };

function read(text: string, by?: 'volume' | 'weight'): readonly [number, number] {
  const { thinnerPerFinish, retarderFraction } = parseRatio(text, DENSITIES, by);
  return [thinnerPerFinish, retarderFraction];
}

describe('parseRatio', () => {
  it.each([
    ['4:1', 0.25, 0], ['4 : 1', 0.25, 0], ['1:1', 1, 0], ['1:0', 0, 0], ['2.5:1', 0.4, 0], ['.5:1', 2, 0],
    ['8:1:1', 0.25, 0.5], ['8:2:0', 0.25, 0],
    ['1 part in 4', 1 / 3, 0], ['1 part of thinner in 4 parts', 1 / 3, 0], ['1 part to 4', 0.25, 0], ['2 parts to 3 of finish', 2 / 3, 0],
    ['150 %', 1.5, 0], ['reduce 150 %', 1.5, 0], ['reduce by 50 %', 0.5, 0], ['thin 25%', 0.25, 0], ['25 percent of the finish', 0.25, 0], ['10 % of the total', 1 / 9, 0], ['10% of the mix', 1 / 9, 0],
  ])('reads %s', (text, thinner, retarder) => {
    const [ours, share] = read(text);
    expect(ours).toBeCloseTo(thinner, 12);
    expect(share).toBeCloseTo(retarder, 12);
  });

  it('turns parts by weight into volumes, whether the text or the caller says so', () => {
    // 4 kg of 900 kg/m³ and 1 kg of 800 kg/m³: 1/800 to 4/900.
    for (const [thinner] of [read('4:1 by weight'), read('4:1', 'weight'), read('4:1 by mass')]) expect(thinner).toBeCloseTo(900 / 3200, 12);
    expect(read('4:1 by volume', 'weight')[0]).toBe(0.25);
    // 8, 1 and 1 kg: 1/800 + 1/1000 of thinner to 8/900, four ninths of it retarder.
    const [thinner, retarder] = read('8:1:1 by weight');
    expect(thinner).toBeCloseTo(((1 / 800 + 1 / 1000) * 900) / 8, 12);
    expect(retarder).toBeCloseTo(4 / 9, 12);
    expect(read('10 % of the total by weight')[0]).toBeCloseTo((0.1 / 800) * (900 / 0.9), 12);
  });

  it.each([
    ['10 %', 'write 10 % of the finish, or 10 % of the total'], ['4', 'is one number; write finish:thinner such as 4:1'], ['1/4', 'may be a share or two parts; write 4:1'],
    ['2,5:1', 'holds a comma'], ['4:-1', 'holds a minus'], ['-4:1', 'holds a minus'], ['0:1', 'has no finish in it'], ['4 part in 4', 'leaves no finish'], ['100 % of the total', 'leaves no finish'],
    ['1:11', 'more than 10 volumes of thinner'], ['4:1:1:1', 'more than three parts'], ['a bit', 'is no ratio'], ['', 'is no ratio'], ['4:', 'is no ratio'], ['NaN:1', 'is no ratio'],
  ])('refuses %s and says what to write', (text, words) => {
    expect(() => read(text)).toThrow(words);
  });

  it('names the place', () => {
    expect(() => parseRatio('x', DENSITIES, 'volume', { pointer: '--ratio' })).toThrow(/^--ratio: ratio "x" is no ratio/);
  });
});

describe('partFractions', () => {
  it('add to one', () => {
    expect(partFractions({ thinnerPerFinish: 0.25, retarderFraction: 0.5 })).toEqual({ finish: 0.8, thinner: 0.1, retarder: 0.1 });
  });
});

describe('partDensities', () => {
  it('are those of the stated mix', () => {
    const spec = { ...genericMixSpec('clear-dope', 'general', 1), thinner: [{ solvent: 'toluene', percent: 60 }, { solvent: 'n-butyl-acetate', percent: 40 }] };
    expect(partDensities(spec).thinner_kg_m3).toBeCloseTo(873, 9);
    expect(partDensities(spec).retarder_kg_m3).toBeCloseTo(873, 9);
    expect(partDensities({ ...spec, retarder: { solvent: 'n-butanol', percent: 10 } }).retarder_kg_m3).toBe(810);
    expect(specRatio({ ...spec, retarder: { solvent: 'n-butanol', percent: 10 } })).toEqual({ thinnerPerFinish: 1, retarderFraction: 0.1 });
  });
});
