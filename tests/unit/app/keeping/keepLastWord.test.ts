import 'fake-indexeddb/auto';
import { beforeEach, expect, it } from 'vitest';
import { demoJob, type Job } from '../../../../sim/index.ts';
import { keepLastWord } from '../../../../src/app/keeping/keepLastWord.ts';
import { state } from '../../../../src/app/state.ts';
import { openDatabase } from '../../../../src/storage/database.ts';
import type { InHand } from '../../../../src/storage/inHand.ts';
import { jobStore, type JobStore } from '../../../../src/storage/jobStore.ts';
import { lastWordOf, type LastWord } from '../../../../src/storage/lastWord.ts';

const RECORDING = { id: 'first', name: 'First', text: 't_s,x_mm,y_mm,z_mm\n' };
const BEFORE: InHand = { id: 'fin', job: { ...demoJob(), name: 'as kept', recordings: [RECORDING] }, drafts: {} };
const TYPED: InHand = { ...BEFORE, job: { ...BEFORE.job, name: 'as typed' }, drafts: { '/name': { text: 'as typ', problem: null } } };

beforeEach(() => (state.notice.value = null));

/** A word as it comes back from the window's own storage. */
function said(...word: Parameters<typeof lastWordOf>): LastWord {
  return JSON.parse(JSON.stringify(lastWordOf(...word))) as LastWord;
}

async function storeWith(name: string, ...jobs: readonly Job[]): Promise<JobStore> {
  const store = jobStore(await openDatabase(name));
  let revision: number | null = null;
  for (const job of jobs) revision = (await store.put('fin', job, revision)).revision;
  return store;
}

it('what was typed last is written to its job, its long parts from what is kept', async () => {
  const store = await storeWith('word-typed', BEFORE.job);
  const word = said(TYPED, { ...BEFORE, revision: 1 }, null);
  expect(word.parts).toEqual([]);
  expect((await keepLastWord(store, word)).id).toBe('fin');
  expect(await store.read('fin')).toMatchObject({ head: { revision: 2 }, job: TYPED.job, drafts: TYPED.drafts });
});

it('a long part that was not kept yet is in the word', async () => {
  const store = await storeWith('word-part', BEFORE.job);
  const job: Job = { ...TYPED.job, recordings: [{ ...RECORDING, text: 'another' }] };
  const word = said({ ...TYPED, job }, { ...BEFORE, revision: 1 }, null);
  expect(word.parts).toEqual([['recording:first', 'another']]);
  await keepLastWord(store, word);
  expect((await store.read('fin'))?.job).toMatchObject({ recordings: [{ text: 'another' }] });
});

it('a part that alone has changed is kept too', async () => {
  const store = await storeWith('word-part-alone', BEFORE.job);
  const job: Job = { ...BEFORE.job, recordings: [{ ...RECORDING, text: 'another' }] };
  await keepLastWord(store, said({ ...BEFORE, job }, { ...BEFORE, revision: 1 }, null));
  expect(await store.read('fin')).toMatchObject({ head: { revision: 2 }, job: { recordings: [{ text: 'another' }] } });
});

it('a part that alone was changed by another window stands', async () => {
  const theirs: Job = { ...BEFORE.job, recordings: [{ ...RECORDING, text: 'theirs' }] };
  const store = await storeWith('word-part-theirs', BEFORE.job, theirs);
  const ours: Job = { ...BEFORE.job, recordings: [{ ...RECORDING, text: 'ours' }] };
  const { id } = await keepLastWord(store, said({ ...BEFORE, job: ours }, { ...BEFORE, revision: 1 }, { ...BEFORE, job: ours }));
  expect((await store.read('fin'))?.job).toMatchObject({ recordings: [{ text: 'theirs' }] });
  expect((await store.read(id))?.job).toMatchObject({ recordings: [{ text: 'ours' }] });
});

it('what came to be kept is known in whatever order its keys are', async () => {
  const store = await storeWith('word-order', BEFORE.job, TYPED.job);
  const turned = Object.fromEntries(Object.entries(TYPED.job).reverse()) as unknown as Job;
  expect(await keepLastWord(store, said({ ...TYPED, job: turned }, { ...BEFORE, revision: 1 }, null))).toEqual({ id: 'fin', revision: null });
});

it('a job that another window removed comes back as one of its own, and is told', async () => {
  const store = await storeWith('word-removed');
  const whole = { ...TYPED, job: { ...TYPED.job, recordings: [] } };
  const { id } = await keepLastWord(store, said(whole, { ...BEFORE, revision: 1 }, null));
  expect(id).not.toBe('fin');
  expect((await store.read(id))?.head.name).toBe('as typed');
  expect(state.notice.value?.title).toContain('was removed in another window');
});

it('what came to be kept after all gets no second revision', async () => {
  const store = await storeWith('word-kept', BEFORE.job, TYPED.job);
  await keepLastWord(store, said(TYPED, { ...BEFORE, revision: 1 }, TYPED));
  expect(await store.read('fin')).toMatchObject({ head: { revision: 2 }, drafts: TYPED.drafts });
});

it('a write that was under way and arrived is not taken for another window’s', async () => {
  const underWay: InHand = { ...BEFORE, job: { ...BEFORE.job, name: 'as ty' } };
  const store = await storeWith('word-under-way', BEFORE.job, underWay.job);
  expect((await keepLastWord(store, said(TYPED, { ...BEFORE, revision: 1 }, underWay))).id).toBe('fin');
  expect(await store.heads()).toMatchObject([{ name: 'as typed', revision: 3 }]);
  expect(state.notice.value).toBeNull();
});

it('what another window wrote meanwhile stands, and the word becomes a job of its own', async () => {
  const store = await storeWith('word-late', BEFORE.job, { ...BEFORE.job, name: 'by the other' });
  const { id } = await keepLastWord(store, said(TYPED, { ...BEFORE, revision: 1 }, null));
  expect(id).not.toBe('fin');
  expect((await store.read('fin'))?.head.name).toBe('by the other');
  expect(await store.read(id)).toMatchObject({ head: { name: 'as typed, from the other window' }, drafts: TYPED.drafts });
  expect(state.notice.value?.title).toContain('nothing was overwritten');
});

it('a job that was never kept is made', async () => {
  const store = await storeWith('word-new');
  expect((await keepLastWord(store, said(TYPED, undefined, null))).id).toBe('fin');
  expect(await store.read('fin')).toMatchObject({ head: { revision: 1 }, job: TYPED.job });
});

it('without a long part that is gone nothing is written, and which it is is said', async () => {
  const store = await storeWith('word-gone');
  await expect(keepLastWord(store, said(TYPED, { ...BEFORE, revision: 1 }, null))).rejects.toThrow('its part recording:first was removed');
  expect(await store.heads()).toEqual([]);
});
