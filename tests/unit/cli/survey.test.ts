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
    expect(await json(readings, '--rule', 'iso19840-lenient', '--nominal', '100')).toMatchObject({ verdict: 'pass' });
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

  it('90-10 and the shop’s own', async () => {
    expect(await json(readings, '--rule', '90-10', '--nominal', '100um')).toMatchObject({ verdict: 'fail' });
    expect(await json(readings, '--rule', 'shop', '--min', '98um', '--mean-max', '106.8um', '--spread', '10%')).toMatchObject({ verdict: 'pass' });
  });

  it('coupons and combs by stated density and solids', async () => {
    const coupon = file('coupon.csv', 'before_g,after_g,area_cm2\n10,10.325,100\n');
    expect(await json(coupon, '--rule', 'shop', '--min', '25um', '--max', '25um', '--density', '1.3g/cm3')).toMatchObject({ verdict: 'pass', mean_um: 25 });
    const comb = file('comb.csv', 'wft_low_um,wft_high_um\n150,175\n');
    expect(await json(comb, '--rule', 'shop', '--mean-min', '25um', '--solids', '16%')).toMatchObject({ verdict: 'undecided' });
    expect((await run(['survey', coupon, '--rule', 'shop', '--min', '25um'])).err).toContain('dryDensity_kg_m3 is not given');
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
    [[readings, '--rule', 'iso19840', '--nominal', '100ft'], 'nominal'],
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
