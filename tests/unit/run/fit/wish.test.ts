import { describe, expect, it } from 'vitest';
import { fitKinds } from '../../../../sim/run/fit/fitKinds.ts';
import type { Wish } from '../../../../sim/run/fit/wish.ts';
import { workOut } from '../../../../sim/run/fit/workOut.ts';
import { defaultMix } from '../../../../sim/job/defaults.ts';
import { fitJob } from './fitJob.ts';

const UM = 1e-6;

const IMPOSSIBLE: readonly (readonly [name: string, wish: Wish, code: string, says: RegExp])[] = [
  ['no coats', { coatCount: 0 }, 'range', /coats = 0 .*give how many/],
  ['half a coat', { coatCount: 1.5 }, 'range', /not a whole number/],
  ['a number that is none', { dry_m: NaN }, 'range', /NaN/],
  ['negative film', { dry_m: -25 * UM }, 'range', /nothing to spray/],
  ['no film', { dry_m: 0 }, 'range', /nothing to spray/],
  ['negative weight', { weight_kg_m2: -1 }, 'range', /nothing to spray/],
  ['film in metres by mistake', { dry_m: 25 }, 'range', /not from 0 to 0.001/],
  ['two amounts', { dry_m: 25 * UM, weight_kg_m2: 0.03 }, 'schema', /give one of them/],
  ['more dry than the solids can give', { dry_m: 900 * UM }, 'range', /900 µm dry in one coat needs .* more coats/],
  ['distances crossed', { limits: { distance_m: [0.3, 0.2] } }, 'range', /the least comes first/],
  ['speeds crossed', { limits: { speed_m_s: [0.5, 0.2] } }, 'range', /most speed/],
  ['an overlap of all', { limits: { overlapFraction: [0.5, 1] } }, 'range', /overlap/],
  ['no set-ups', { limits: { setUps: [] } }, 'schema', /no set-up may be used.*gun/],
  ['no mixes', { limits: { mixes: [] } }, 'schema', /no mix may be used/],
  ['an unknown set-up', { limits: { setUps: ['other'] } }, 'not-found', /"other" is not in the job/],
  ['rates of an unknown gun', { limits: { fluidRate_m3_s: { other: [1e-6, 2e-6] } } }, 'not-found', /"other"/],
  ['distances that no set-up is believed for', { limits: { distance_m: [0.5, 0.6] } }, 'range', /100 to 400 mm.*500 to 600 mm/],
  ['no time', { limits: { mostTime_s: 0 } }, 'range', /most time/],
];

describe('impossible wishes', () => {
  it.each(IMPOSSIBLE)('%s', (_, wish, code, says) => {
    expect(() => workOut(fitJob(), 'coat', wish)).toThrow(expect.objectContaining({ code, message: expect.stringMatching(says) as string }));
  });

  it('a film that no gun throws at any speed', () => {
    const wish: Wish = { dry_m: 1e-8, limits: { fluidRate_m3_s: { gun: [6e-6, 6e-6] }, passes: 'cross' } };
    expect(() => workOut(fitJob(), 'coat', wish)).toThrow(expect.objectContaining({ code: 'range', message: expect.stringMatching(/no speed from 0.01 to 5/) as string }));
  });

  it('a coat that is not there', () => {
    expect(() => workOut(fitJob(), 'none', {})).toThrow(expect.objectContaining({ code: 'not-found' }));
  });
});

describe('what a wish asks of one coat', () => {
  const target = (wish: Wish) => fitKinds(fitJob(), 'coat', wish).kinds[0]!.setting.target;

  it('is the coat’s own target where nothing else is said', () => {
    expect(target({})).toMatchObject({ film: 'wet' });
    expect(target({}).thickness_m).toBeCloseTo(50 * UM, 12);
  });

  it('is a share of the film of all coats, by thickness or by weight', () => {
    expect(target({ dry_m: 30 * UM, coatCount: 3 })).toMatchObject({ film: 'dry' });
    expect(target({ dry_m: 30 * UM, coatCount: 3 }).thickness_m).toBeCloseTo(10 * UM, 12);
    // Clear dope's solids: 1250 kg/m³.
    expect(target({ weight_kg_m2: 0.0375, coatCount: 3 }).thickness_m).toBeCloseTo(10 * UM, 12);
  });
});

describe('kinds of way', () => {
  it('are every set-up with every mix of the same finish, single and cross', () => {
    const job = fitJob();
    const other = { ...defaultMix('primer', 'Primer'), finish: 'primer' };
    const more = { ...job, mixes: [...job.mixes, defaultMix('second', 'Second'), other] };
    const names = (wish: Wish) => fitKinds(more, 'coat', wish).kinds.map(({ mixId, cross }) => `${mixId} ${cross ? 'cross' : 'single'}`);
    expect(names({})).toEqual(['mix single', 'mix cross', 'second single', 'second cross']);
    expect(names({ limits: { passes: 'cross', mixes: ['primer'] } })).toEqual(['primer cross']);
  });

  it('leave out a set-up that contradicts itself, and say why', () => {
    const job = fitJob();
    const [gun] = job.setUps;
    const broken = { ...gun!, id: 'broken', fan: { ...gun!.fan, depth_mm: 2 * gun!.fan.width_mm } };
    const found = fitKinds({ ...job, setUps: [broken, gun!] }, 'coat', {});
    expect(found.kinds.map(({ setUpId }) => setUpId)).toEqual(['gun', 'gun']);
    expect(found.leftOut).toEqual([expect.stringMatching(/depth_mm/)]);
    expect(() => fitKinds({ ...job, setUps: [broken] }, 'coat', {})).toThrow(/depth_mm/);
  });

  it('a coat without a mix keeps without, and its thinner is not turned', () => {
    const job = fitJob();
    const { id, name, panel, setUp, target, plan, hand } = job.coats[0]!;
    const bare = { id, name, panel, setUp, target, plan, hand };
    const kind = fitKinds({ ...job, coats: [bare] }, 'coat', { dry_m: 8 * UM }).kinds[0]!;
    expect(kind.mixId).toBeNull();
    expect(kind.axes.thinner.low).toBe(kind.axes.thinner.high);
  });
});
