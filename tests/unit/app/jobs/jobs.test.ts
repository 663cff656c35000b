import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { demoJob, demoJobWithSession, parseJob, serialiseJob, type Job } from '../../../../sim/index.ts';
import { findable, findJobs } from '../../../../src/app/jobs/findJobs.ts';
import { blankJob, namedAfter, planAgain } from '../../../../src/app/jobs/newJobs.ts';
import { jobsFrom, USUAL_JOBS } from '../../../../src/app/jobs/jobsPrefs.ts';
import type { JobHead } from '../../../../src/storage/jobs.ts';

function head(number: number, over: Partial<JobHead> = {}): JobHead {
  return { id: `job-${number}`, name: `Rudder ${number}`, part: 'Aileron de l’été', madeAt: '2026-05-01T08:00:00Z', changedAt: '2026-05-01T08:00:00Z', archived: false, revision: number, letters: 1000, coats: (number % 4) + 1, ...over };
}

describe('findJobs', () => {
  const heads = [head(1), head(2, { name: 'Élevator' }), head(3)];

  it('finds every word somewhere, whatever its case and accents, in the order of the list', () => {
    const found = (search: string): string[] => findJobs(findable(heads), search).map(({ id }) => id);
    expect(found('')).toEqual(['job-1', 'job-2', 'job-3']);
    expect(found('ÉTE rudder')).toEqual(['job-1', 'job-3']);
    expect(found('elevator')).toEqual(['job-2']);
    expect(found('2026-05-01 4 coats')).toEqual(['job-3']);
    expect(found('wing')).toEqual([]);
  });

  it('searches 500 jobs in under 100 ms, the list made ready included', () => {
    const many = Array.from({ length: 500 }, (_, i) => head(i));
    findJobs(findable(many), 'warm');
    const started = performance.now();
    const ready = findable(many);
    const typed = 'rudder 499';
    for (let i = 1; i <= typed.length; i++) findJobs(ready, typed.slice(0, i));
    const each_ms = (performance.now() - started) / typed.length;
    expect(findJobs(ready, typed)).toHaveLength(1);
    expect(each_ms).toBeLessThan(100);
  });
});

describe('new jobs', () => {
  it('are jobs, the blank one too', () => {
    expect(parseJob(serialiseJob(blankJob())).job).toEqual(blankJob());
  });

  it('plan a job again without what was really done', () => {
    const done: Job = { ...demoJobWithSession('t_s,x_mm\n'), log: [], surveys: [] };
    const again = planAgain(done);
    expect(again).not.toHaveProperty('log');
    expect(again).not.toHaveProperty('surveys');
    expect(again.recordings).toEqual([]);
    expect(again.coats.every((coat) => coat.recording === undefined)).toBe(true);
    expect(again).toMatchObject({ name: `${done.name}, again`, part: done.part, schemes: done.schemes ?? [] });
    expect(done.recordings).toHaveLength(1);
    expect(parseJob(serialiseJob(again)).job.coats).toHaveLength(demoJob().coats.length);
  });

  it('keep names within what a name may have', () => {
    expect(namedAfter('x'.repeat(200), 'copy')).toHaveLength(200);
    expect(namedAfter('Rudder', 'copy')).toBe('Rudder, copy');
  });
});

describe('jobsFrom', () => {
  it('takes what fits and leaves the rest at its usual', () => {
    expect(jobsFrom(undefined)).toEqual(USUAL_JOBS);
    expect(jobsFrom({ tab: 'room', earlier: { a: ['x'], b: 4, c: [1] } })).toEqual({ tab: 'room', earlier: { a: ['x'] } });
    expect(jobsFrom({ tab: 'gone', earlier: 'x' })).toEqual(USUAL_JOBS);
  });
});
