import { beforeEach, expect, it } from 'vitest';
import { restore } from '../../../src/app/restore.ts';
import { STAGE_NAMES, state } from '../../../src/app/state.ts';
import { keptIn } from '../../../src/app/stateTable.ts';
import { packJob } from '../../../src/storage/packJob.ts';
import { demoJob } from '../../../sim/job/demo.ts';

beforeEach(() => {
  state.job.value = demoJob();
  state.units.value = 'metric';
  state.stage.value = 'strokes';
  state.notice.value = null;
});

const kept = (extra: Record<string, unknown>): ReadonlyMap<string, unknown> =>
  new Map([...packJob({ ...demoJob(), name: 'Fin' }, new Map()).values, ...Object.entries(extra)]);

it('has nothing to restore on a first visit', () => {
  expect(restore(new Map())).toBe(false);
});

it('puts the job and the view back', () => {
  expect(restore(kept({ units: 'us', stage: 'gun' }))).toBe(true);
  expect([state.job.value.name, state.units.value, state.stage.value]).toEqual(['Fin', 'us', 'gun']);
});

it('puts every stage back', () => {
  for (const stage of STAGE_NAMES) {
    restore(kept({ stage }));
    expect(state.stage.value).toBe(stage);
  }
});

it('leaves at its default what an older build wrote in another form', () => {
  restore(kept({ units: 'furlongs', stage: 7, drafts: [] }));
  expect([state.units.value, state.stage.value]).toEqual(['metric', 'strokes']);
});

it('tells of a kept job that no longer parses, and keeps the demo', () => {
  expect(restore(new Map<string, unknown>([['job', { schemaVersion: 1, name: 'broken' }]]))).toBe(false);
  expect(state.notice.value?.title).toContain('could not be read');
  expect(state.job.value.name).toBe(demoJob().name);
});

it('knows for every key of the state where it is kept', () => {
  expect(Object.keys(keptIn).sort()).toEqual(Object.keys(state).sort());
});
