import { openDB, type DBSchema, type IDBPDatabase } from 'idb';

/** One store of values by key; the state table says which keys there are. */
interface Shelves extends DBSchema {
  kept: { key: string; value: unknown };
}

const DATABASE = 'crosscoat';
const VERSION = 1;

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
  const database = await openDB<Shelves>(name, VERSION, {
    upgrade: (fresh) => void fresh.createObjectStore('kept'),
  });
  return {
    read: () => readAll(database),
    write: (values, removed = []) => writeAll(database, values, removed),
    clear: () => database.clear('kept'),
    close: () => database.close(),
  };
}

async function readAll(database: IDBPDatabase<Shelves>): Promise<ReadonlyMap<string, unknown>> {
  const transaction = database.transaction('kept');
  const [keys, values] = await Promise.all([transaction.store.getAllKeys(), transaction.store.getAll()]);
  return new Map(keys.map((key, i) => [key, values[i]]));
}

async function writeAll(
  database: IDBPDatabase<Shelves>,
  values: ReadonlyMap<string, unknown>,
  removed: readonly string[],
): Promise<void> {
  const transaction = database.transaction('kept', 'readwrite', { durability: 'relaxed' });
  await Promise.all([
    ...[...values].map(([key, value]) => transaction.store.put(value, key)),
    ...removed.map((key) => transaction.store.delete(key)),
    transaction.done,
  ]);
}
