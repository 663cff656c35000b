import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { demoJob } from '../../../../sim/index.ts';
import { keeping } from '../../../../src/app/keeping/keeping.ts';
import { lastWork } from '../../../../src/app/keeping/lastWork.ts';
import { startKeeping } from '../../../../src/app/keeping/startKeeping.ts';
import { state } from '../../../../src/app/state.ts';
import { openDatabase } from '../../../../src/storage/database.ts';
import { jobStore } from '../../../../src/storage/jobStore.ts';
import { lastWordOf } from '../../../../src/storage/lastWord.ts';

// It asks the browser, and there is none here.
vi.mock('../../../../src/app/keeping/room.ts', () => ({ lookAtRoom: () => undefined }));

beforeEach(() => {
  vi.stubGlobal('addEventListener', () => undefined);
  vi.stubGlobal('document', { hidden: false, addEventListener: () => undefined });
  state.notice.value = null;
});

afterEach(() => {
  keeping.now?.keeper.stop();
  keeping.now = null;
  vi.unstubAllGlobals();
});

it('a job that does not come out of storage is told, and neither stops the next one nor the keeping', async () => {
  const database = await openDatabase();
  const store = jobStore(database);
  await store.put('sound', { ...demoJob(), name: 'Sound' }, null);
  await store.put('torn', { ...demoJob(), name: 'Torn' }, null);
  await database.put('jobParts', { job: {}, cuts: 7 }, ['torn', 'main']);
  await database.put('kept', 'torn', 'jobId');

  expect(await startKeeping()).toBe(true);
  expect([state.jobId.value, state.job.value.name]).toEqual(['sound', 'Sound']);
  expect(state.notice.value?.title).toContain('"Torn" could not be read; nothing of it is deleted');
  expect(keeping.now).not.toBeNull();
  state.job.value = { ...state.job.peek(), name: 'Sound, more' };
  await keeping.now?.keeper.flush();
  expect((await store.heads()).map(({ name }) => name).sort()).toEqual(['Sound, more', 'Torn']);
  expect(await database.get('jobParts', ['torn', 'main'])).toEqual({ job: {}, cuts: 7 });
});

it('what the window had no time to keep comes back with it, and only once', async () => {
  const database = await openDatabase();
  const store = jobStore(database);
  const { revision } = await store.put('left', { ...demoJob(), name: 'As kept' }, null);
  const word = lastWordOf({ id: 'left', job: { ...demoJob(), name: 'As typed' }, drafts: {} }, { id: 'left', job: demoJob(), drafts: {}, revision }, null);
  const session = new Map([['crosscoat-last-words', JSON.stringify({ works: [word], view: [['units', 'us']] })]]);
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => session.get(key) ?? null,
    setItem: (key: string, text: string) => session.set(key, text),
    removeItem: (key: string) => session.delete(key),
  });
  expect(await startKeeping()).toBe(true);
  expect([state.jobId.value, state.job.value.name, state.units.value]).toEqual(['left', 'As typed', 'us']);
  expect([...session]).toEqual([['crosscoat-job', 'left']]);
  expect((await store.read('left'))?.head.name).toBe('As typed');
});

it('where none can be read there is none, and the first of them is told', async () => {
  const database = await openDatabase('none-reads');
  const store = jobStore(database);
  for (const id of ['older', 'newer']) {
    await store.put(id, { ...demoJob(), name: id }, null);
    await database.put('jobParts', { job: {}, cuts: 7 }, [id, 'main']);
  }
  expect(await lastWork(store, ['gone', undefined])).toBeNull();
  expect(state.notice.value?.title).toContain('"newer"');
});
