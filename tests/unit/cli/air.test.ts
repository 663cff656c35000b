import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { demoJob, genericMixSpec } from '../../../sim/index.ts';
import { run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const jobPath = join(folder, 'job.json');
const barePath = join(folder, 'bare.json');
const slow = { ...genericMixSpec('clear-dope', 'retarded', 1), id: 'slow', name: 'winter mix', retarder: { solvent: 'diacetone-alcohol', percent: 10 } };
const lacquer = { ...genericMixSpec('lacquer', 'fast', 1), id: 'quick', name: 'summer mix' };
/** Its schemes name mixes of the demo, which go too. */
const plain = Object.fromEntries(Object.entries(demoJob()).filter(([key]) => key !== 'schemes')) as Record<string, unknown>;
/** The coats of the demo may name its own mixes, which go. */
const coats = (plain['coats'] as Record<string, unknown>[]).map((coat) => Object.fromEntries(Object.entries(coat).filter(([key]) => key !== 'mix')));
writeFileSync(jobPath, JSON.stringify({ ...plain, schemaVersion: 2, coats, mixes: [slow, lacquer] }));
writeFileSync(barePath, JSON.stringify({ ...plain, schemaVersion: 2, coats, mixes: [] }));

interface AirResult {
  readonly [key: string]: unknown;
  readonly blushMargin_C: number;
  readonly filmTemperature_C: number;
  readonly dewPoint_C: number;
  readonly retarders: readonly { readonly ofThinner_percent: number; readonly solvent: string }[];
  readonly warming: { readonly least_C: number | null };
}

async function json(...argv: string[]): Promise<AirResult> {
  const { code, out, err } = await run(['air', ...argv, '--json']);
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out) as AirResult;
}

describe('crosscoat air', () => {
  it('says whether a film can blush, what was tried, and what the figures are worth', async () => {
    const { code, out } = await run(['air', '--temp', '18C', '--rh', '70%']);
    expect(code).toBe(0);
    for (const part of ['dew point', 'it can blush', 'wet bulb', 'What was tried', 'Warming the room with the same moisture', 'as retarder', 'Before spraying', 'unvented heater', 'A teaching and planning estimate', 'never calls a room']) {
      expect(out.replaceAll(/\s+/g, ' ')).toContain(part);
    }
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(96);
  });

  it('prints one object with the unit in each key', async () => {
    const result = await json('--temp', '21.1C', '--rh', '65%');
    // Dew point by ASHRAE equations, computed elsewhere; solved to 0.001 K.
    expect(Math.abs(result.dewPoint_C - 14.27)).toBeLessThan(0.006);
    expect(result.blushMargin_C).toBeCloseTo(result.filmTemperature_C - result.dewPoint_C, 9);
    expect(result).toMatchObject({ temperature_C: 21.1, humidity_percent: 65, faces: 2, mix: 'general', blushPossible: true, dryingFactor: 1.00138725571, warnings: [] });
    expect(Object.keys(result)).toEqual(expect.arrayContaining(['wetBulb_C', 'criticalHumidity_percent', 'dryingFactorModel', 'pressure_kPa', 'airSpeed_m_s', 'estimate', 'cautions', 'warming']));
  });

  it('takes °F, feet and feet a minute for what they are', async () => {
    const [us, metric] = [await json('--temp', '68F', '--rh', '50', '--altitude', '1000ft', '--speed', '100 ft/min'), await json('--temp', '20', '--rh', '0.5e2 %', '--altitude', '304.8', '--speed', '0.508')];
    expect(us).toEqual(metric);
    expect(us['pressure_kPa']).toBeLessThan(98);
  });

  it('speaks °F', async () => {
    const { out } = await run(['air', '--temp', '65F', '--rh', '80%', '--units', 'us']);
    expect(out).toContain('65.0 °F');
    // The rule and the advice are stated in both.
    expect(out.replaceAll(/\([^)]*°C\)/g, '')).not.toContain('°C');
  });

  it('finds a backed film colder than cloth, and a retarded one warmer', async () => {
    const air = ['--temp', '21C', '--rh', '60%'];
    const [cloth, backed, retarded] = [await json(...air), await json(...air, '--faces', '1'), await json(...air, '--mix', 'retarded')];
    expect(backed.filmTemperature_C).toBeLessThan(cloth.filmTemperature_C - 3);
    expect(retarded.filmTemperature_C).toBeGreaterThan(cloth.filmTemperature_C + 1);
  });

  it('says when no warmth up to the ceiling is enough', async () => {
    const argv = ['--temp', '30C', '--rh', '95%', '--mix', 'fast'];
    expect((await json(...argv)).warming.least_C).toBeNull();
    const { out } = await run(['air', ...argv]);
    expect(out).toMatch(/not enough up to the ceiling/);
    expect(out).toMatch(/Warnings\n- The air is more humid than 75 %/);
  });

  it('reads the first mix of a job, or the one named', async () => {
    const air = ['--temp', '20C', '--rh', '50%', '--mix'];
    const first = await json(...air, jobPath);
    expect(first).toMatchObject({ mix: 'slow', mixName: 'winter mix' });
    // 10 % it has already, so only more of the same is tried.
    expect(first.retarders.map(({ ofThinner_percent, solvent }) => [ofThinner_percent, solvent])).toEqual([[20, 'diacetone alcohol']]);
    expect(await json(...air, `${jobPath}#quick`)).toMatchObject({ mix: 'quick', mixName: 'summer mix' });
  });

  it.each<[string, string[], RegExp]>([
    ['humidity over 100', ['--temp', '20C', '--rh', '101%'], /humidity = 101 % is not from 0 to 100 %/],
    ['a temperature outside the model', ['--temp', '70', '--rh', '50'], /temperature = 70 °C is not from -20 to 60 °C/],
    ['a temperature that is none', ['--temp', 'warm', '--rh', '50'], /--temp = "warm" is not a temperature.*such as 21C or 70F/],
    ['a humidity in °C', ['--temp', '20C', '--rh', '50C'], /--rh = "50C" is not a ratio/],
    ['a humidity that may be a fraction', ['--temp', '20C', '--rh', '0.7'], /--rh = "0\.7" may mean 0\.7 % or 70 %; write the % sign/],
    ['no humidity', ['--temp', '20C'], /required option '--rh/],
    ['an unknown mix', ['--temp', '20C', '--rh', '50', '--mix', 'generel'], /--mix: unknown thinner "generel"; did you mean "general"\?.*or give a job file/],
    ['a missing file', ['--temp', '20C', '--rh', '50', '--mix', 'none.json'], /none\.json: no such file/],
    ['a job without mixes', ['--temp', '20C', '--rh', '50', '--mix', barePath], /holds no mix; add one to "mixes"/],
    ['an unknown id', ['--temp', '20C', '--rh', '50', '--mix', `${jobPath}#medium`], /holds no mix "medium"; known are slow, quick/],
    ['three faces', ['--temp', '20C', '--rh', '50', '--faces', '3'], /Allowed choices are 1, 2/],
  ])('refuses %s', async (_what, argv, message) => {
    const { code, out, err } = await run(['air', ...argv]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(message);
  });

  it('gives the verdict first, by whose rule, and what would turn it', async () => {
    const { out } = await run(['air', '--temp', '18C', '--rh', '70%', '--surface', '14C']);
    const plainText = out.replaceAll(/\s+/g, ' ');
    expect(plainText).toMatch(/^Wait: the surface is only 1\.5 °C above the dew point, not 3 °C; the wet film falls 2\.8 °C below the dew point/);
    for (const part of ['FAA circular AC 43.13-1B (air from 18.3 °C to 23.9 °C; humidity below 65 %)', 'What would make it go', 'Warm the room to', 'the part itself must then be 15.5 °C or warmer', 'not a clearance', 'keep the fan on']) {
      expect(plainText).toContain(part);
    }
  });

  it('prints verdict, rules, remedies and the surface margin beside the keys of before', async () => {
    const result = await json('--temp', '18C', '--rh', '70%', '--surface', '18C');
    expect(result).toMatchObject({ verdict: 'wait', blushPossible: true, hours: [], at: null });
    expect(result['surfaceMargin_C']).toBeCloseTo(18 - result.dewPoint_C, 9);
    const rules = result['rules'] as { id: string; verdict: string; source: string; counts: boolean }[];
    expect(rules.map(({ id, verdict }) => [id, verdict])).toEqual([['together', 'care'], ['circular', 'care'], ['army', 'go'], ['handbook', 'go'], ['surface', 'go'], ['film', 'wait']]);
    for (const { source } of rules) expect(source.length).toBeGreaterThan(20);
    const found = result['remedies'] as { kind: string; reaches: string; temperature_C: number }[];
    // Applied, the remedy gives what it says.
    for (const { reaches, temperature_C, kind } of found.filter((each) => each.kind === 'warm')) {
      const humid = (found.find((each) => each.temperature_C === temperature_C) as unknown as { humidity_percent: number }).humidity_percent;
      expect([kind, (await json('--temp', `${temperature_C}C`, '--rh', `${humid}%`))['verdict']]).toEqual(['warm', reaches]);
    }
    expect(found.map(({ kind }) => kind)).toEqual(['warm', 'warm']);
  });

  it('reads the day, and the air of one of its hours', async () => {
    const path = join(folder, 'day.csv');
    writeFileSync(path, 'time;temp_F;RH (%);battery\n2026-05-04 07:00:30+02:00;55;85;3\n2026-05-04T14:00;73;45;3\n');
    const { out, err } = await run(['air', '--hours', path, '--at', '14:00', '--json']);
    expect(err).toMatch(/wall clock is kept/);
    expect(err).toMatch(/columns passed over: battery/);
    const result = JSON.parse(out) as Record<string, unknown>;
    expect(result).toMatchObject({ at: '2026-05-04T14:00', verdict: 'go', held: null, firstGo: '2026-05-04T13:00' });
    expect(result['hours']).toHaveLength(8);
    const dawn = JSON.parse((await run(['air', '--hours', path, '--json'])).out) as Record<string, unknown>;
    expect(dawn).toMatchObject({ at: '2026-05-04T07:00', verdict: 'wait' });
    expect(dawn['remedies']).toEqual(expect.arrayContaining([expect.objectContaining({ kind: 'later', at: '2026-05-04T13:00', reaches: 'go' })]));
    expect(JSON.parse((await run(['air', '--hours', path, '--at', '2026-05-05T00:00', '--json'])).out)).toMatchObject({ held: 'after' });
    expect((await run(['air', '--hours', path, '--at', '06:00'])).out).toMatch(/before the first row/);
  });

  it('changes the mix by a retarder', async () => {
    const air = ['--temp', '21C', '--rh', '60%'];
    expect((await json(...air, '--retarder', '25%')).filmTemperature_C).toBeGreaterThan((await json(...air)).filmTemperature_C);
  });

  it.each<[string, string[], RegExp]>([
    ['a time without a day', ['--at', '14:00'], /--at asks for a time of a day; give the day with --hours/],
    ['a surface that is none', ['--temp', '20C', '--rh', '50', '--surface', '200C'], /--surface = 200 °C is not from -20 to 80 °C/],
    ['a retarder that may be a fraction', ['--temp', '20C', '--rh', '50', '--retarder', '0.1'], /--retarder = "0\.1" may mean 0\.1 % or 10 %/],
    ['a missing day', ['--hours', 'none.csv'], /none\.csv: no such file/],
  ])('does not take %s', async (_what, argv, message) => {
    const { code, err } = await run(['air', ...argv]);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });

  it('does not take a time and a typed room together', async () => {
    const path = join(folder, 'two.csv');
    writeFileSync(path, 'time,temperature_C,humidity_percent\n2026-05-04T07:00,20,50\n');
    expect((await run(['air', '--hours', path, '--at', '07:00', '--temp', '20C'])).err).toMatch(/leave out --temp and --rh/);
    expect((await run(['air', '--hours', path, '--at', '25:00'])).err).toMatch(/--at = "25:00" is not a time of day/);
  });
});
