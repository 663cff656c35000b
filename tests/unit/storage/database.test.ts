import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { demoJob, withRecording } from '../../../sim/job/demo.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import { openDatabase, openShelf } from '../../../src/storage/database.ts';
import { openJobs } from '../../../src/storage/jobs.ts';
import { openSessions } from '../../../src/storage/sessions.ts';
import { keptSession } from '../app/practice/samples.ts';

const recorded = withRecording(demoJob(), 'by-hand', { id: 'session', name: 'Session', text: 't_s,x_mm\n0,0\n1,1\n' });

/** The database as versions 1 and 2 of this program left it: one job among the kept values, its recordings beside it. */
async function older(name: string, version: 1 | 2, more: Record<string, unknown> = {}): Promise<void> {
  const old = await openDB(name, version, {
    upgrade: (fresh) => {
      fresh.createObjectStore('kept');
      if (version === 1) return;
      fresh.createObjectStore('sessions', { keyPath: 'session.id' });
      fresh.createObjectStore('sessionTexts');
      fresh.createObjectStore('drafts');
    },
  });
  const job = { ...recorded, recordings: recorded.recordings.map((each) => ({ ...each, text: '' })) };
  const kept = { job, 'recording:session': recorded.recordings[0]!.text, units: 'us', drafts: { '/name': { text: 'R', problem: null } }, ...more };
  for (const [key, value] of Object.entries(kept)) await old.put('kept', value, key);
  old.close();
}

describe.each([1, 2] as const)('a database of version %i', (version) => {
  it('becomes one of version 3 with its job as the first of many', async () => {
    const name = `from-${version}`;
    await older(name, version);
    const shelf = await openJobs(name);
    const list = await shelf.list();
    expect(list).toMatchObject([{ id: 'first', name: recorded.name, part: recorded.part.name, archived: false, revision: 1, coats: recorded.coats.length }]);
    const kept = await shelf.read('first');
    expect(parseJob(kept!.job).job).toEqual(recorded);
    // The view stays where it was; the job is there once.
    expect(await (await openShelf(name)).read()).toEqual(new Map<string, unknown>([['units', 'us'], ['jobId', 'first']]));
    // What is written next counts on from there.
    expect((await shelf.write('first', { ...recorded, name: 'Fin' }, 1)).revision).toBe(2);
  });
});

describe('an upgrade', () => {
  afterEach(() => vi.restoreAllMocks());

  it('brings practice sessions along', async () => {
    await older('with-sessions', 1);
    const sessions = await openSessions('with-sessions');
    await sessions.put(keptSession());
    expect(await sessions.list()).toHaveLength(1);
  });

  it('has no job where none was kept', async () => {
    await older('no-job', 2, { job: undefined });
    expect(await (await openJobs('no-job')).list()).toEqual([]);
  });

  it('keeps a job that nobody can read as it is', async () => {
    await older('unreadable', 2, { job: { recordings: [null], part: 7 } });
    const kept = await (await openJobs('unreadable')).read('first');
    expect(kept).toMatchObject({ head: { name: '', part: '', coats: 0 }, job: { part: 7 } });
  });

  it('that is torn leaves the old version with all that it kept, and succeeds the next time', async () => {
    await older('torn', 2);
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(() => {
      throw new DOMException('disk full', 'QuotaExceededError');
    });
    await expect(openDatabase('torn')).rejects.toThrow();
    put.mockRestore();
    const old = await openDB('torn', 2);
    expect([...old.objectStoreNames]).toEqual(['drafts', 'kept', 'sessionTexts', 'sessions']);
    expect(await old.get('kept', 'recording:session')).toBe(recorded.recordings[0]!.text);
    old.close();
    const kept = await (await openJobs('torn')).read('first');
    expect(parseJob(kept!.job).job).toEqual(recorded);
  });

  it('says so at once where another window holds the old version, and opens when that is closed', async () => {
    const old = await openDB('version-held', 1, { upgrade: (fresh) => void fresh.createObjectStore('kept') });
    await expect(openShelf('version-held')).rejects.toThrow('another window holds an older version');
    old.close();
    await expect(openShelf('version-held')).resolves.toBeDefined();
  });

  it('to a newer build goes ahead; what is written here from then on is told as refused', async () => {
    const shelf = await openSessions('version-newer');
    const newer = await openDB('version-newer', 4);
    expect(newer.version).toBe(4);
    await expect(shelf.put(keptSession())).rejects.toThrow();
  });
});
