import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction, type StoreNames } from 'idb';
import type { HandSample, Job, Score, SessionSpec, TaskSpec } from '../../sim/index.ts';
import type { JobHead } from './jobStore.ts';
import { moveOldJob } from './moveOldJob.ts';

/** A practice session with what it was worth when it was sprayed. */
export interface KeptSession {
  readonly session: SessionSpec;
  readonly score: Score;
  readonly hand: HandSample;
  /** When it was put here, ISO 8601. */
  readonly keptAt: string;
}

/** A kept session as a list shows it: without its job and its strokes, which may be long. */
export interface ListedSession extends Omit<KeptSession, 'session'> {
  readonly session: Omit<SessionSpec, 'job' | 'strokes'>;
  /** Speed that the task asked for, which makes a length of a time. */
  readonly plannedSpeed_m_s: number;
}

/** The session under way, so that a closed page loses no more than its last seconds. */
export interface SessionDraft {
  readonly task: TaskSpec;
  readonly job: Job;
  readonly trainee: string;
  /** Recorded-stroke CSV so far. */
  readonly strokes: string;
}

/** Every store of the browser's database. */
export interface Stores extends DBSchema {
  /** Values by key; the state table says which keys there are. */
  kept: { key: string; value: unknown };
  sessions: { key: string; value: ListedSession };
  /** The long parts of a session, by its id. */
  sessionTexts: { key: string; value: Pick<SessionSpec, 'job' | 'strokes'> };
  /** At most one, under `DRAFT_KEY`. */
  drafts: { key: string; value: SessionDraft };
  /** What lists show of the jobs. */
  jobs: { key: string; value: JobHead };
  /** Parts of the jobs by job and name of the part: the long ones are written once. jobStore.ts says which there are. */
  jobParts: { key: [job: string, name: string]; value: unknown };
}

/** The transaction in which a database is brought to a newer version. */
export type Upgrading = IDBPTransaction<Stores, StoreNames<Stores>[], 'versionchange'>;

const DATABASE = 'crosscoat';
/** 1: `kept`. 2: sessions and drafts. 3: jobs, many; the one that was among `kept` is the first of them. */
const VERSION = 3;

/** A drawer of values that outlive the page. */
export interface Shelf {
  read(): Promise<ReadonlyMap<string, unknown>>;
  /** Writes and removes in one transaction: all of it is kept, or none. */
  write(values: ReadonlyMap<string, unknown>, removed?: readonly string[]): Promise<void>;
  clear(): Promise<void>;
  close(): void;
}

/** Opens the browser's database. Rejects where the browser refuses storage. */
export async function openShelf(name = DATABASE): Promise<Shelf> {
  return shelfOf(await openDatabase(name));
}

/** The drawer of an open database. */
export function shelfOf(database: IDBPDatabase<Stores>): Shelf {
  return {
    read: () => readAll(database),
    write: (values, removed = []) => writeAll(database, values, removed),
    clear: () => database.clear('kept'),
    close: () => database.close(),
  };
}

/**
 * The database, brought to the newest version; what an older one kept stays. Rejects where the
 * browser refuses storage, and where another window with an older build holds the old version:
 * waiting for that window would keep this one from starting.
 */
export async function openDatabase(name = DATABASE): Promise<IDBPDatabase<Stores>> {
  return new Promise((resolve, reject) => {
    let isBlocked = false;
    const opening = openDB<Stores>(name, VERSION, {
      upgrade: (database, oldVersion, _newVersion, transaction) => {
        if (oldVersion < 1) database.createObjectStore('kept');
        if (oldVersion < 2) {
          database.createObjectStore('sessions', { keyPath: 'session.id' });
          database.createObjectStore('sessionTexts');
          database.createObjectStore('drafts');
        }
        if (oldVersion < 3) {
          database.createObjectStore('jobs', { keyPath: 'id' });
          database.createObjectStore('jobParts');
          // Where it fails, the database stays as it was, at its old version.
          if (oldVersion > 0) moveOldJob(transaction).catch(() => abandon(transaction));
        }
      },
      blocked: () => {
        isBlocked = true;
        reject(new Error('another window holds an older version of it; close that window and load this page again'));
      },
      // A newer build in another window goes ahead; what is written here from now on is told as refused.
      blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close(),
    });
    opening.then((database) => (isBlocked ? database.close() : resolve(database)), reject);
  });
}

async function readAll(database: IDBPDatabase<Stores>): Promise<ReadonlyMap<string, unknown>> {
  const transaction = database.transaction('kept');
  const [keys, values] = await Promise.all([transaction.store.getAllKeys(), transaction.store.getAll()]);
  return new Map(keys.map((key, i) => [key, values[i]]));
}

async function writeAll(
  database: IDBPDatabase<Stores>,
  values: ReadonlyMap<string, unknown>,
  removed: readonly string[],
): Promise<void> {
  const transaction = database.transaction('kept', 'readwrite', { durability: 'strict' });
  await Promise.all([
    ...[...values].map(([key, value]) => transaction.store.put(value, key)),
    ...removed.map((key) => transaction.store.delete(key)),
    transaction.done,
  ]);
}

/** Ends a transaction with nothing of it kept: a value that cannot be stored is refused before the transaction knows of it. */
export function abandon(transaction: { readonly done: Promise<void>; abort(): void }): void {
  transaction.done.catch(() => undefined);
  try {
    transaction.abort();
  } catch {
    // It has come to its end by itself.
  }
}
