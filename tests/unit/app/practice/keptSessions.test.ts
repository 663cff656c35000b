import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it } from 'vitest';
import { clearDraft, closeKeptSessions, keepAgain, keepDraft, keepSession, keptSessions, openKeptSessions, putBack, readDraft, readKept, removeSession, renameSession } from '../../../../src/app/practice/keptSessions.ts';
import { openSessions, type SessionShelf } from '../../../../src/storage/sessions.ts';
import { keptSession, session } from './samples.ts';

const names = (): string[] => keptSessions.list.value.map((each) => each.session.id);

/** A storage that refuses to put while `isFull` says so. */
async function filling(name: string, isFull: () => boolean): Promise<SessionShelf> {
  const shelf = await openSessions(name);
  return { ...shelf, put: (kept) => (isFull() ? Promise.reject(new Error('quota exceeded')) : shelf.put(kept)) };
}

describe('keptSessions', () => {
  afterEach(async () => {
    keptSessions.notKept.value = [];
    await closeKeptSessions();
  });

  it('lists what an earlier page kept', async () => {
    await openKeptSessions(() => openSessions('kept-earlier'));
    expect([keptSessions.isRead.value, names()]).toEqual([true, []]);
    expect(await keepSession(keptSession())).toBe(true);
    await closeKeptSessions();
    expect(names()).toEqual([]);
    await openKeptSessions();
    expect(names()).toEqual(['session-1']);
  });

  it('offers every refused session until it is kept', async () => {
    let isFull = true;
    await openKeptSessions(() => filling('kept-full', () => isFull));
    expect(await keepSession(keptSession())).toBe(false);
    expect(await keepSession(keptSession({ id: 'session-2' }))).toBe(false);
    expect(keptSessions.notKept.value.map((each) => each.session.id)).toEqual(['session-1', 'session-2']);
    expect(keptSessions.problem.value?.text).toBe('quota exceeded');
    isFull = false;
    await keepAgain();
    expect(keptSessions.notKept.value).toEqual([]);
    expect(keptSessions.problem.value).toBeNull();
    expect(names()).toHaveLength(2);
  });

  it('offers a session where the storage does not open, and asks for it again the next time', async () => {
    let isRefused = true;
    const open = (): Promise<SessionShelf> => (isRefused ? Promise.reject(new Error('private window')) : openSessions('kept-refused'));
    await openKeptSessions(open);
    expect(keptSessions.isRead.value).toBe(false);
    expect(await keepSession(keptSession())).toBe(false);
    expect(keptSessions.notKept.value).toHaveLength(1);
    isRefused = false;
    await keepAgain();
    expect(names()).toEqual(['session-1']);
  });

  it('renames, removes and puts back', async () => {
    await openKeptSessions(() => openSessions('kept-acts'));
    await keepSession(keptSession());
    await renameSession('session-1', 'Second try');
    expect(keptSessions.list.value[0]?.session.name).toBe('Second try');
    await removeSession('session-1');
    expect(names()).toEqual([]);
    await putBack();
    expect(keptSessions.removed.value).toEqual([]);
    expect((await readKept('session-1'))?.session).toEqual(session({ name: 'Second try' }));
  });

  it('tells that a session was removed elsewhere', async () => {
    await openKeptSessions(() => openSessions('kept-gone'));
    expect(await readKept('session-1')).toBeNull();
    expect(keptSessions.problem.value?.text).toContain('no such session');
  });

  it('checks a session on the way out', async () => {
    await openKeptSessions(() => openSessions('kept-bad'));
    const { task } = session();
    await keepSession(keptSession({ task: { ...task, coat: 'no-such-coat' } }));
    expect(await readKept('session-1')).toBeNull();
    expect(keptSessions.problem.value?.text).toContain('no-such-coat');
  });

  it('keeps the session under way', async () => {
    await openKeptSessions(() => openSessions('kept-draft'));
    const { task, job, trainee } = session();
    expect(await keepDraft({ task, job, trainee, strokes: 'so far' })).toBe(true);
    expect((await readDraft())?.strokes).toBe('so far');
    await clearDraft();
    expect(await readDraft()).toBeNull();
  });
});
