import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../sim/index.ts';
import { run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const jobPath = join(folder, 'job.json');
const barePath = join(folder, 'bare.json');
writeFileSync(jobPath, JSON.stringify(demoJob()));
writeFileSync(barePath, JSON.stringify({ ...demoJob(), schemes: [] }));

describe('crosscoat amounts', () => {
  it('prints what to buy first, in both unit systems, and writes the tables', async () => {
    const csv = join(folder, 'amounts.csv');
    const { code, out } = await run(['amounts', jobPath, '--csv', csv, '--cloth']);
    expect(code).toBe(0);
    expect(out).toMatch(/^Rudder[^\n]*\n\nBuy \d/);
    expect(out).toContain('With the cloth');
    expect(readFileSync(csv, 'utf8')).toMatch(/^table,name,amount \(L\)/);
    expect((await run(['amounts', jobPath, '--units', 'us'])).out).toContain('fl oz US');
  });

  it('takes another allowance for pot and hose', async () => {
    const left = async (...more: string[]): Promise<number> => (JSON.parse((await run(['amounts', jobPath, '--json', ...more])).out) as { liquidWet: { left_L: { value: number } } }).liquidWet.left_L.value;
    // Seven sprayed coats, each 100 mL less.
    expect((await left()) - (await left('--left', '0mL'))).toBeCloseTo(0.7, 9);
  });

  it('says what is wrong with a job without schemes, an unknown scheme, an allowance that is none', async () => {
    expect((await run(['amounts', barePath])).err).toMatch(/no scheme of coats/);
    expect((await run(['amounts', jobPath, '--scheme', 'wing'])).err).toMatch(/"wing" is not in the job .*rudder/);
    expect((await run(['amounts', jobPath, '--left', 'some'])).err).toMatch(/--left/);
  });
});
