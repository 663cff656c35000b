import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../../sim/job/demo.ts';
import { parseJob } from '../../../../sim/job/parse.ts';
import { serialiseJob } from '../../../../sim/job/serialise.ts';
import { entryFromPlan } from '../../../../sim/run/log/entryFromPlan.ts';
import { plannedFor } from '../../../../sim/run/log/plannedFor.ts';
import { reportEntry } from '../../../../sim/run/log/reportLog.ts';
import { NOON } from '../../log/logCases.ts';

const JOB = demoJob();

describe('entryFromPlan', () => {
  it('a brushed step gives name, kind, panels, product and ratio; nothing that is read at the time', () => {
    const entry = entryFromPlan(JOB, { step: 'clear-2' }, NOON);
    expect(entry).toEqual({
      id: 'entry-1', kind: 'coat', name: 'Second clear, brushed across the first', step: 'clear-2', panels: ['left-side'], started: NOON.at, who: NOON.who,
      product: { name: 'clear dope' }, ratio: 'four volumes of finish, one of thinner', combs: [], faults: [], photos: [], history: [],
    });
  });

  it('a sprayed step names coat, set-up and the gun in both systems of units, and its layer’s own mix', () => {
    const entry = entryFromPlan(JOB, { step: 'aluminium-1' }, NOON);
    const coat = JOB.coats.find(({ id }) => id === entry.coat)!;
    expect(entry.setUp).toBe(coat.setUp);
    expect(entry.gun).toContain(`${coat.plan.distance_mm} mm (`);
    expect(entry.gun).toMatch(/ in\) off, .* m\/s \(.* ft\/min\), overlap \d+ %, cross coat$/);
    expect(entry.product).toEqual({ name: 'aluminium dope' });
    expect(entry.cup).toBeUndefined();
    expect(entry.airStart).toBeUndefined();
  });

  it('sanding takes its paper, masks and tapes their kind', () => {
    expect(entryFromPlan(JOB, { step: 'level' }, NOON)).toMatchObject({ kind: 'sand', sanding: { grit: 280, wet: true } });
    expect(entryFromPlan(JOB, { step: 'unmask' }, NOON).kind).toBe('mask');
    expect(entryFromPlan(JOB, { step: 'tapes' }, NOON).kind).toBe('fix');
  });

  it('without a step it is of the coat, without either blank; what the job has not is left out', () => {
    const coat = JOB.coats[1]!;
    expect(entryFromPlan(JOB, { coat: coat.id }, NOON)).toMatchObject({ kind: 'coat', name: coat.name, coat: coat.id, panels: [coat.panel] });
    expect(entryFromPlan(JOB, {}, NOON)).toMatchObject({ kind: 'other', name: '' });
    expect(entryFromPlan(JOB, { step: 'gone', coat: 'gone' }, NOON)).toMatchObject({ kind: 'other' });
    expect('step' in entryFromPlan(JOB, { step: 'gone' }, NOON)).toBe(false);
  });

  it('every step’s entry is one that the file takes, with an id of its own', () => {
    let job = JOB;
    for (const { id } of JOB.schemes![0]!.steps) job = { ...job, log: [...(job.log ?? []), entryFromPlan(job, { step: id }, NOON)] };
    expect(parseJob(JSON.parse(serialiseJob(job))).job.log).toEqual(job.log);
  });

  it('of two schemes with a step of one name, the one on the entry’s panel counts', () => {
    const [scheme] = JOB.schemes!;
    const two = { ...JOB, schemes: [{ ...scheme!, id: 'other', panels: ['elsewhere'] }, scheme!] };
    expect(plannedFor(two, { step: 'clear-2', panels: ['left-side'] }).scheme?.id).toBe(scheme!.id);
    expect(plannedFor(two, { step: 'clear-2' }).scheme?.id).toBe('other');
    expect(plannedFor(two, { step: 'clear-2' }).before?.id).toBe('clear-1');
  });
});

describe('reportEntry', () => {
  it('finds the dew point and the surface’s margin of the air as noted', () => {
    const entry = { ...entryFromPlan(JOB, { step: 'clear-1' }, NOON), airStart: { temperature_C: 20, humidity_percent: 50, surface_C: 12 } };
    const { airStart } = reportEntry({ ...JOB, log: [entry] }, entry);
    // Dew point of 20 °C and 50 %: 9.27 °C (ASHRAE Fundamentals, formulas of Hyland and Wexler; derived).
    expect(airStart!.dewPoint_K - 273.15).toBeCloseTo(9.27, 1);
    expect(airStart!.surfaceMargin_K).toBeCloseTo(12 - 9.27, 1);
  });
});
