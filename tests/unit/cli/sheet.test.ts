import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoJob, serialiseJob } from '../../../sim/index.ts';
import { run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();
const jobPath = join(folder, 'demo.json');

beforeAll(() => {
  writeFileSync(jobPath, serialiseJob(demoJob()));
});

describe('crosscoat sheet', () => {
  it('prints the card, a part a day, and writes it as HTML', async () => {
    const html = join(folder, 'card.html');
    const { code, out } = await run(['sheet', jobPath, '--html', html]);
    expect(code).toBe(0);
    expect(out).toContain('Monday 4 May 2026');
    expect(out).toContain('card.html: the job card');
    expect(readFileSync(html, 'utf8')).toMatch(/^<!doctype html>/);
  });

  it('prints JSON', async () => {
    const { out } = await run(['sheet', jobPath, '--json']);
    expect(JSON.parse(out)).toMatchObject({ job: 'Rudder, first build coat', days: expect.arrayContaining([expect.objectContaining({ date: '2026-05-04' })]) as unknown });
  });

  it('says which scheme there is, and that a job without one has none', async () => {
    const unknown = await run(['sheet', jobPath, '--scheme', 'wing']);
    expect(unknown.code).toBe(2);
    expect(unknown.err).toContain('scheme "wing" is not in the job (it has rudder; give one of these)');
    const bare = { ...demoJob(), schemes: undefined };
    const path = join(folder, 'bare.json');
    writeFileSync(path, serialiseJob(bare));
    const none = await run(['sheet', path]);
    expect(none.code).toBe(2);
    expect(none.err).toContain('no scheme of coats');
  });
});
