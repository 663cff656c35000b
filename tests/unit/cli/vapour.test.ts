import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../sim/index.ts';
import { run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const path = join(folder, 'job.json');
const roomless = join(folder, 'roomless.json');
const demo = demoJob() as unknown as Record<string, unknown> & { coats: { id: string; recording?: string }[] };
const planned = demo.coats.find(({ recording }) => recording === undefined)!.id;
writeFileSync(path, JSON.stringify({ ...demo, schemes: undefined, room: { volume_m3: 120, fresh_m3_h: 3000, face_m2: 5.2, mixing: 4 } }));
writeFileSync(roomless, JSON.stringify({ ...demo, schemes: undefined, room: undefined }));

interface Part { readonly solvent: string; readonly ppm: number; readonly liquid_mL: number; readonly explosiveLimits: readonly { percent: number; source: string }[] }
interface Result {
  readonly [key: string]: unknown;
  readonly vapour_L: number;
  readonly lelFraction: number;
  readonly otherLelFraction: number;
  readonly timesExposureLimit: number;
  readonly dilution_m3: number;
  readonly dilutionRule_m3: number;
  readonly room_m3: number;
  readonly lel_percent: number;
  readonly solvents: readonly Part[]; readonly coats: readonly Readonly<Record<string, number>>[]; readonly course: { readonly worstLelFraction: number; readonly lelFraction: readonly number[] };
}

async function json(...argv: string[]): Promise<Result> {
  const { code, out, err } = await run(['vapour', ...argv, '--json']);
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out) as Result;
}

const plain = (text: string): string => text.replaceAll(/\s+/g, ' ');

describe('crosscoat vapour of a liquid', () => {
  it('gives vapour, share of the explosive limit and dilution air', async () => {
    const found = await json('--solvent', 'toluene', '--litres', '1', '--room', '120m3');
    expect(found).toMatchObject({ room_m3: 120, lel_percent: 1, limitName: 'ACGIH TLV', limit_ppm: 20 });
    expect(found['vapour_L']).toBeCloseTo(226.3, 0);
    expect(found['lelFraction']).toBeCloseTo(0.2263 / 120 / 0.01, 3);
    // 4 (100 - 1) V / 1 by the lower limit; 64.1 by the rule's own table.
    expect(found['dilution_m3']).toBeCloseTo(396 * 0.2263, 0);
    expect(found['dilutionRule_m3']).toBeCloseTo(64.1, 1);
  });

  it('names both limits of MEK, uses the lower, and gives eleven times the exposure limit', async () => {
    const found = await json('--solvent', 'mek', '--litres', '1', '--room', '120m3');
    expect(found).toMatchObject({ lel_percent: 1.5, otherLel_percent: 1.8, otherLelSource: expect.stringContaining('table G-11') as string, lelSource: expect.stringContaining('NFPA 497') as string });
    expect([(found.lelFraction * 100).toFixed(1), (found.otherLelFraction * 100).toFixed(1), found.timesExposureLimit.toFixed(0)]).toEqual(['14.9', '12.4', '11']);
    const { out } = await run(['vapour', '--solvent', 'mek', '--litres', '1', '--room', '120m3']);
    expect(plain(out)).toContain('By the higher published limit, 1.8 %, it is 12.4 %; the lower is used.');
    for (const part of ['not a clearance', 'Who decides', 'Far from exploding is not fit to breathe', 'shipyard rule']) expect(plain(out)).toContain(part);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(96);
  });

  it('reads gallons, feet and ft³/min for what they are', async () => {
    const us = await json('--solvent', 'acetone', '--litres', '1 US gal', '--room', '20x15x10ft', '--temp', '68F', '--over', '15min', '--fresh', '5600cfm', '--face', '8x7 ft');
    const metric = await json('--solvent', 'acetone', '--litres', '3.785411784', '--room', '84.95053977600001m3', '--temp', '20', '--over', '15', '--fresh', '9514.460454912m3/h', '--face', '5.20256256m2');
    for (const key of ['vapour_L', 'lelFraction', 'dilution_m3', 'room_m3'] as const) expect(us[key] / metric[key]).toBeCloseTo(1, 6);
    expect(us.course.worstLelFraction / metric.course.worstLelFraction).toBeCloseTo(1, 6);
    expect(us.course.worstLelFraction).toBeLessThan(us.lelFraction);
    const { out } = await run(['vapour', '--solvent', 'acetone', '--litres', '1', '--room', '4200ft3', '--over', '15min', '--fresh', '5600 ft3/min', '--face', '8x7ft', '--units', 'us']);
    expect(plain(out)).toMatch(/mean of 100 ft\/min, in the design range for air guns .* that speed is a fire rule, not a health rule/);
  });

  it('takes a blend by shares of the liquid', async () => {
    const found = await json('--blend', 'mek:40, toluene:30,n-butyl-acetate:30', '--litres', '500 mL', '--room', '60m3');
    expect(found.solvents.map(({ solvent, liquid_mL }) => [solvent, Math.round(liquid_mL)])).toEqual([['mek', 200], ['toluene', 150], ['n-butyl-acetate', 150]]);
    expect(found['lel_percent']).toBeGreaterThan(1);
    expect(found['lel_percent']).toBeLessThan(1.5);
  });
});

describe('crosscoat vapour of a job', () => {
  it('follows one coat minute by minute in the job\'s room, or in another', async () => {
    const here = await json(path, '--coat', planned);
    const small = await json(path, '--coat', planned, '--room', '40m3');
    const [coat, smaller] = [here.coats[0]!, small.coats[0]!];
    expect(coat['solvent_mL']).toBeGreaterThan(50);
    expect(smaller['lelFraction']).toBeGreaterThan(coat['lelFraction']!);
    expect(coat['airExposure_m3_h']).toBeGreaterThan(10 * coat['airQuarterLel_m3_h']!);
    const { code, out } = await run(['vapour', path, '--coat', planned]);
    expect(code).toBe(0);
    for (const part of ['At the worst, minute', 'Fan off. All of it turned to vapour', 'were minute', 'Limits, lowest first', 'not a clearance']) expect(plain(out)).toContain(part);
  }, 30_000);

  it('prints every coat of the demo\'s scheme', async () => {
    const whole = join(folder, 'whole.json');
    writeFileSync(whole, JSON.stringify(demo));
    const { code, out } = await run(['vapour', whole]);
    expect(code).toBe(0);
    expect(plain(out)).toMatch(/of solvent in all goes into the air\. Each coat by itself/);
    expect(out.split('\n').filter((line) => /cross coat/.test(line)).length).toBeGreaterThan(2);
  }, 60_000);
});

describe('what it refuses', () => {
  it.each<[string, string[], RegExp]>([
    ['nothing', [], /nothing to evaporate; give --solvent or --blend/],
    ['a job and a liquid', [path, '--solvent', 'mek'], /two questions; give one/],
    ['an unknown solvent', ['--solvent', 'tolune', '--litres', '1', '--room', '9m3'], /unknown solvent "tolune"; did you mean "toluene"/],
    ['no amount', ['--solvent', 'mek', '--room', '9m3'], /--litres is missing.*such as 1L or 1 US gal/],
    ['no room', ['--solvent', 'mek', '--litres', '1'], /--room is missing.*such as 120m3 or 20x15x10ft/],
    ['a gallon of no country', ['--solvent', 'mek', '--litres', '1 gal', '--room', '9m3'], /may be US or imperial/],
    ['less than no liquid', ['--solvent', 'mek', '--litres', '-1', '--room', '9m3'], /liquid of methyl ethyl ketone = -0\.001 m³ is not from 0/],
    ['a room of two sides', ['--solvent', 'mek', '--litres', '1', '--room', '20x15ft'], /has 2 sides, not 3/],
    ['a room without unit', ['--solvent', 'mek', '--litres', '1', '--room', '20x15x10'], /has no unit; write 6x4\.5x3m/],
    ['a room like a matchbox', ['--solvent', 'mek', '--litres', '1', '--room', '5L'], /is 0\.005 m³, not from 1 to 100000 m³/],
    ['a blend that does not add up', ['--blend', 'mek:40,toluene:30', '--litres', '1', '--room', '9m3'], /shares add to 70 %, not to 100 %/],
    ['a blend without shares', ['--blend', 'mek', '--litres', '1', '--room', '9m3'], /"mek" has no share/],
    ['a solvent twice', ['--blend', 'mek:50,mek:50', '--litres', '1', '--room', '9m3'], /names a solvent twice/],
    ['solvent and blend', ['--solvent', 'mek', '--blend', 'mek:100', '--litres', '1', '--room', '9m3'], /both say what evaporates/],
    ['a fan without a time', ['--solvent', 'mek', '--litres', '1', '--room', '9m3', '--fresh', '100cfm'], /--fresh says nothing without a time/],
    ['a mixing factor below 1', ['--solvent', 'mek', '--litres', '1', '--room', '9m3', '--mixing', '0.5'], /--mixing = "0\.5" is not from 1 to 10/],
    ['a flow that is a length', ['--solvent', 'mek', '--litres', '1', '--room', '9m3', '--over', '5min', '--fresh', '3m'], /--fresh = "3m" is not a flow/],
    ['a job without room', [roomless, '--coat', planned], /the job states no room; give --room/],
    ['an unknown coat', [path, '--coat', 'nowhere'], /no scheme of coats|"nowhere" is no coat/],
    ['litres beside a job', [path, '--litres', '1'], /of a liquid; a job says its own/],
  ])('%s', async (_what, argv, message) => {
    const { code, out, err } = await run(['vapour', ...argv]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(message);
  });
});
