import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { openDatabase } from '../../../src/storage/database.ts';
import { openSessions, type KeptSession } from '../../../src/storage/sessions.ts';
import { keptSession, session } from '../app/practice/samples.ts';

describe('openSessions', () => {
  it('gives a session back whole after a second opening', async () => {
    const shelf = await openSessions('sessions-whole');
    const kept = keptSession();
    await shelf.put(kept);
    shelf.close();
    expect(await (await openSessions('sessions-whole')).get('session-1')).toEqual(kept);
  });

  it('has no session of another id', async () => {
    expect(await (await openSessions('sessions-none')).get('session-1')).toBeNull();
  });

  it('keeps the place of a score that is no number', async () => {
    const shelf = await openSessions('sessions-nan');
    await shelf.put(keptSession({}, { total: NaN, rows: [], isPassed: false }));
    expect((await shelf.get('session-1'))?.score.total).toBeNaN();
  });

  it('lists the newest first by instant, whatever the offset it was written with, without job and strokes', async () => {
    const shelf = await openSessions('sessions-list');
    await shelf.put(keptSession({ id: 'old', sprayedAt: '2026-03-01T11:30:00+02:00' }));
    await shelf.put(keptSession({ id: 'new', sprayedAt: '2026-03-01T10:00:00Z' }));
    const list = await shelf.list();
    expect(list.map((each) => each.session.id)).toEqual(['new', 'old']);
    expect(Object.keys(list[0]!.session)).not.toContain('job');
    expect(Object.keys(list[0]!.session)).not.toContain('strokes');
  });

  it('lists the speed that the task asked for', async () => {
    const shelf = await openSessions('sessions-speed');
    await shelf.put(keptSession());
    expect((await shelf.list())[0]!.plannedSpeed_m_s).toBe(session().job.coats[0]!.plan.speed_m_s);
  });

  it('renames in the list and in the whole, and refuses where there is none', async () => {
    const shelf = await openSessions('sessions-rename');
    await shelf.put(keptSession());
    await shelf.rename('session-1', 'Second try');
    expect((await shelf.list())[0]!.session.name).toBe('Second try');
    expect((await shelf.get('session-1'))?.session).toEqual(session({ name: 'Second try' }));
    await expect(shelf.rename('gone', 'x')).rejects.toThrow('no such session');
  });

  it('removes both parts of a session', async () => {
    const shelf = await openSessions('sessions-remove');
    await shelf.put(keptSession());
    await shelf.remove('session-1');
    expect(await shelf.list()).toEqual([]);
    const database = await openDatabase('sessions-remove');
    expect(await database.count('sessionTexts')).toBe(0);
  });

  it('keeps a session whole or not at all', async () => {
    const shelf = await openSessions('sessions-atomic');
    const bad = { ...keptSession(), hand: () => 0 } as unknown as KeptSession;
    await expect(shelf.put(bad)).rejects.toThrow();
    const database = await openDatabase('sessions-atomic');
    expect([await database.count('sessions'), await database.count('sessionTexts')]).toEqual([0, 0]);
  });

  it('has one draft, the newest, until it is cleared', async () => {
    const shelf = await openSessions('sessions-draft');
    const { task, job, trainee } = session();
    expect(await shelf.readDraft()).toBeNull();
    await shelf.putDraft({ task, job, trainee, strokes: 'a' });
    await shelf.putDraft({ task, job, trainee, strokes: 'ab' });
    expect(await shelf.readDraft()).toEqual({ task, job, trainee, strokes: 'ab' });
    await shelf.clearDraft();
    expect(await shelf.readDraft()).toBeNull();
  });

  it('goes on with its draft piece by piece, and with no other', async () => {
    const shelf = await openSessions('sessions-added');
    const { task, job, trainee } = session();
    const draft = { task, job, trainee, strokes: 'head\n' };
    const added = Array.from({ length: 12 }, (_, i) => `${i}\n`);
    expect(await shelf.addToDraft('first', 0, '0\n')).toBe(false);
    await shelf.putDraft(draft, 'first');
    for (const [index, rows] of added.entries()) expect(await shelf.addToDraft('first', index, rows)).toBe(true);
    // In order, also from the tenth on.
    expect(await shelf.readDraft()).toEqual({ ...draft, strokes: ['head\n', ...added].join('') });
    await shelf.putDraft({ ...draft, strokes: 'other\n' }, 'second');
    expect(await shelf.addToDraft('first', 12, 'lost\n')).toBe(false);
    expect(await shelf.readDraft()).toEqual({ ...draft, strokes: 'other\n' });
    await shelf.addToDraft('second', 0, '0\n');
    await shelf.clearDraft();
    const database = await openDatabase('sessions-added');
    expect(await database.count('drafts')).toBe(0);
  });
});
