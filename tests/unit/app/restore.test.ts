import { beforeEach, expect, it } from 'vitest';
import { restore } from '../../../src/app/restore.ts';
import { STAGE_NAMES, state } from '../../../src/app/state.ts';
import { keptIn } from '../../../src/app/stateTable.ts';
import type { KeptJob } from '../../../src/storage/jobStore.ts';
import { demoJob } from '../../../sim/job/demo.ts';

beforeEach(() => {
  state.job.value = demoJob();
  state.jobId.value = 'demo';
  state.units.value = 'metric';
  state.stage.value = 'strokes';
  state.notice.value = null;
});

const head: KeptJob['head'] = { id: 'fin', name: 'Fin', part: 'Rudder', madeAt: '', changedAt: '', archived: false, revision: 7, letters: 0, coats: 2 };
const fin: KeptJob = { head, job: { ...demoJob(), name: 'Fin' }, drafts: undefined };
const restoreFin = (extra: Record<string, unknown>, drafts?: unknown): Promise<boolean> => restore(new Map(Object.entries(extra)), { ...fin, drafts });

it('has nothing to restore on a first visit', async () => {
  expect(await restore(new Map(), null)).toBe(false);
});

it('puts the job, its id and the view back', async () => {
  expect(await restoreFin({ units: 'us', stage: 'gun' })).toBe(true);
  expect([state.job.value.name, state.jobId.value, state.units.value, state.stage.value]).toEqual(['Fin', 'fin', 'us', 'gun']);
});

it('puts half-typed text back, and nothing that is none', async () => {
  const drafts = { '/name': { text: 'F', problem: null } };
  await restoreFin({}, drafts);
  expect(state.drafts.value).toEqual(drafts);
  await restoreFin({}, [1, 2]);
  expect(state.drafts.value).toEqual({});
});

it('puts every stage back', async () => {
  for (const stage of STAGE_NAMES) {
    await restoreFin({ stage });
    expect(state.stage.value).toBe(stage);
  }
});

it('leaves at its default what an older build wrote in another form', async () => {
  await restoreFin({ units: 'furlongs', stage: 7 });
  expect([state.units.value, state.stage.value]).toEqual(['metric', 'strokes']);
});

it('tells of a kept job that no longer parses, and keeps the demo', async () => {
  const idBefore = state.jobId.value;
  expect(await restore(new Map(), { ...fin, job: { schemaVersion: 1, name: 'broken' } })).toBe(false);
  expect(state.jobId.value).toBe(idBefore);
  expect(state.notice.value?.title).toContain('could not be read');
  expect(state.job.value.name).toBe(demoJob().name);
});

it('knows for every key of the state where it is kept', () => {
  expect(Object.keys(keptIn).sort()).toEqual(Object.keys(state).sort());
});
