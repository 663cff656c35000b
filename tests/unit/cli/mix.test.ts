import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../sim/index.ts';
import { run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const jobPath = join(folder, 'job.json');
const plain = demoJob();
writeFileSync(jobPath, JSON.stringify({ ...plain, mixes: plain.mixes.map((mix) => (mix.id === 'general' ? { ...mix, cup: { kind: 'zahn-2', seconds: 30, temperature_C: 20 } } : mix)) }));

type Json = { readonly [key: string]: never };

async function json(...argv: string[]): Promise<Json> {
  const { code, out, err } = await run(['mix', ...argv, '--json']);
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out) as Json;
}

async function refused(...argv: string[]): Promise<string> {
  const { code, out, err } = await run(['mix', ...argv]);
  expect([code, out]).toEqual([2, '']);
  return err;
}

describe('crosscoat mix, a cup', () => {
  it('turns seconds into a viscosity', async () => {
    // 3.85 (36 - 4.49).
    expect(await json('--cup', 'ford4', '--seconds', '36')).toMatchObject({ cup: 'ford-4', seconds: 36, viscosity_mm2_s: 121.3135, inRange: true, range_s: [20, 100], estimate: expect.stringContaining('planning estimate') as string });
    expect(await json('--cup', 'ford-4', '--seconds', '36 s')).toEqual(await json('--cup', 'Ford No. 4', '--seconds', '0.6min'));
  });

  it('turns a viscosity into seconds', async () => {
    expect((await json('--cup', 'iso4', '--viscosity', '50'))['seconds']).toBeCloseTo(40.13, 2);
    expect((await json('--cup', 'zahn2', '--viscosity', '100 cSt'))['seconds']).toBeCloseTo(42.57, 2);
  });

  it('turns one cup into another, and one temperature', async () => {
    const result = await json('--from', 'ford4', '--seconds', '30', '--to', 'zahn2', '--temp', '25C', '--at', '15C') as unknown as { to: { seconds: number }; at: { seconds: number; low_s: number; high_s: number } };
    expect(result.to.seconds).toBeCloseTo(98.2135 / 3.5 + 14, 3);
    expect(result.at.seconds).toBeCloseTo((98.2135 * Math.exp(2000 * (1 / 288.15 - 1 / 298.15))) / 3.85 + 4.49, 6);
    expect(result.at.low_s).toBeLessThan(result.at.seconds);
    expect(result.at.high_s).toBeGreaterThan(result.at.seconds);
    const { out } = await run(['mix', '--cup', 'ford4', '--seconds', '22', '--temp', '59F', '--at', '30C']);
    expect(out.replaceAll(/\s+/g, ' ')).toContain('no seconds are given; the Zahn cup No. 2 fits (20 to 80 s)');
  });

  it.each([
    [['--cup', 'ford4', '--seconds', '19'], /19 s is outside the range of the Ford cup No\. 4, 20 to 100 s.*zahn-2/],
    [['--cup', 'zahn2', '--seconds', '81'], /20 to 80 s/],
    [['--cup', 'iso4', '--viscosity', '500'], /500 mm²\/s is too thick.*34\.4 to 135 mm²\/s.*iso-6/],
    [['--from', 'zahn5', '--seconds', '40', '--to', 'ford4'], /too thick for the Ford cup No\. 4/],
    [['--cup', 'frod4', '--seconds', '30'], /did you mean "ford-4"/],
    [['--seconds', '30'], /mean nothing without their cup/],
    [['--cup', 'ford4', '--seconds', '-5'], /no drain time/],
    [['--cup', 'ford4', '--seconds', '30,5'], /holds a comma/],
    [['--cup', 'ford4', '--seconds', 'NaN'], /not a time/],
    [['--cup', 'ford4', '--viscosity', '-1'], /no kinematic viscosity/],
    [['--cup', 'ford4', '--seconds', '30', '--viscosity', '100'], /give one of them/],
    [['--cup', 'ford4', '--seconds', '30', '--at', '15C'], /give --temp/],
    [['--cup', 'ford4', '--seconds', '30', '--temp', '20C', '--at', '200C'], /not from -20 to 60/],
    [['--from', 'ford4', '--to', 'zahn2'], /give --seconds too/],
    [[jobPath, '--cup', 'ford4', '--seconds', '30'], /about a cup alone.*the job; leave it out/],
    [['--cup', 'ford4', '--seconds', '36', '--ratio', '4:1', '--pot', '2L'], /--seconds is about a cup alone, so it cannot answer --ratio, --pot; leave them out/],
    [['--cup', 'ford4', '--viscosity', '100', '--reading', '1:1 zahn2 20s 20C'], /--viscosity is about a cup alone, so it cannot answer --reading/],
  ])('refuses %j', async (argv, words) => {
    expect(await refused(...argv)).toMatch(words);
  });
});

describe('crosscoat mix, a batch', () => {
  it('fills a pot to marks, by volume and by weight', async () => {
    const result = await json('--ratio', '8:1:1', '--pot', '2L') as unknown as { pots: { pours: { part: string; fillTo_mL: number }[] }; retarder: { judgement: string }; warnings: unknown[] };
    expect(result.pots.pours.map(({ part, fillTo_mL }) => [part, fillTo_mL])).toEqual([['finish', 1600], ['thinner', 1800], ['retarder', 2000]]);
    // A third figure as large as the second is half of the thinner: far more than practice.
    expect(result.retarder.judgement).toBe('too-much');
    expect(result.warnings).toHaveLength(1);
    const weighed = await json('--ratio', '4:1', '--by', 'weight', '--pot', '2L') as unknown as { parts: { finish: { weight_g: number }; thinner: { weight_g: number } } };
    expect(weighed.parts.finish.weight_g / weighed.parts.thinner.weight_g).toBeCloseTo(4, 9);
  });

  it('is area, film and coats over what lands, and wide where the solids are', async () => {
    const result = await json('--ratio', '4:1', '--area', '6m2', '--dry', '25um', '--coats', '2', '--transfer', '60%', '--left', '0mL', '--pot', '2L') as unknown as { film: { wet_um: { value: number; low: number } }; liquid_mL: { value: number }; pots: { count: number } };
    expect(result.film.wet_um).toMatchObject({ value: 156.25, low: 125 });
    expect(result.liquid_mL.value).toBeCloseTo((6 * 2 * 156.25) / 0.6, 6);
    expect(result.pots.count).toBe(2);
  });

  it('finds the ratio for the seconds wanted from two readings, and says when that is beyond them', async () => {
    const readings = ['--reading', '1:1 zahn2 20s 20C', '--reading', '4:1 zahn2 40s 20C'];
    const inside = await json(...readings, '--want', '30s') as unknown as { thinnerPerFinish: number; thinning: { origin: string; seconds: number; beyondReadings: boolean } };
    expect(inside.thinning).toMatchObject({ origin: 'readings', beyondReadings: false });
    expect(inside.thinning.seconds).toBeCloseTo(30, 6);
    // ln 56 between ln 91 at x 0.2 and ln 21 at x 0.5.
    const x = 0.2 + (0.3 * Math.log(91 / 56)) / Math.log(91 / 21);
    expect(inside.thinnerPerFinish).toBeCloseTo(x / (1 - x), 9);
    const { out } = await run(['mix', ...readings, '--want', '60s']);
    expect(out.replaceAll(/\s+/g, ' ')).toContain('That lies outside your readings, so it is a guess');
  });

  it('prints the textbook guesses only where they are asked for', async () => {
    const [plainly, guessed] = [await run(['mix', '--ratio', '4:1']), await run(['mix', '--ratio', '4:1', '--guess'])];
    expect([plainly.code, guessed.code]).toEqual([0, 0]);
    expect(plainly.out).not.toContain('First guess');
    expect(guessed.out).toContain('First guess by the textbook rules');
    expect(plainly.out).toContain('Before mixing');
  });

  it('prints a mix of a job by its cup reading, and a slip with cautions and boxes', async () => {
    const slip = join(folder, 'slip.html');
    const { code, out } = await run(['mix', jobPath, '--mix', 'general', '--pot', '1L', '--units', 'us', '--slip', slip]);
    expect(code).toBe(0);
    for (const words of ['By the cup reading in the job', '30 s in the Zahn cup No. 2', 'Before mixing', 'electric drill', 'must not be used', 'fl oz US', 'scale shows']) expect(out.replaceAll(/\s+/g, ' ')).toContain(words);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(Math.max(96, slip.length + 50));
    const html = readFileSync(slip, 'utf8');
    for (const words of ['<h2>Before you mix</h2>', 'Bond the can', 'Cup seconds read', 'Mixed by', '<svg', 'fill the pot to', 'never calls a room safe']) expect(html).toContain(words);
    expect(html.indexOf('Before you mix')).toBeLessThan(html.indexOf('<h2>Pour</h2>'));
    expect(html.match(/(?:src|href)=|<script|@import/g)).toBeNull();
  });

  it.each([
    [['--ratio', '10 %'], /--ratio: ratio "10 %" may be of the finish or of the total/],
    [['--ratio', '4:1', '--pot', '-2L'], /mix: pot/],
    [['--ratio', '2,5:1'], /comma/],
    [['--area', '6m2'], /give either --dry.*or --wet/],
    [['--area', '6m2', '--dry', '25um', '--wet', '100um'], /give either/],
    [['--dry', '25um'], /give --area too/],
    [['--area', '6m2', '--dry', '25um', '--coats', '1.5'], /whole number/],
    [['--area', '6m2', '--dry', '25um', '--transfer', '0%'], /share landed/],
    [['--reading', '1:1 zahn2 20s 20C'], /give it again/],
    [['--reading', '1:1 zahn2 20s', '--reading', '4:1'], /not four things/],
    [['--reading', '1:1 zahn2 20s 20C', '--reading', '4:1 ford4 15s 20C'], /15 s is outside the range/],
    [['--reading', '1:1 zahn2 30s 20C', '--reading', '1:1 zahn2 20s 20C'], /of one ratio/],
    [['--want', '5s'], /outside the range of the Zahn cup No\. 2/],
    [['--mix', 'genral'], /did you mean "general"/],
    [[jobPath, '--mix', 'nope'], /holds no mix "nope"/],
  ])('refuses %j', async (argv, words) => {
    expect(await refused(...argv)).toMatch(words);
  });
});
