import type { IDBPDatabase } from 'idb';
import type { Job } from '../../sim/index.ts';
import { packJob, unpackJob, type JobParts, type MainPart } from './jobParts.ts';
import { whole, type JobHead, type Stores } from './stores.ts';

/** A job is not as the writer left it: `there` is what is kept now, null where it was removed. Nothing was written. */
export class JobConflict extends Error {
  constructor(readonly there: JobHead | null) {
    super(there === null ? 'the job was removed, perhaps in another window' : `the job "${there.name}" was changed meanwhile, perhaps in another window`);
  }
}

/** A job as it is kept. `job` is still to be checked by `parseJob`. */
export interface KeptJob {
  readonly head: JobHead;
  readonly job: unknown;
  /** Half-typed text by its field. */
  readonly drafts: unknown;
}

/** What is put beside a job. */
export interface PutExtra {
  readonly drafts?: unknown;
  /** Of a new job: when it was made, and whether it is archived. */
  readonly madeAt?: string;
  readonly archived?: boolean;
}

export interface JobStore {
  read(id: string): Promise<KeptJob | null>;
  head(id: string): Promise<JobHead | null>;
  heads(): Promise<readonly JobHead[]>;
  /**
   * Writes a job whole or not at all, its long parts only where they are others than those this store wrote or read. `expected` is
   * the revision that is thought to be there, null for a new job. Rejects with JobConflict where it is not.
   */
  put(id: string, job: Job, expected: number | null, extra?: PutExtra): Promise<JobHead>;
  /** Writes half-typed text only; no new revision. Rejects with JobConflict where the job was removed. */
  putDrafts(id: string, drafts: unknown): Promise<void>;
}

/** Names of parts that are no long part of the job; theirs have a colon. */
export const MAIN = 'main';
export const DRAFTS = 'drafts';
/** Where the count of writes is kept among the parts. */
export const COUNT_KEY: [string, string] = ['', 'revision'];

/** Parts as they are known to be kept, with their length, at one revision. */
interface Known {
  readonly revision: number;
  readonly parts: ReadonlyMap<string, { readonly value: unknown; readonly letters: number }>;
}

/** Every part of one job. */
export function partsOf(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id], [id, []]);
}

/** The jobs of an open database, one write in one transaction. */
export function jobStore(database: IDBPDatabase<Stores>, now = () => new Date().toISOString()): JobStore {
  const known = new Map<string, Known>();
  return {
    head: async (id) => (await database.get('jobs', id)) ?? null,
    heads: () => database.getAll('jobs'),
    read: async (id) => {
      const transaction = database.transaction(['jobs', 'jobParts']);
      const store = transaction.objectStore('jobParts');
      const [head, keys, values] = await Promise.all([transaction.objectStore('jobs').get(id), store.getAllKeys(partsOf(id)), store.getAll(partsOf(id))]);
      const parts = new Map(keys.map(([, name], i) => [name, values[i]]));
      const main = parts.get(MAIN) as MainPart | undefined;
      if (head === undefined || main === undefined) return null;
      known.set(id, { revision: head.revision, parts: measured(new Map(main.cuts.map(([name]) => [name, parts.get(name)])), undefined) });
      return { head, job: unpackJob(main, parts), drafts: parts.get(DRAFTS) };
    },
    put: async (id, job, expected, { drafts, madeAt = now(), archived = false } = {}) => {
      const packed = packJob(job);
      const transaction = database.transaction(['jobs', 'jobParts'], 'readwrite', { durability: 'strict' });
      const heads = transaction.objectStore('jobs');
      const store = transaction.objectStore('jobParts');
      return whole(transaction, async () => {
        const [there, count] = await Promise.all([heads.get(id), store.get(COUNT_KEY)]);
        if ((there?.revision ?? null) !== expected) throw new JobConflict(there ?? null);
        const before = known.get(id);
        const trusted = before !== undefined && before.revision === expected ? before.parts : undefined;
        const names = trusted === undefined ? (await store.getAllKeys(partsOf(id))).map(([, name]) => name) : [...trusted.keys()];
        const parts = measured(packed.parts, trusted);
        const revision = (Number(count) || 0) + 1;
        // Async, so that a value that is refused at once is one more rejection, beside those of the others.
        const putPart = async (value: unknown, name: string): Promise<unknown> => store.put(value, [id, name]);
        const head: JobHead = { madeAt, archived, ...there, ...summary(id, job, packed, parts), changedAt: now(), revision };
        await Promise.all([
          heads.put(head),
          store.put(revision, COUNT_KEY),
          putPart(packed.main, MAIN),
          ...(drafts === undefined ? [] : [putPart(drafts, DRAFTS)]),
          ...[...parts].filter(([name, { value }]) => trusted?.get(name)?.value !== value).map(([name, { value }]) => putPart(value, name)),
          ...names.filter((name) => name.includes(':') && !parts.has(name)).map((name) => store.delete([id, name])),
          transaction.done,
        ]);
        known.set(id, { revision, parts });
        return head;
      });
    },
    putDrafts: async (id, drafts) => {
      const transaction = database.transaction(['jobs', 'jobParts'], 'readwrite', { durability: 'strict' });
      if ((await transaction.objectStore('jobs').getKey(id)) === undefined) throw new JobConflict(null);
      await Promise.all([transaction.objectStore('jobParts').put(drafts, [id, DRAFTS]), transaction.done]);
    },
  };
}

/** Lengths of parts; of those that stayed the same they are known. */
function measured(parts: ReadonlyMap<string, unknown>, before: Known['parts'] | undefined): Known['parts'] {
  return new Map(
    [...parts].map(([name, value]) => {
      const same = before?.get(name);
      if (same?.value === value && same) return [name, { value, letters: same.letters }];
      return [name, { value, letters: typeof value === 'string' ? value.length : (JSON.stringify(value) ?? '').length }];
    }),
  );
}

function summary(id: string, { name, part, coats }: Job, { main }: JobParts, parts: Known['parts']): Pick<JobHead, 'id' | 'name' | 'part' | 'letters' | 'coats'> {
  const long = [...parts.values()].reduce((sum, { letters }) => sum + letters, 0);
  return { id, name, part: part.name, letters: JSON.stringify(main.job).length + long, coats: coats.length };
}
