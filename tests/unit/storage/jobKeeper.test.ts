import 'fake-indexeddb/auto';
import { afterEach, expect, it, vi } from 'vitest';
import { demoJob } from '../../../sim/job/demo.ts';
import type { Job } from '../../../sim/job/schema.ts';
import { openDatabase } from '../../../src/storage/database.ts';
import type { InHand } from '../../../src/storage/inHand.ts';
import { startJobKeeper, type JobKeeper, type KeeperWindow } from '../../../src/storage/jobKeeper.ts';
import type { JobNews, JobNewsLine } from '../../../src/storage/jobNews.ts';
import { JobConflict, jobStore, type JobStore } from '../../../src/storage/jobStore.ts';
import type { JobHead } from '../../../src/storage/stores.ts';

const named = (name: string): Job => ({ ...demoJob(), name });

/** A line between windows that is heard at once, in this test. */
class Line {
  private readonly ends = new Set<(news: JobNews) => void>();
  end(): JobNewsLine {
    let own: (news: JobNews) => void = () => undefined;
    return {
      tell: (news) => this.ends.forEach((heard) => heard !== own && heard(news)),
      listen: (heard) => this.ends.add((own = heard)),
      close: () => this.ends.delete(own),
    };
  }
}

/** A window without a page. */
class TestWindow {
  readonly told: string[] = [];
  readonly keeper: JobKeeper;
  inHand: InHand;

  constructor(
    readonly store: JobStore,
    news: JobNewsLine,
    id: string,
    more: Partial<KeeperWindow> = {},
  ) {
    this.inHand = { id, job: named('as made'), drafts: {} };
    this.keeper = startJobKeeper(store, news, {
      inHand: () => this.inHand,
      isHidden: () => false,
      failed: (why) => this.told.push(why === null ? 'kept' : (why instanceof Error ? why.message : 'refused')),
      kept: () => undefined,
      keepAside: async (late, there) => {
        this.told.push(`aside of ${there?.name ?? 'nothing'}`);
        const head = await store.put(`${late.id}-aside`, late.job, null, { drafts: late.drafts });
        this.inHand = { ...this.inHand, id: head.id };
        this.keeper.hold({ ...late, id: head.id }, head.revision);
      },
      takeOver: ({ head, job }, isClean) => {
        if (isClean()) this.take({ ...this.inHand, job: job as Job }, head);
        return Promise.resolve();
      },
      removed: () => this.told.push('removed'),
      openElsewhere: () => this.told.push('open elsewhere'),
      ...more,
    });
  }

  take(inHand: InHand, head: JobHead): void {
    this.keeper.hold(inHand, head.revision);
    this.inHand = inHand;
    this.told.push(`took ${head.name}`);
  }

  type(name: string): void {
    this.inHand = { ...this.inHand, job: named(name) };
    this.keeper.changed();
  }
}

let windows: TestWindow[] = [];
afterEach(() => {
  for (const { keeper } of windows) keeper.stop();
  windows = [];
});

/** Two windows of one browser on one kept job. */
async function twoWindows(name: string, more: Partial<KeeperWindow> = {}): Promise<[TestWindow, TestWindow, JobStore]> {
  const line = new Line();
  const store = jobStore(await openDatabase(name));
  const head = await store.put('job', named('as made'), null);
  const [a, b] = [new TestWindow(jobStore(await openDatabase(name)), line.end(), 'job', more), new TestWindow(jobStore(await openDatabase(name)), line.end(), 'job', more)];
  windows = [a, b];
  for (const each of windows) each.keeper.hold(each.inHand, head.revision);
  return [a, b, store];
}

const names = async (store: JobStore): Promise<string[]> => (await store.heads()).map(({ name }) => name).sort();

it('makes a job that was not kept yet, and keeps each change of it', async () => {
  const store = jobStore(await openDatabase('keeper-new'));
  const window = new TestWindow(store, new Line().end(), 'new');
  windows = [window];
  window.type('F');
  await window.keeper.flush();
  window.type('Fin');
  await window.keeper.flush();
  expect(await store.heads()).toMatchObject([{ id: 'new', name: 'Fin', revision: 2 }]);
});

it('keeps half-typed text beside the job without a new revision', async () => {
  const [a, , store] = await twoWindows('keeper-drafts');
  a.inHand = { ...a.inHand, drafts: { '/name': { text: 'half', problem: null } } };
  a.keeper.changed();
  await a.keeper.flush();
  expect(await store.read('job')).toMatchObject({ head: { revision: 1 }, drafts: a.inHand.drafts });
});

it('says at once what would be lost, while it is unsaved', async () => {
  const [a] = await twoWindows('keeper-last-word');
  expect(a.keeper.lastWords()).toEqual([]);
  a.type('half kept');
  const writing = a.keeper.flush();
  await Promise.resolve();
  a.type('typed meanwhile');
  expect(a.keeper.lastWords()).toMatchObject([{ id: 'job', revision: 1, parts: [], main: { job: { name: 'typed meanwhile' } }, underWay: { main: { job: { name: 'half kept' } } } }]);
  await writing;
  expect(a.keeper.lastWords()).toMatchObject([{ revision: 2, underWay: null }]);
  // A job that gave way to another is still to be kept.
  a.inHand = { id: 'other', job: named('new'), drafts: {} };
  a.keeper.changed();
  expect(a.keeper.lastWords()).toMatchObject([{ id: 'job' }, { id: 'other', revision: null }]);
  await a.keeper.flush();
  expect(a.keeper.lastWords()).toEqual([]);
});

it('a window with nothing unsaved takes over what the other wrote', async () => {
  const [a, b, store] = await twoWindows('keeper-clean');
  a.type('from a');
  await a.keeper.flush();
  await vi.waitFor(() => expect(b.inHand.job.name).toBe('from a'));
  // And does not write it once more.
  await b.keeper.flush();
  expect(await store.heads()).toMatchObject([{ name: 'from a', revision: 2 }]);
});

it('what both changed is kept of both', async () => {
  const [a, b, store] = await twoWindows('keeper-both');
  a.type('from a');
  b.type('from b');
  await a.keeper.flush();
  await vi.waitFor(async () => expect(await names(store)).toEqual(['from a', 'from b']));
  expect(b.told).toContain('aside of from a');
  // Each goes on with its own.
  b.type('from b, more');
  await b.keeper.flush();
  a.type('from a, more');
  await a.keeper.flush();
  expect(await names(store)).toEqual(['from a, more', 'from b, more']);
});

it('writes at the same moment lose nothing', async () => {
  const [a, b, store] = await twoWindows('keeper-race');
  a.type('from a');
  b.type('from b');
  await Promise.all([a.keeper.flush(), b.keeper.flush()]);
  expect(await names(store)).toEqual(['from a', 'from b']);
});

it('keeps the last of what was typed in a job that was put away for another at once', async () => {
  const [a, , store] = await twoWindows('keeper-swap', { isHidden: () => true });
  a.type('last words');
  a.inHand = { id: 'other', job: named('another'), drafts: {} };
  a.keeper.changed();
  await a.keeper.flush();
  expect(await names(store)).toEqual(['another', 'last words']);
});

it('says when the job was removed, and keeps the next change as a job of its own', async () => {
  const line = new Line();
  const database = await openDatabase('keeper-removed');
  const store = jobStore(database);
  const window = new TestWindow(store, line.end(), 'job');
  windows = [window];
  window.type('F');
  await window.keeper.flush();
  await database.delete('jobs', 'job');
  line.end().tell({ id: 'job', revision: null });
  expect(window.told).toContain('removed');
  window.type('Fin');
  await window.keeper.flush();
  expect(window.told).toContain('aside of nothing');
  expect(await names(store)).toEqual(['Fin']);
});

it('hears of a window that has the same job open', async () => {
  const [a, b] = await twoWindows('keeper-open');
  b.keeper.ask();
  expect(b.told).toEqual(['open elsewhere']);
  expect(a.told).toEqual([]);
});

it('tells what was refused, tries it again by itself, and loses nothing', async () => {
  const inner = jobStore(await openDatabase('keeper-full'));
  let isFull = true;
  const store: JobStore = { ...inner, put: (...put) => (isFull ? Promise.reject(new DOMException('no room', 'QuotaExceededError')) : inner.put(...put)) };
  const window = new TestWindow(store, new Line().end(), 'job');
  windows = [window];
  window.type('F');
  await window.keeper.flush();
  expect(window.told.at(-1)).toContain('no room');
  isFull = false;
  await vi.waitFor(() => expect(window.told.at(-1)).toBe('kept'), { timeout: 5000 });
  expect(await names(inner)).toEqual(['F']);
});

it('keeping aside that fails is tried again: the work is never dropped', async () => {
  let fails = 1;
  const kept: string[] = [];
  const [a, b] = await twoWindows('keeper-aside', {
    keepAside: (late) => (fails-- > 0 ? Promise.reject(new Error('the chunk did not come')) : Promise.resolve(void kept.push(late.job.name))),
  });
  a.type('from a');
  b.type('from b');
  await a.keeper.flush();
  await vi.waitFor(() => expect(b.told).toContain('the chunk did not come'));
  await b.keeper.flush();
  expect(kept).toEqual(['from b']);
});

it('a conflict says what is there', () => {
  expect(new JobConflict(null).message).toContain('was removed');
});
