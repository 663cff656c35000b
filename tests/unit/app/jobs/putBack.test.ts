import 'fake-indexeddb/auto';
import { beforeEach, expect, it } from 'vitest';
import { demoJob, parseJob, type Job } from '../../../../sim/index.ts';
import { restoreNow } from '../../../../src/app/jobs/doRestore.ts';
import { putBackJob, removeJob } from '../../../../src/app/jobs/jobActs.ts';
import { jobs, startJobs, stopJobs } from '../../../../src/app/jobs/jobs.ts';
import { lookIntoZip, restorePlan } from '../../../../src/app/jobs/restoreZip.ts';
import { openDatabase } from '../../../../src/storage/database.ts';
import { openJobs, type JobHead, type JobShelf } from '../../../../src/storage/jobs.ts';
import { jobStore } from '../../../../src/storage/jobStore.ts';
import { packedJob, zipBytes } from '../../workshop/samples.ts';

const named = (name: string): Job => parseJob({ ...demoJob(), name }).job;
const drafts = { '/name': { text: 'half', problem: null } };

let shelf: JobShelf;
let count = 0;
let database = '';

beforeEach(async () => {
  await stopJobs();
  database = `put-back-${count++}`;
  shelf = await openJobs(database);
  await shelf.create(named('here'), { id: 'job-1', drafts });
  await startJobs(() => openJobs(database));
});

/** Replaces the one job by the one of a zip. */
async function replaced(): Promise<JobHead> {
  const zip = await zipBytes({ jobs: [packedJob(1)], sessions: [] });
  await lookIntoZip(new File([zip as Uint8Array<ArrayBuffer>], 'w.zip'));
  const plan = restorePlan.peek();
  if (plan === null) throw new Error(jobs.problem.peek()?.text);
  restorePlan.value = { ...plan, choices: ['replace'] };
  await restoreNow();
  return (await shelf.read('job-1'))?.head as JobHead;
}

const names = async (): Promise<string[]> => (await shelf.list()).map(({ name }) => name).sort();

it('a replace takes the old half-typed text away, and putting back brings it again', async () => {
  expect((await replaced()).name).toBe('Rudder 1, été');
  expect((await shelf.read('job-1'))?.drafts).toEqual({});
  await putBackJob();
  expect(await shelf.read('job-1')).toMatchObject({ head: { name: 'here' }, drafts });
  expect(jobs.removed.value).toEqual([]);
});

it('putting back never writes over work that came after the replace: both are kept, and that is told', async () => {
  const { revision } = await replaced();
  await shelf.write('job-1', named('worked on'), revision);
  await putBackJob();
  expect(await names()).toEqual(['here, as it was', 'worked on']);
  expect((await shelf.read('job-1'))?.head.name).toBe('worked on');
  expect(jobs.told.value).toContain('“worked on” was changed meanwhile');
});

it('what replaced it may be gone', async () => {
  await replaced();
  await shelf.remove('job-1');
  await putBackJob();
  expect(await names()).toEqual(['here']);
});

it('a removed job comes back with its half-typed text', async () => {
  await removeJob((await shelf.read('job-1'))?.head as JobHead);
  expect(await names()).toEqual([]);
  await putBackJob();
  expect(await shelf.read('job-1')).toMatchObject({ head: { name: 'here' }, drafts });
});

it('a job here whose parts do not come out of storage stops no plan', async () => {
  const opened = await openDatabase(database);
  await opened.put('jobParts', { job: {}, cuts: 7 }, ['job-1', 'main']);
  await expect(jobStore(opened).read('job-1')).rejects.toThrow();
  await lookIntoZip(new File([(await zipBytes({ jobs: [packedJob(1)], sessions: [] })) as Uint8Array<ArrayBuffer>], 'w.zip'));
  expect(restorePlan.peek()?.rows).toMatchObject([{ state: 'unreadable', proposed: 'copy' }]);
});
