import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { demoJob, serialiseJob, type Job } from '../../../sim/index.ts';
import { run, scratchFolder } from './fakeIo.ts';

const folder = scratchFolder();

function written(name: string, job: Job): string {
  const path = join(folder, name);
  writeFileSync(path, serialiseJob(job));
  return path;
}

const path = written('demo.json', demoJob());
/** The demo with the waits after its coats taken out. */
const hurried = written('hurried.json', { ...demoJob(), schemes: demoJob().schemes!.map((scheme) => ({ ...scheme, steps: scheme.steps.map((step) => ({ ...step, wait_h: 0 })) })) });

describe('crosscoat scheme', () => {
  it('prints steps, ledger and findings', async () => {
    const { code, out } = await run(['scheme', path]);
    expect(code).toBe(0);
    expect(out).toContain('1. First clear, brushed until the cloth is translucent');
    expect(out).toContain('Against it, gravest first:');
  });

  it('tells a script that a rule says stop, only where it asks', async () => {
    expect((await run(['scheme', hurried, '--strict', '--json'])).code).toBe(1);
    expect((await run(['scheme', hurried])).code).toBe(0);
    expect((await run(['scheme', path, '--strict'])).code).toBe(0);
  });

  it('prints a preset with its sources, as text and as JSON', async () => {
    const { out } = await run(['scheme', '--preset', 'ac-43-13', '--units', 'us']);
    expect(out).toContain('AC 43.13-1B 2-21g');
    expect(out).toContain('2 in wide');
    const json = JSON.parse((await run(['scheme', '--preset', 'lacquer', '--json'])).out) as { steps: unknown[]; needs: { finish: string }[] };
    expect(json.steps).toHaveLength(5);
    expect(json.needs.map(({ finish }) => finish)).toEqual(['lacquer']);
  });

  it('says what is missing', async () => {
    expect((await run(['scheme'])).err).toContain('neither a job file nor --preset is given');
    expect((await run(['scheme', path, '--scheme', 'none'])).err).toContain('scheme "none" is not in the job (it has rudder');
    expect((await run(['scheme', path, '--preset', 'lacquer'])).code).toBe(2);
  });
});
