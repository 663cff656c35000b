import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { csvParse } from 'd3-dsv';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Job } from '../../../sim/index.ts';
import { run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const at = (name: string): string => join(folder, name);
const moment = (): string => '2026-05-09T10:00+02:00';
let job: Job;

function written(name: string, changed: Job): string {
  writeFileSync(at(name), JSON.stringify(changed));
  return at(name);
}

/** Without a scheme and with a passing rule: quicker, and nothing left to find. */
function quick(changes: Partial<Job> = {}): Job {
  return { ...job, schemes: [], surveys: job.surveys!.slice(0, 1), ...changes };
}

beforeAll(async () => {
  job = JSON.parse((await run(['demo'])).out) as Job;
});

describe('crosscoat report', () => {
  it('writes page, tables and canonical form, whose digest a general tool gives too', async () => {
    const path = written('demo.json', job);
    const { code, out } = await run(['report', path, '--html', at('record.html'), '--csv-readings', at('readings.csv'), '--csv-log', at('log.csv'), '--canonical', at('canonical.json'), '--json'], { moment });
    expect(code).toBe(0);
    const json = JSON.parse(out) as { digest: { sha256: string }; madeAt: string; surveys: { verdict: string; signature: string }[]; unsigned: string[]; log: unknown[] };
    expect(json.digest.sha256).toBe(createHash('sha256').update(readFileSync(at('canonical.json'))).digest('hex'));
    expect(JSON.parse(readFileSync(at('canonical.json'), 'utf8'))).toEqual(job);
    expect(json.madeAt).toBe(moment());
    expect(json.surveys.map(({ verdict, signature }) => [verdict, signature])).toEqual([['pass', 'matches'], ['fail', 'unsigned']]);
    expect(json.unsigned).toHaveLength(3);
    expect(json.log).toHaveLength(5);
    expect(readFileSync(at('record.html'), 'utf8')).toContain(json.digest.sha256);
    expect(csvParse(readFileSync(at('readings.csv'), 'utf8'))).toHaveLength(25);
    expect(csvParse(readFileSync(at('log.csv'), 'utf8')).map(({ signature }) => signature)).toEqual(['matches', 'matches', 'unsigned', 'matches', 'unsigned']);
  });

  it('tells a script of a rule that fails, only where it asks', async () => {
    const path = written('coupons.json', quick({ surveys: job.surveys!.slice(1) }));
    expect((await run(['report', path], { moment })).code).toBe(0);
    const { code, out } = await run(['report', path, '--strict'], { moment });
    expect(code).toBe(1);
    expect(out).toContain('survey “Third clear by coupons”: fails');
  });

  it('tells a script of an entry that was changed after it was signed', async () => {
    expect((await run(['report', written('quick.json', quick()), '--strict'], { moment })).code).toBe(0);
    const [first, ...others] = job.log!;
    const { code, out } = await run(['report', written('changed.json', quick({ log: [{ ...first!, ratio: '5:1' }, ...others] })), '--strict'], { moment });
    expect(code).toBe(1);
    expect(out.replaceAll(/\s+/g, ' ')).toContain('CHANGED SINCE SIGNED');
  });

  it('stands by the files that it cannot read or write', async () => {
    expect((await run(['report', at('none.json')], { moment })).code).toBe(2);
    expect((await run(['report', at('quick.json'), '--html', at('none/record.html')], { moment })).err).toContain('there is no such folder');
  });
});
