import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { demoJob, serialiseJob, type Job } from '../../../sim/index.ts';
import { inPieces, run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const file = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const readings = file('readings.csv', 'dft_um\n105\n98\n110\n120\n101\n');
const mils = file('mils.csv', 'dft_mil\n2.5\n2.1\n2.8\n3.1\n2.5\n');
const json = async (...argv: string[]) => JSON.parse((await run(['survey', ...argv, '--json'])).out) as Record<string, unknown>;

describe('crosscoat survey', () => {
  it('judges a column of readings, strict and lenient', async () => {
    expect(await json(readings, '--rule', 'iso19840', '--nominal', '100um')).toMatchObject({ verdict: 'fail', mean_um: 106.8, count: 5, reason: expect.stringContaining('fewer than 20 %') as string });
    expect(await json(readings, '--rule', 'iso19840-lenient', '--nominal', '100um')).toMatchObject({ verdict: 'pass' });
  });

  it('exit code 1 with --strict where it fails, 0 without', async () => {
    expect((await run(['survey', readings, '--rule', 'iso19840', '--nominal', '100um', '--strict'])).code).toBe(1);
    expect((await run(['survey', readings, '--rule', 'iso19840', '--nominal', '100um'])).code).toBe(0);
    expect((await run(['survey', readings, '--rule', 'iso19840-lenient', '--nominal', '100um', '--strict'])).code).toBe(0);
  });

  it('pa2 by level, in mil, with what was made of the rows', async () => {
    for (const [level, verdict] of [['1', 'fail'], ['2', 'fail'], ['3', 'pass'], ['5', 'pass']] as const) {
      expect(await json(mils, '--rule', 'pa2', '--min', '2.5mil', '--max', '3mil', '--level', level)).toMatchObject({ verdict, areas: [{ mean_um: [66.04, 66.04] }] });
    }
    const { out } = await run(['survey', mils, '--rule', 'pa2', '--min', '2.5mil', '--max', '3mil', '--units', 'us']);
    expect(out).toContain('every spot reaches 2 mil (lowest: spot 2, 2.1 mil)');
    expect(out).toContain('each is taken as the mean of');
    expect(await json(mils, '--rule', 'pa2', '--nominal', '2.6mil', '--spot-means')).toMatchObject({ rule: { min_um: 52.832, max_um: 79.248 }, grouping: { spots: 'means-named' } });
  });

  it('pa2 on one spot passes, says so, and is not enough with --strict; five spots are', async () => {
    const spot = file('spot.csv', 'dft_mil\n2.6\n2.7\n2.8\n');
    const asked = ['--rule', 'pa2', '--min', '2.5mil', '--max', '3mil', '--level', '2'];
    expect(await json(spot, ...asked)).toMatchObject({ verdict: 'pass', reason: expect.stringMatching(/^Passes: on 1 spot of the five that the rule asks for, every area reaches 63\.5 µm/) as string });
    expect((await run(['survey', spot, ...asked, '--strict'])).code).toBe(1);
    expect((await run(['survey', spot, ...asked])).code).toBe(0);
    const five = ['--rule', 'pa2', '--min', '2.5mil', '--max', '3mil', '--level', '3', '--strict'];
    expect((await run(['survey', mils, ...five])).code).toBe(0);
    expect((await run(['survey', mils, ...five])).out).toContain('Passes: every area');
    const two = file('two.csv', `area_id,dft_mil\n${'A,2.6\n'.repeat(15)}${'B,2.6\n'.repeat(3)}`);
    expect(await json(two, ...asked)).toMatchObject({ reason: expect.stringContaining('Passes: with 1 of 2 areas on fewer than the five spots') as string });
  });

  it('a coupon exactly at the limit passes, whatever its own weight', async () => {
    for (const [before, after] of [['100.00', '100.13'], ['100.13', '100.26'], ['0.87', '1.00'], ['4321.99', '4322.12']] as const) {
      const coupon = file('limit.csv', `before_g,after_g,area_cm2\n${before},${after},100\n`);
      for (const side of ['--min', '--max']) expect(await json(coupon, '--rule', 'shop', side, '10um', '--density', '1300kg/m3')).toMatchObject({ verdict: 'pass' });
    }
    const thin = file('thin.csv', 'before_g,after_g,area_cm2\n100.00,100.1299,100\n');
    expect(await json(thin, '--rule', 'shop', '--min', '10um', '--density', '1300kg/m3')).toMatchObject({ verdict: 'fail' });
  });

  it('the table says that combs count by the middle, the interval how it is meant', async () => {
    const comb = file('combs.csv', 'wft_low_um,wft_high_um\n100,125\n125,150\n');
    const { out } = await run(['survey', comb, '--rule', 'shop', '--min', '20um', '--solids', '20%']);
    expect(out).toMatch(/least, by the middle of the teeth +22\.5 µm/);
    expect(out).toContain('95 % interval of the mean (at least this wide)');
    expect((await run(['survey', readings, '--rule', 'shop', '--min', '20um'])).out).toMatch(/\nleast +98 µm/);
  });

  it('a comb wetted to its last tooth, and a mean that is known well enough, in words', async () => {
    const wetted = file('wetted.csv', 'wft_low_um,wft_high_um\n100,\n');
    const { out } = await run(['survey', wetted, '--rule', 'shop', '--min', '20um', '--solids', '20%']);
    expect(out).not.toContain('0 readings');
    expect(out.replaceAll(/\s+/g, ' ')).toContain('no reading has an upper bound, since every tooth of a comb was wetted');
    const sure = file('sure.csv', 'dft_um\n100\n100.1\n100\n100.1\n');
    expect((await run(['survey', sure, '--rule', 'shop', '--mean-min', '20um'])).out.replaceAll(/\s+/g, ' ')).toMatch(/no more readings are needed to know it to within 5 µm\. - To tell the mean from 20 µm: no more readings are needed, if/);
  });

  it('90-10 and the shop’s own', async () => {
    expect(await json(readings, '--rule', '90-10', '--nominal', '100um')).toMatchObject({ verdict: 'fail' });
    expect(await json(readings, '--rule', 'shop', '--min', '98um', '--mean-max', '106.8um', '--spread', '10%')).toMatchObject({ verdict: 'pass' });
  });

  it('coupons and combs by stated density and solids', async () => {
    const coupon = file('coupon.csv', 'before_g,after_g,area_cm2\n10,10.325,100\n');
    expect(await json(coupon, '--rule', 'shop', '--min', '25um', '--max', '25um', '--density', '1.3g/cm3')).toMatchObject({ verdict: 'pass', mean_um: 25 });
    const comb = file('comb.csv', 'wft_low_um,wft_high_um\n150,175\n');
    expect(await json(comb, '--rule', 'shop', '--mean-min', '25um', '--solids', '16%')).toMatchObject({ verdict: 'undecided' });
    expect((await run(['survey', coupon, '--rule', 'shop', '--min', '25um'])).err).toContain('reading 1 is a coupon, whose weight gives a film only by the density of the dry film; state it, such as --density 1300kg/m3');
    expect((await run(['survey', comb, '--rule', 'shop', '--min', '25um'])).err).toContain('--solids 20%');
    expect((await run(['survey', coupon, '--rule', 'shop', '--min', '25um', '--density', '13'])).code).toBe(2);
  });

  it('readings of the standard input, without a header', async () => {
    const { out } = await run(['survey', '-', '--rule', 'iso19840', '--nominal', '2mil', '--unit', 'mil', '--json'], { input: () => inPieces('2.5\n2.6\n') });
    expect(JSON.parse(out)).toMatchObject({ name: 'standard input', verdict: 'pass', mean_um: 64.77 });
  });

  it('plans the number of readings', async () => {
    expect(await json('--plan', '--area', '2800ft2', '--rule', 'pa2')).toMatchObject({ areas: 5, spots: 25, readings: 75 });
    expect(await json('--plan', '--area', '12500 sq ft', '--rule', 'pa2')).toMatchObject({ areas: 15, spots: 75, readings: 225 });
    expect(await json('--plan', '--area', '1.5m2', '--rule', 'iso19840')).toMatchObject({ areas: 1, readings: 10, repeats: 2 });
    expect((await run(['survey', '--plan', '--area', '3m2', '--rule', 'iso19840'])).out).toContain('10 readings, of which 2 may be taken again');
  });

  it('judges the surveys of a job, all or one, by their own rule or another', async () => {
    const demo = demoJob();
    const survey = { name: 'Rudder', panel: demo.part.panels[0]!.id, coats: [], at: '2026-05-04T08:00Z', who: 'A finisher', rule: { kind: 'mean-80' as const, nominal_um: 100, low_percent: 80, share_percent: 20, boundary: 'strict' as const, correction_um: 0 }, readings: [{ kind: 'metal' as const, dry_um: 99 }], history: [] };
    const job: Job = { ...demo, surveys: [{ ...survey, id: 'one' }, { ...survey, id: 'two' }] };
    const path = file('job.json', serialiseJob(job));
    expect(await json(path)).toMatchObject({ surveys: [{ survey: 'one', verdict: 'fail' }, { survey: 'two' }] });
    expect(await json(path, '--survey', 'two', '--rule', '90-10', '--nominal', '99um')).toMatchObject({ survey: 'two', verdict: 'pass' });
    expect((await run(['survey', path])).out).toContain('open cloth');
    expect((await run(['survey', path, '--survey', 'three'])).err).toContain('it has one, two');
    expect((await run(['survey', path, '--unit', 'mil'])).err).toContain('--unit is for a file of readings');
    expect((await run(['survey', file('bare.json', serialiseJob({ ...demo, surveys: undefined }))])).err).toContain('the job has no survey');
  });

  it.each([
    [[readings], '--rule is missing'],
    [[readings, '--rule', 'iso19840'], 'needs --nominal'],
    [[readings, '--rule', 'pa2'], 'needs --min'],
    [[readings, '--rule', 'pa2', '--nominal', '1mil', '--min', '1mil'], '--nominal is a single value'],
    [[readings, '--rule', '90-10', '--nominal', '1mil', '--level', '3'], '--rule 90-10 has no --level'],
    [[readings, '--rule', 'pa2', '--min', '3mil', '--max', '2mil'], 'no film could pass'],
    [[readings, '--rule', 'iso19840', '--nominal', '100ft'], '--nominal = "100ft": give a number from 0.1 to 5000'],
    [[readings, '--rule', 'pa2', '--min', '3mil', '--max', '2mil'], '--max = "2mil" is below --min = "3mil"'],
    [[readings, '--rule', 'shop', '--mean-min', '90um', '--mean-max', '2mil'], '--mean-max = "2mil" is below --mean-min = "90um"'],
    [[readings, '--rule', 'pa2', '--nominal', '9mm'], '--nominal = "9mm"'],
    [[readings, '--rule', 'shop'], 'give one at least of --min, --max, --mean-min, --mean-max, --spread'],
    [[readings, '--rule', 'iso19840', '--nominal', '100', '--units', 'us'], '--nominal = "100" does not say its unit; write it behind the number (understood: um, mil, mm or in), such as 100um or 4mil'],
    [[readings, '--rule', 'pa2', '--min', '1/2'], '--min = "1/2" does not say its unit'],
    [[readings, '--rule', 'pa2', '--min', '1mil', '--max', '1e2'], '--max = "1e2" does not say its unit'],
    [[readings, '--rule', 'iso19840', '--nominal', '4mil', '--low', '0.8'], '--low = "0.8" does not say its unit; write it behind the number (understood: %), such as 20%'],
    [[readings, '--rule', 'shop', '--min', '1mil', '--density', '1300'], '--density = "1300" does not say its unit'],
    [['--plan', '--area', '2800', '--rule', 'pa2'], '--area = "2800" does not say its unit; write it behind the number (understood: m2, ft2, cm2 or in2)'],
    [[file('unitless.csv', 'dft,note\n3,a\n'), '--rule', 'pa2', '--min', '1mil'], 'write dft_um or dft_mil, or give --unit um|mil|mm'],
    [[file('headless.csv', '3\n4\n'), '--rule', 'pa2', '--min', '1mil'], 'headless.csv has no header that says the unit of its numbers; put one above them, such as dft_um or dft_mil, or give --unit um|mil|mm'],
    [[readings, '--nominal', '1mil'], '--nominal belongs to a rule'],
    [[readings, '--rule', 'iso19840', '--nominal', '1mil', '--survey', 'x'], '--survey is for a job file'],
    [[readings, '--rule', 'iso19840', '--nominal', '1mil', '--area', '1m2'], '--area goes with --plan'],
    [['--plan', '--rule', 'pa2'], '--plan needs --area and --rule'],
    [['--plan', readings, '--rule', 'pa2', '--area', '1m2'], '--plan reads no file'],
    [[], 'needs a file of readings'],
  ])('%j is refused', async (argv, words) => {
    const { code, err } = await run(['survey', ...argv]);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });
});
