import { openDB, type IDBPDatabase } from 'idb';
import { moveOldJob } from './moveOldJob.ts';
import { abandon, type Stores } from './stores.ts';

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
