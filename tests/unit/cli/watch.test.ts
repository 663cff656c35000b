import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoJob, parseJob, serialiseJob } from '../../../sim/index.ts';
import { parseWatch } from '../../../src/cli/watch.ts';
import { run, scratchFolder } from './fakeIo.ts';

const jobPath = join(scratchFolder(), 'job.json');

beforeAll(() => {
  const demo = demoJob();
  const job = parseJob({
    ...demo,
    cell_mm: 5,
    air: { ...demo.air, humidity_percent: 68 },
    part: { name: 'Board', panels: [{ id: 'left-side', name: 'Board', outline: { rectangle_mm: [300, 300] } }] },
  }).job;
  writeFileSync(jobPath, serialiseJob(job));
});

describe('crosscoat spray in time', () => {
  it('reads times in s, min and h', () => {
    expect(parseWatch({ until: '10min', at: '2min, 30s' })).toEqual({ until_s: 600, at_s: [30, 120] });
    expect(parseWatch({ at: '1h' })).toEqual({ until_s: 3600, at_s: [3600] });
    expect(parseWatch({})).toBeNull();
  });

  it.each([
    [{ until: 'soon' }, '--until'],
    [{ until: '-5s' }, 'is not from 0 s to 7 days'],
    [{ until: '1min', at: '2min' }, 'lies after --until'],
    [{ until: '2mm' }, '--until'],
  ])('refuses %j', (options, words) => {
    expect(() => parseWatch(options)).toThrow(words);
  });

  it('prints the film in time and its faults', async () => {
    const { code, out } = await run(['spray', jobPath, '--coat', 'planned', '--until', '15min', '--at', '1min,10min']);
    expect(code).toBe(0);
    expect(out).toContain('In time: sprayed in');
    expect(out).toMatch(/Faults of the film in time, worst first\n1\. Blush at/);
    expect(out).toContain('Cure: In the same air warmed to');
    expect(out).toMatch(/^60 s +\d/m);
  });

  it('gives the same in JSON, keys with their unit, and counts for --strict', async () => {
    const { code, out } = await run(['spray', jobPath, '--coat', 'planned', '--until', '15min', '--at', '10min', '--json', '--no-cures', '--strict']);
    expect(code).toBe(1);
    const [panel] = (JSON.parse(out) as { panels: { life: Record<string, unknown> & { at: { time_s: number; wet_um: number }[] }; faults: { kind: string; worst: number; worst_unit: string }[] }[] }).panels;
    expect(panel?.life['blushMargin_C']).toBeLessThan(0);
    expect(panel?.life.at[0]?.time_s).toBe(600);
    const blush = panel?.faults.find(({ kind }) => kind === 'blush');
    expect(blush?.worst_unit).toBe('K');
    expect(blush?.worst).toBeCloseTo(panel?.life['blushMargin_C'] as number, 4);
  });
});
