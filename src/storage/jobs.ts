import type { IDBPDatabase } from 'idb';
import type { Job } from '../../sim/index.ts';
import { openDatabase } from './database.ts';
import { freshJobId } from './freshJobId.ts';
import type { MainPart } from './jobParts.ts';
import { COUNT_KEY, DRAFTS, JobConflict, jobStore, MAIN, partsOf, type KeptJob, type PutExtra } from './jobStore.ts';
import { whole, type JobHead, type Stores } from './stores.ts';
import { jobNews } from './jobNews.ts';

export { JobConflict } from './jobStore.ts';
export type { JobHead } from './stores.ts';

/** What a new job may bring along, e.g. from a workshop's file. An id that is taken is refused with JobConflict. */
export interface NewJob extends PutExtra {
  readonly id?: string;
}

/** The jobs kept in this browser. Every call rejects where storage is refused or full; what changes is told to all windows. */
export interface JobShelf {
  /** Newest first, archived ones too. Heads only: the jobs themselves are not read. */
  list(): Promise<readonly JobHead[]>;
  /** As it was kept, still to be checked by `parseJob`, perhaps of an older version; null where there is none. */
  read(id: string): Promise<KeptJob | null>;
  create(job: Job, more?: NewJob): Promise<JobHead>;
  /**
   * Rejects with JobConflict, which carries the head that is there, where that is not of `expectedRevision`; nothing is written then.
   * Half-typed text beside the job stays unless `extra` says what is there from now on: where the job becomes another, it must.
   */
  write(id: string, job: Job, expectedRevision: number, extra?: Pick<PutExtra, 'drafts'>): Promise<JobHead>;
  /** A copy under a name of its own, with every part; rejects with JobConflict where there is no such job. */
  duplicate(id: string, name: string): Promise<JobHead>;
  /** Puts a job away, or brings it back. Its content and revision stay. */
  archive(id: string, archived: boolean): Promise<JobHead>;
  remove(id: string): Promise<void>;
  close(): void;
}

/** Opens the jobs of this browser. Rejects where the browser refuses storage. */
export async function openJobs(name?: string): Promise<JobShelf> {
  const database = await openDatabase(name);
  const store = jobStore(database);
  const news = jobNews();
  const told = (head: JobHead): JobHead => {
    news.tell({ id: head.id, revision: head.revision });
    return head;
  };
  return {
    list: async () => [...(await store.heads())].sort((a, b) => b.revision - a.revision),
    read: (id) => store.read(id),
    create: async (job, { id = freshJobId(), ...extra } = {}) => told(await store.put(id, job, null, extra)),
    write: async (id, job, expectedRevision, extra) => told(await store.put(id, job, expectedRevision, extra)),
    duplicate: async (id, copyName) => told(await duplicate(database, id, copyName)),
    archive: async (id, archived) => told(await archive(database, id, archived)),
    remove: async (id) => {
      await remove(database, id);
      news.tell({ id, revision: null });
    },
    close: () => {
      news.close();
      database.close();
    },
  };
}

async function duplicate(database: IDBPDatabase<Stores>, id: string, name: string): Promise<JobHead> {
  const copyId = freshJobId();
  return change(database, async (heads, parts) => {
    const [head, keys, values, count] = await Promise.all([heads.get(id), parts.getAllKeys(partsOf(id)), parts.getAll(partsOf(id)), parts.get(COUNT_KEY)]);
    if (head === undefined) throw new JobConflict(null);
    const at = new Date().toISOString();
    const copy: JobHead = { ...head, id: copyId, name, madeAt: at, changedAt: at, archived: false, revision: (Number(count) || 0) + 1 };
    const writes = keys.map(async ([, part], i) => {
      if (part !== DRAFTS) await parts.put(part === MAIN ? renamed(values[i] as MainPart, name) : values[i], [copyId, part]);
    });
    await Promise.all([heads.put(copy), parts.put(copy.revision, COUNT_KEY), ...writes]);
    return copy;
  });
}

function renamed(main: MainPart, name: string): MainPart {
  return { ...main, job: { ...(main.job as object), name } };
}

function archive(database: IDBPDatabase<Stores>, id: string, archived: boolean): Promise<JobHead> {
  return change(database, async (heads) => {
    const head = await heads.get(id);
    if (head === undefined) throw new JobConflict(null);
    await heads.put({ ...head, archived });
    return { ...head, archived };
  });
}

function remove(database: IDBPDatabase<Stores>, id: string): Promise<void> {
  return change(database, async (heads, parts) => {
    await Promise.all([heads.delete(id), parts.delete(partsOf(id))]);
  });
}

type Writing = ReturnType<typeof writing>;

function writing(database: IDBPDatabase<Stores>) {
  const transaction = database.transaction(['jobs', 'jobParts'], 'readwrite', { durability: 'strict' });
  return { transaction, heads: transaction.objectStore('jobs'), parts: transaction.objectStore('jobParts') };
}

/** Does all of an act in one transaction, or nothing. */
function change<T>(database: IDBPDatabase<Stores>, act: (heads: Writing['heads'], parts: Writing['parts']) => Promise<T>): Promise<T> {
  const { transaction, heads, parts } = writing(database);
  return whole(transaction, () => act(heads, parts));
}
