import { describe, expect, it } from 'vitest';
import { DEMONSTRATIONS, parseJob } from '../../../sim/index.ts';
import { run } from './fakeIo.ts';

describe('crosscoat demonstrate', () => {
  it('lists every demonstration', async () => {
    const { code, out } = await run(['demonstrate']);
    expect(code).toBe(0);
    expect(out.trimEnd().split('\n')).toHaveLength(DEMONSTRATIONS.length);
    for (const { id, title } of DEMONSTRATIONS) expect(out).toMatch(new RegExp(`^${id} +${title.replace(/[()%]/g, '\\$&')}`, 'm'));
    expect((await run(['demonstrate', '--units', 'us'])).out).toMatch(/too-close .*2\.36 to 7\.87 in/);
    expect(JSON.parse((await run(['demonstrate', '--json'])).out)).toHaveLength(DEMONSTRATIONS.length);
  });

  it('prints the sentence, the figures at each time, the question, the caution and what it is', async () => {
    const { code, out } = await run(['demonstrate', 'trigger', '--knob', '200 ms', '--at', '0.5min,12s']);
    expect(code).toBe(0);
    expect(out).toMatch(/With fluid on for 200 ms/);
    expect([...out.matchAll(/^At .*$/gm)].map(([line]) => line)).toEqual(['At 12 s', 'At 30 s', 'At 60 s']);
    for (const part of ['As it is', 'Cured', 'heaviest wet film', 'To ask:', 'Caution:', 'planning estimate']) expect(out).toContain(part);
  });

  it('prints the same figures as JSON, keys with their unit', async () => {
    const { out } = await run(['demonstrate', 'trigger', '--json', '--at', '30s']);
    const json = JSON.parse(out) as { knob: { value: number }; sides: { heaviestWet_um: number; lost_L: number; faults: string[] }[]; moments: unknown[][] };
    expect(json.knob.value).toBe(300);
    expect(json.sides.map(({ faults }) => faults)).toEqual([['heavy-spot'], []]);
    expect(json.moments).toHaveLength(1);
    const text = (await run(['demonstrate', 'trigger'])).out;
    expect(text).toContain(`${Math.round(json.sides[0]?.heaviestWet_um ?? 0)} µm`);
    expect(text).toContain(`${((json.sides[0]?.lost_L ?? 0) * 1000).toFixed(1)} mL`);
  });

  it('prints the wrong side as a job, which reads back with its recording', async () => {
    const { code, out } = await run(['demonstrate', 'stop', '--knob', '0.4', '--job']);
    expect(code).toBe(0);
    const { job, warnings } = parseJob(out);
    expect(warnings).toEqual([]);
    expect(job.coats.map(({ id, recording }) => [id, recording])).toEqual([['shown', 'hand']]);
    expect(job.recordings).toHaveLength(1);
  });

  it.each([
    [['demonstrate', 'wrist-ark'], /did you mean "wrist-arc"/],
    [['demonstrate', 'stop', '--knob', 'long'], /--knob = "long" is not a number of s/],
    [['demonstrate', 'stop', '--knob', '2'], /--knob = 2 is not from 0 to 1 s/],
    [['demonstrate', 'stop', '--knob', '2', '--job'], /--knob = 2/],
    [['demonstrate', 'stop', '--at', '2 mm'], /--at = /],
    [['demonstrate', 'stop', '--at', '1h'], /time = 3600/],
  ])('refuses %j', async (argv, message) => {
    const { code, err } = await run(argv);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });
});
