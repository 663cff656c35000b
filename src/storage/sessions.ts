import type { IDBPDatabase } from 'idb';
import type { SessionSpec } from '../../sim/index.ts';
import { openDatabase } from './database.ts';
import { whole, type KeptSession, type ListedSession, type SessionDraft, type Stores } from './stores.ts';

export type { KeptSession, ListedSession, SessionDraft } from './stores.ts';

const DRAFT_KEY = 'under-way';
/** By itself, so that asking for it does not read the draft's job. */
const STAMP_KEY = `${DRAFT_KEY}-stamp`;
const PIECE_DIGITS = 7;

/** The practice sessions kept in this browser, and the one under way. Every call rejects where storage is refused or full. */
export interface SessionShelf {
  /** Newest first, without jobs and strokes. */
  list(): Promise<readonly ListedSession[]>;
  /** As it was kept, its job perhaps of an older version; null where there is no such session. */
  get(id: string): Promise<KeptSession | null>;
  /** Kept whole or not at all. A session of the same id is replaced. */
  put(kept: KeptSession): Promise<void>;
  rename(id: string, name: string): Promise<void>;
  remove(id: string): Promise<void>;
  /** In place of the draft before it. @param stamp by which it is known when it is added to; none: it is whole. */
  putDraft(draft: SessionDraft, stamp?: string): Promise<void>;
  /** Puts rows behind the draft as its piece `index`, without writing what is there again. @returns false, and nothing is behind it, where the draft is another than that of `stamp`. */
  addToDraft(stamp: string, index: number, rows: string): Promise<boolean>;
  readDraft(): Promise<SessionDraft | null>;
  clearDraft(): Promise<void>;
  close(): void;
}

/** Opens the practice sessions of this browser. Rejects where the browser refuses storage. */
export async function openSessions(name?: string): Promise<SessionShelf> {
  const database = await openDatabase(name);
  return {
    list: async () => newestFirst(await database.getAll('sessions')),
    get: (id) => get(database, id),
    put: (kept) => put(database, kept),
    rename: (id, text) => rename(database, id, text),
    remove: (id) => remove(database, id),
    putDraft: (draft, stamp = '') => putDraft(database, draft, stamp),
    addToDraft: (stamp, index, rows) => addToDraft(database, stamp, index, rows),
    readDraft: () => readDraft(database),
    clearDraft: () => database.clear('drafts'),
    close: () => database.close(),
  };
}

function newestFirst(sessions: readonly ListedSession[]): readonly ListedSession[] {
  const time = ({ session }: ListedSession): number => Date.parse(session.sprayedAt);
  return [...sessions].sort((a, b) => time(b) - time(a) || b.keptAt.localeCompare(a.keptAt));
}

async function get(database: IDBPDatabase<Stores>, id: string): Promise<KeptSession | null> {
  const transaction = database.transaction(['sessions', 'sessionTexts']);
  const [listed, texts] = await Promise.all([
    transaction.objectStore('sessions').get(id),
    transaction.objectStore('sessionTexts').get(id),
  ]);
  if (listed === undefined || texts === undefined) return null;
  const { session, score, hand, keptAt } = listed;
  return { session: { ...session, ...texts }, score, hand, keptAt };
}

async function put(database: IDBPDatabase<Stores>, { session, score, hand, keptAt }: KeptSession): Promise<void> {
  const { job, strokes, ...head } = session;
  const transaction = database.transaction(['sessions', 'sessionTexts'], 'readwrite', { durability: 'strict' });
  const listed: ListedSession = { session: head, score, hand, keptAt, plannedSpeed_m_s: plannedSpeed_m_s(session) };
  await whole(transaction, async () => {
    await transaction.objectStore('sessionTexts').put({ job, strokes }, head.id);
    await transaction.objectStore('sessions').put(listed);
  });
}

async function rename(database: IDBPDatabase<Stores>, id: string, name: string): Promise<void> {
  const transaction = database.transaction('sessions', 'readwrite');
  const listed = await transaction.store.get(id);
  if (listed === undefined) throw new Error('there is no such session any more; it was removed, perhaps in another window');
  await Promise.all([transaction.store.put({ ...listed, session: { ...listed.session, name } }), transaction.done]);
}

async function remove(database: IDBPDatabase<Stores>, id: string): Promise<void> {
  const transaction = database.transaction(['sessions', 'sessionTexts'], 'readwrite');
  await Promise.all([
    transaction.objectStore('sessions').delete(id),
    transaction.objectStore('sessionTexts').delete(id),
    transaction.done,
  ]);
}

function pieceKey(stamp: string, index: number): string {
  return `${DRAFT_KEY}/${stamp}/${String(index).padStart(PIECE_DIGITS, '0')}`;
}

/** Keys that begin with `head` and a stroke; 0 is what follows the stroke. */
function keysUnder(head: string): IDBKeyRange {
  return IDBKeyRange.bound(`${head}/`, `${head}0`, false, true);
}

// A page that is busy, or gone in the next moment, hears no answers: what is written is asked for at once, and committed.

async function putDraft(database: IDBPDatabase<Stores>, draft: SessionDraft, stamp: string): Promise<void> {
  const transaction = database.transaction('drafts', 'readwrite');
  await whole(transaction, () => {
    const asked = [transaction.store.put(draft, DRAFT_KEY), transaction.store.put(stamp, STAMP_KEY), transaction.store.delete(keysUnder(DRAFT_KEY))];
    transaction.commit();
    return Promise.all(asked);
  });
}

/** The piece of a draft that is no longer there is read by nobody, and goes with the next one. */
async function addToDraft(database: IDBPDatabase<Stores>, stamp: string, index: number, rows: string): Promise<boolean> {
  const transaction = database.transaction('drafts', 'readwrite');
  const [there] = await whole(transaction, () => {
    const asked = [transaction.store.get(STAMP_KEY), transaction.store.put(rows, pieceKey(stamp, index))] as const;
    transaction.commit();
    return Promise.all(asked);
  });
  return there === stamp;
}

async function readDraft(database: IDBPDatabase<Stores>): Promise<SessionDraft | null> {
  const { store } = database.transaction('drafts');
  const [draft, stamp] = await Promise.all([store.get(DRAFT_KEY), store.get(STAMP_KEY)]);
  if (typeof draft !== 'object') return null;
  // A draft of an older build has no stamp, and nothing behind it.
  if (typeof stamp !== 'string') return draft;
  const pieces = (await store.getAll(keysUnder(`${DRAFT_KEY}/${stamp}`))) as string[];
  return { ...draft, strokes: draft.strokes + pieces.join('') };
}

/** NaN where the job has no such coat, which `parseSession` refuses. */
function plannedSpeed_m_s({ job, task }: SessionSpec): number {
  return job.coats.find(({ id }) => id === task.coat)?.plan.speed_m_s ?? NaN;
}
