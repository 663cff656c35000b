import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { demoJob, withRecording } from '../../../sim/job/demo.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import type { Job } from '../../../sim/job/schema.ts';
import { openDatabase } from '../../../src/storage/database.ts';
import { packJob, unpackJob } from '../../../src/storage/jobParts.ts';
import { JobConflict, openJobs } from '../../../src/storage/jobs.ts';

const named = (name: string): Job => ({ ...demoJob(), name });
const recorded = (text: string): Job => withRecording(demoJob(), 'by-hand', { id: 'session', name: 'Session', text });

/** A job with each kind of long part. */
const full = (): Job =>
  parseJob({
    ...recorded('a,b'),
    log: [{ id: 'one', kind: 'other', name: 'Look', started: '2026-05-04T08:10Z', who: 'me', photos: [{ id: 'p', name: 'all of it', width: 4, height: 3, jpeg: 'AAAA' }] }],
    surveys: [{ id: 's', name: 'S', panel: demoJob().part.panels[0]!.id, at: '2026-05-04T08:10Z', who: 'me', rule: { kind: 'ninety-ten', nominal_um: 30 }, readings: [{ kind: 'metal', dry_um: 31 }] }],
  }).job;

afterEach(() => vi.restoreAllMocks());

/** Names of the parts written to `jobParts`, in turn. */
function writtenParts(): string[] {
  const names: string[] = [];
  // eslint-disable-next-line @typescript-eslint/unbound-method -- called with its own store below
  const put = IDBObjectStore.prototype.put;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value: unknown, key?: IDBValidKey) {
    if (this.name === 'jobParts') names.push((key as [string, string])[1]);
    return put.call(this, value, key);
  });
  return names;
}

describe('packJob', () => {
  it('cuts recordings, photographs and readings out, and gives the same job back', () => {
    const job = full();
    const { main, parts } = packJob(job);
    expect([...parts.keys()]).toEqual(['recording:session', 'photo:one:p', 'readings:s']);
    expect(JSON.stringify(main)).not.toContain('AAAA');
    expect(unpackJob(structuredClone(main), parts)).toEqual(job);
  });
});

describe('openJobs', () => {
  it('gives a job back whole after a second opening', async () => {
    const shelf = await openJobs('jobs-whole');
    const head = await shelf.create(full());
    shelf.close();
    const kept = await (await openJobs('jobs-whole')).read(head.id);
    expect(kept).toEqual({ head, job: full() });
    expect(head.changedAt).toMatch(/Z$/);
    expect(head.letters).toBeGreaterThan(JSON.stringify(full()).length - 100);
  });

  it('has no job of another id', async () => {
    expect(await (await openJobs('jobs-none')).read('x')).toBeNull();
  });

  it('lists the newest write first, also where the clock went back between', async () => {
    const shelf = await openJobs('jobs-clock');
    vi.useFakeTimers({ toFake: ['Date'], now: Date.UTC(2026, 5, 1) });
    const first = await shelf.create(named('first'));
    vi.setSystemTime(Date.UTC(2020, 0, 1));
    const second = await shelf.create(named('second'));
    vi.useRealTimers();
    expect(second.changedAt < first.changedAt).toBe(true);
    expect((await shelf.list()).map(({ name }) => name)).toEqual(['second', 'first']);
    await shelf.write(first.id, named('first again'), first.revision);
    expect((await shelf.list()).map(({ name }) => name)).toEqual(['first again', 'second']);
  });

  it('lists 500 jobs in well under 100 ms, recordings and all', async () => {
    const shelf = await openJobs('jobs-500');
    const job = recorded('x'.repeat(20_000));
    for (let i = 0; i < 500; i++) await shelf.create({ ...job, name: `Job ${i}` });
    const times = [];
    for (let i = 0; i < 5; i++) {
      const began = performance.now();
      expect(await shelf.list()).toHaveLength(500);
      times.push(performance.now() - began);
    }
    expect(Math.min(...times)).toBeLessThan(100);
  });

  it('refuses a write that started from another revision, says what is there, and changes nothing', async () => {
    const shelf = await openJobs('jobs-conflict');
    const head = await shelf.create(named('as made'));
    const newer = await shelf.write(head.id, named('newer'), head.revision);
    const late = shelf.write(head.id, recorded('late'), head.revision);
    await expect(late).rejects.toBeInstanceOf(JobConflict);
    await expect(late).rejects.toMatchObject({ there: newer });
    expect(await shelf.read(head.id)).toEqual({ head: newer, job: named('newer') });
    await expect(shelf.create(named('taken'), { id: head.id })).rejects.toMatchObject({ there: newer });
  });

  it('of two writes from one revision at the same moment lets one through', async () => {
    const [a, b] = [await openJobs('jobs-race'), await openJobs('jobs-race')];
    const head = await a.create(named('as made'));
    const done = await Promise.allSettled([a.write(head.id, named('a'), head.revision), b.write(head.id, named('b'), head.revision)]);
    expect(done.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
    expect((await a.list())[0]?.name).toBe('a');
  });

  it('writes a recording of 64 MB once, and never again while somebody types', async () => {
    const shelf = await openJobs('jobs-long');
    const text = '0,0,0,200\n'.repeat(6.4e6);
    const job = recorded(text);
    const names = writtenParts();
    const { id, ...head } = await shelf.create(job);
    let { revision } = head;
    expect(names).toContain('recording:session');
    names.length = 0;
    for (const name of ['F', 'Fi', 'Fin']) revision = (await shelf.write(id, { ...job, name }, revision)).revision;
    expect(names.filter((name) => name.includes(':'))).toEqual([]);
    expect(names.filter((name) => name === 'main')).toHaveLength(3);
    // A new text is written; of a recording that is gone nothing stays.
    revision = (await shelf.write(id, recorded('b'), revision)).revision;
    expect(names).toContain('recording:session');
    await shelf.write(id, demoJob(), revision);
    expect(await (await openDatabase('jobs-long')).count('jobParts', IDBKeyRange.bound([id], [id, []]))).toBe(1);
  }, 60_000);

  it('clears up after a write whose parts it never saw', async () => {
    const shelf = await openJobs('jobs-unseen');
    const head = await shelf.create(full());
    shelf.close();
    const other = await openJobs('jobs-unseen');
    const after = await other.write(head.id, demoJob(), head.revision);
    expect(await other.read(head.id)).toEqual({ head: after, job: demoJob() });
    expect(await (await openDatabase('jobs-unseen')).count('jobParts', IDBKeyRange.bound([head.id], [head.id, []]))).toBe(1);
  });

  it('keeps a job whole or not at all, and says that there is no room', async () => {
    const shelf = await openJobs('jobs-full');
    const head = await shelf.create(named('as made'));
    // eslint-disable-next-line @typescript-eslint/unbound-method -- called with its own store below
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value: unknown, key?: IDBValidKey) {
      if (Array.isArray(key) && typeof key[1] === 'string' && key[1].startsWith('recording')) throw new DOMException('no room', 'QuotaExceededError');
      return put.call(this, value, key);
    });
    await expect(shelf.write(head.id, recorded('long'), head.revision)).rejects.toMatchObject({ name: 'QuotaExceededError' });
    vi.restoreAllMocks();
    expect(await shelf.read(head.id)).toEqual({ head, job: named('as made') });
    expect((await shelf.write(head.id, recorded('long'), head.revision)).name).toBe(demoJob().name);
    expect((await shelf.read(head.id))?.job).toEqual(recorded('long'));
  });

  it('copies a job with every part under a name of its own', async () => {
    const shelf = await openJobs('jobs-copy');
    const head = await shelf.create(full());
    const copy = await shelf.duplicate(head.id, 'Copy');
    expect(copy.id).not.toBe(head.id);
    expect((await shelf.read(copy.id))?.job).toEqual({ ...full(), name: 'Copy' });
    expect((await shelf.list()).map(({ name }) => name)).toEqual(['Copy', full().name]);
    await expect(shelf.duplicate('gone', 'x')).rejects.toMatchObject({ there: null });
  });

  it('puts a job away and brings it back; a write leaves it where it is', async () => {
    const shelf = await openJobs('jobs-archive');
    const head = await shelf.create(named('a'));
    expect((await shelf.archive(head.id, true)).archived).toBe(true);
    const written = await shelf.write(head.id, named('b'), head.revision);
    expect(written).toMatchObject({ archived: true, madeAt: head.madeAt });
    expect((await shelf.archive(head.id, false)).archived).toBe(false);
    await expect(shelf.archive('gone', true)).rejects.toMatchObject({ there: null });
  });

  it('removes every part of a job, and no other', async () => {
    const shelf = await openJobs('jobs-remove');
    const [gone, stays] = [await shelf.create(full(), { id: 'job-1' }), await shelf.create(full(), { id: 'job-10' })];
    await shelf.remove(gone.id);
    expect((await shelf.list()).map(({ id }) => id)).toEqual([stays.id]);
    expect((await shelf.read(stays.id))?.job).toEqual(full());
    expect(await (await openDatabase('jobs-remove')).count('jobParts', IDBKeyRange.bound(['job-1'], ['job-1', []]))).toBe(0);
    await expect(shelf.write(gone.id, full(), gone.revision)).rejects.toMatchObject({ there: null });
  });

  it('takes a job from elsewhere with its id, its age and its place in the archive', async () => {
    const shelf = await openJobs('jobs-from');
    const head = await shelf.create(named('old'), { id: 'job-x', madeAt: '2020-01-01T00:00:00.000Z', archived: true });
    expect(head).toMatchObject({ id: 'job-x', madeAt: '2020-01-01T00:00:00.000Z', archived: true });
  });
});
