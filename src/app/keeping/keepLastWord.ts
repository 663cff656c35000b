import { canonicalForm, type Job } from '../../../sim/index.ts';
import { packJob, unpackJob, type JobParts } from '../../storage/jobParts.ts';
import type { JobStore } from '../../storage/jobStore.ts';
import type { LastWord, ShortJob } from '../../storage/lastWord.ts';
import { readJob } from '../readJob.ts';
import { putAside } from './keepAside.ts';

/** Where a last word is kept now. */
export interface KeptWord {
  readonly id: string;
  /** Null where it was kept already. */
  readonly revision: number | null;
}

/**
 * Keeps what this window had no time to keep when it last went. What another window has written or removed since stays so: then it
 * becomes a job of its own, which is told. @throws what storage says, or where a long part is not there any more.
 */
export async function keepLastWord(store: JobStore, word: LastWord): Promise<KeptWord> {
  const { id, drafts } = word;
  const kept = await store.read(id);
  const there = kept === null ? null : packJob(readJob(kept.job).job);
  if (isAlike(there, word)) {
    await store.putDrafts(id, drafts);
    return { id, revision: null };
  }
  const isOurs = kept === null ? word.revision === null : kept.head.revision === word.revision || isAlike(there, word.underWay);
  const parts = new Map([...(there?.parts ?? []), ...word.parts]);
  const gone = word.main.cuts.find(([name]) => !parts.has(name));
  if (gone !== undefined) throw new Error(`its part ${gone[0]} was removed, perhaps in another window`);
  const job = unpackJob(word.main, parts) as Job;
  if (isOurs) return store.put(id, job, kept?.head.revision ?? null, { drafts });
  const { aside, revision } = await putAside(store, { id, job, drafts }, kept?.head ?? null);
  return { id: aside.id, revision };
}

/** Whether what is kept is that job, in whatever order its keys are. */
function isAlike(there: JobParts | null, other: ShortJob | null): boolean {
  if (there === null || other === null) return false;
  return isSame(there.main, other.main) && other.parts.every(([name, value]) => there.parts.has(name) && isSame(there.parts.get(name), value));
}

function isSame(one: unknown, other: unknown): boolean {
  return canonicalForm(one) === canonicalForm(other);
}
