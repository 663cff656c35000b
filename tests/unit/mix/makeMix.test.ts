import { describe, expect, it } from 'vitest';
import type { MixSpec } from '../../../sim/job/schema.ts';
import { changedMixSpec, genericMixSpec } from '../../../sim/mix/changedMixSpec.ts';
import { cupSeconds } from '../../../sim/mix/cups.ts';
import { genericMix } from '../../../sim/mix/genericMix.ts';
import { makeMix } from '../../../sim/mix/makeMix.ts';
import { fittedSensitivity_K, viscosity_Pa_s } from '../../../sim/mix/viscosity.ts';
import { cupById } from '../../../sim/materials/cups.ts';

const GENERAL = genericMixSpec('clear-dope', 'general', 1);
const TWO: MixSpec = {
  id: 'two', name: 'two', finish: 'clear-dope', thinnerPerFinish: 1,
  thinner: [{ solvent: 'toluene', percent: 60 }, { solvent: 'n-butyl-acetate', percent: 40 }],
};

function share(spec: MixSpec, id: string): number {
  return makeMix(spec, '/mixes/0').solvents.find(({ solvent }) => solvent.id === id)?.volumeFraction ?? 0;
}

describe('makeMix', () => {
  it('halves the solids one to one and adds up its volumes', () => {
    const mix = makeMix(GENERAL, '/mixes/0');
    expect(mix.volumeSolidsFraction).toBeCloseTo(0.1, 14);
    const sum = (parts: readonly { readonly volumeFraction: number }[]) => parts.reduce((total, { volumeFraction }) => total + volumeFraction, 0);
    for (const parts of [mix.solvents, mix.fast.parts, mix.slow.parts, [mix.fast, mix.slow]]) expect(sum(parts)).toBeCloseTo(1, 12);
  });

  it('mixes the can’s solvents with the thinner’s by volume', () => {
    // 1 of dope brings 0.8 of its solvent, 1 of thinner brings 1: toluene 0.6 of 1 in 1.8 beside what the can holds.
    const can = makeMix({ ...TWO, thinnerPerFinish: 0 }, '/m').solvents.find(({ solvent }) => solvent.id === 'toluene')!.volumeFraction;
    expect(share(TWO, 'toluene')).toBeCloseTo((0.8 * can + 0.6) / 1.8, 12);
  });

  it('weighs as much as its parts', () => {
    const unthinned = makeMix({ ...TWO, thinnerPerFinish: 0 }, '/m');
    expect(unthinned.density_kg_m3).toBeCloseTo(unthinned.finish.liquidDensity_kg_m3, 9);
    // Thinner of 0.6 toluene (867) and 0.4 butyl acetate (882): 873 kg/m³.
    expect(makeMix(TWO, '/m').density_kg_m3).toBeCloseTo((unthinned.density_kg_m3 + 873) / 2, 9);
  });

  it('cuts quick from slow solvents', () => {
    const { fast, slow } = makeMix(GENERAL, '/m');
    expect(fast.parts.map(({ solvent }) => solvent.id)).toEqual(['mek', 'toluene']);
    expect(slow.parts.map(({ solvent }) => solvent.id)).toEqual(['n-butyl-acetate', 'n-butanol']);
    expect(fast.relativeEvaporation).toBeGreaterThan(2);
    expect(slow.relativeEvaporation).toBeLessThan(1);
    // Toluene has 106 and MEK 90 mL/mol; butyl acetate 132 and butanol 92.
    expect(fast.molarVolume_m3_mol).toBeGreaterThan(90e-6);
    expect(fast.molarVolume_m3_mol).toBeLessThan(106e-6);
  });

  it('takes the retarder out of the thinner, slows the mix, and warns of too much', () => {
    const retarded = { ...TWO, retarder: { solvent: 'n-butanol', percent: 20 } };
    expect(share(retarded, 'n-butanol') - share(TWO, 'n-butanol')).toBeCloseTo(0.2 / 1.8, 12);
    const mix = makeMix(retarded, '/m');
    expect(mix.solventSpeedRatio).toBeLessThan(makeMix(TWO, '/m').solventSpeedRatio);
    expect([mix.retarderFraction, mix.thinnerRatio, mix.warnings.length]).toEqual([0.2, 1, 0]);
    expect(makeMix({ ...TWO, retarder: { solvent: 'n-butanol', percent: 30 } }, '/m').warnings[0]?.text).toMatch(/30 % of the thinner.*never more than 25 %/);
  });

  it('adds up a solvent that is named twice', () => {
    const twice = { ...TWO, thinner: [{ solvent: 'toluene', percent: 30 }, { solvent: 'n-butyl-acetate', percent: 40 }, { solvent: 'toluene', percent: 30 }] };
    expect(makeMix(twice, '/m').solvents).toHaveLength(makeMix(TWO, '/m').solvents.length);
    expect(share(twice, 'toluene')).toBeCloseTo(share(TWO, 'toluene'), 12);
  });

  it.each<[string, Partial<MixSpec>, RegExp]>([
    ['a blend of 99.8 %', { thinner: [{ solvent: 'toluene', percent: 99.8 }] }, /\/mixes\/2\/thinner: the shares add to 99\.8 %, not to 100 ± 0\.1 %/],
    ['a blend of 110 %', { thinner: [{ solvent: 'toluene', percent: 70 }, { solvent: 'mek', percent: 40 }] }, /add to 110 %/],
    ['an unknown solvent', { thinner: [{ solvent: 'aceton', percent: 100 }] }, /\/mixes\/2\/thinner\/0\/solvent: unknown solvent "aceton"; did you mean "acetone"/],
    ['an unknown retarder', { retarder: { solvent: 'butanol', percent: 10 } }, /\/mixes\/2\/retarder\/solvent: unknown solvent "butanol"; did you mean/],
    ['an unknown finish', { finish: 'varnish' }, /\/mixes\/2\/finish: unknown finish "varnish"/],
    ['an unknown cup', { cup: { kind: 'ford-9', seconds: 30, temperature_C: 20 } }, /\/mixes\/2\/cup\/kind: unknown cup "ford-9"; did you mean "ford-/],
    ['a cup reading that is no viscosity', { cup: { kind: 'ford-4', seconds: 4, temperature_C: 20 } }, /\/mixes\/2\/cup\/seconds: 4 s in the Ford cup No\. 4 is no viscosity.*smaller hole/],
    ['too much thinner', { thinnerPerFinish: 11 }, /thinner per finish = 11 is not from 0 to 10/],
    ['thinner that is no number', { thinnerPerFinish: NaN }, /thinner per finish = NaN/],
  ])('refuses %s', (_what, change, message) => {
    expect(() => makeMix({ ...TWO, ...change }, '/mixes/2')).toThrow(message);
  });

  it.each([99.9, 100.1])('lets a blend of %d %% pass', (percent) => {
    expect(() => makeMix({ ...TWO, thinner: [{ solvent: 'toluene', percent: percent - 30 }, { solvent: 'mek', percent: 30 }] }, '/m')).not.toThrow();
  });
});

describe('a cup reading', () => {
  const read = (seconds: number, temperature_C = 20) => makeMix({ ...TWO, cup: { kind: 'zahn-2', seconds, temperature_C } }, '/m');

  it('says the viscosity at the mix’s solids and the cup’s temperature', () => {
    const mix = read(30);
    // 3.5 (30 - 14) = 56 mm²/s.
    expect(viscosity_Pa_s(mix.viscosity, mix.volumeSolidsFraction, 293.15)).toBeCloseTo(56e-6 * mix.density_kg_m3, 12);
    expect(mix.warnings).toEqual([]);
  });

  it('warns outside the cup’s range', () => {
    expect(read(16).warnings[0]?.text).toMatch(/16 s is outside the range of the Zahn cup No\. 2, 20 to 80 s.*smaller hole/);
    expect(read(90).warnings[0]?.text).toMatch(/larger hole/);
  });

  it('comes back as the same seconds', () => {
    for (const kind of ['ford-4', 'iso-4', 'din-4', 'zahn-5']) {
      const mix = makeMix({ ...TWO, cup: { kind, seconds: 40, temperature_C: 25 } }, '/m');
      expect(cupSeconds(cupById(kind), mix.viscosity.reference_Pa_s / mix.density_kg_m3)).toBeCloseTo(40, 10);
    }
  });

  it('thins with warmth', () => {
    const { viscosity, volumeSolidsFraction } = read(30);
    expect(viscosity_Pa_s(viscosity, volumeSolidsFraction, 303.15)).toBeLessThan(viscosity_Pa_s(viscosity, volumeSolidsFraction, 293.15));
  });
});

describe('two readings', () => {
  it('give back the B that made them', () => {
    const law = { reference_Pa_s: 0.05, referenceSolidsFraction: 0.1, growth: 20, temperature_K: 298.15, sensitivity_K: 1730 };
    const at = (temperature_K: number) => ({ temperature_K, viscosity: viscosity_Pa_s(law, 0.1, temperature_K) });
    expect(fittedSensitivity_K(at(288), at(301))).toBeCloseTo(1730, 7);
  });

  it('must be apart and above 0', () => {
    expect(() => fittedSensitivity_K({ temperature_K: 290, viscosity: 1 }, { temperature_K: 291, viscosity: 2 })).toThrow('temperatures apart = 1 K');
    expect(() => fittedSensitivity_K({ temperature_K: 290, viscosity: 0 }, { temperature_K: 300, viscosity: 2 })).toThrow('viscosity = 0');
  });
});

describe('genericMix', () => {
  it('is clear dope thinned to the stated solids', () => {
    const mix = genericMix(0.1);
    const same = makeMix(GENERAL, '/m');
    expect(mix.thinnerRatio).toBeCloseTo(1, 12);
    expect(mix.density_kg_m3).toBeCloseTo(same.density_kg_m3, 9);
    expect(mix.warnings).toEqual([]);
  });

  it('takes the solids as stated above those of the can, with a warning', () => {
    const mix = genericMix(0.5, '/setUps/1');
    expect([mix.thinnerRatio, mix.volumeSolidsFraction]).toEqual([0, 0.5]);
    expect(mix.warnings).toMatchObject([{ place: { pointer: '/setUps/1' }, text: expect.stringMatching(/50 %, are above .* 20 %/) as unknown }]);
    expect(genericMix(0.2).warnings).toEqual([]);
  });

  it('holds at both ends of the solids that a set-up may state, and refuses others', () => {
    for (const solids of [0.001, 1]) expect(Number.isFinite(genericMix(solids).density_kg_m3)).toBe(true);
    expect(() => genericMix(0)).toThrow('volume solids = 0');
    expect(() => genericMix(NaN)).toThrow('volume solids = NaN');
  });
});

describe('changedMixSpec', () => {
  it('adds, changes and removes the retarder', () => {
    expect(changedMixSpec(TWO, { retarder_percent: 10 }).retarder).toEqual({ solvent: 'n-butanol', percent: 10 });
    const slow = { ...TWO, retarder: { solvent: 'diacetone-alcohol', percent: 5 } };
    expect(changedMixSpec(slow, { retarder_percent: 15 }).retarder).toEqual({ solvent: 'diacetone-alcohol', percent: 15 });
    expect(changedMixSpec(slow, { retarder_percent: 0 })).not.toHaveProperty('retarder');
    expect(changedMixSpec(slow, {}).retarder).toEqual(slow.retarder);
  });

  it('changes the thinner and forgets the cup', () => {
    const read = { ...TWO, cup: { kind: 'zahn-2', seconds: 30, temperature_C: 20 } };
    const changed = changedMixSpec(read, { thinnerPerFinish: 1.5 });
    expect(changed.thinnerPerFinish).toBe(1.5);
    expect(changed).not.toHaveProperty('cup');
  });
});
