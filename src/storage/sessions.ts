import type { IDBPDatabase } from 'idb';
import type { SessionSpec } from '../../sim/index.ts';
import { openDatabase } from './database.ts';
import { abandon, type KeptSession, type ListedSession, type SessionDraft, type Stores } from './stores.ts';

export type { KeptSession, ListedSession, SessionDraft } from './stores.ts';

const DRAFT_KEY = 'under-way';

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
  /** In place of the draft before it. */
  putDraft(draft: SessionDraft): Promise<void>;
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
    putDraft: async (draft) => void (await database.put('drafts', draft, DRAFT_KEY)),
    readDraft: async () => (await database.get('drafts', DRAFT_KEY)) ?? null,
    clearDraft: () => database.delete('drafts', DRAFT_KEY),
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
  try {
    await transaction.objectStore('sessionTexts').put({ job, strokes }, head.id);
    await transaction.objectStore('sessions').put(listed);
    await transaction.done;
  } catch (why) {
    abandon(transaction);
    throw why;
  }
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

/** NaN where the job has no such coat, which `parseSession` refuses. */
function plannedSpeed_m_s({ job, task }: SessionSpec): number {
  return job.coats.find(({ id }) => id === task.coat)?.plan.speed_m_s ?? NaN;
}
