import type { Job } from '../../../sim/index.ts';
import { packJob, unpackJob, type MainPart } from '../../storage/jobParts.ts';
import type { JobStore } from '../../storage/jobStore.ts';
import type { LastWord } from '../../storage/lastWord.ts';
import { readJob } from '../readJob.ts';
import { putAside } from './keepAside.ts';

/**
 * Keeps what this window had no time to keep when it last went. What another window has written since is not overwritten: then it
 * becomes a job of its own. @returns id of the job that has it. @throws what storage says, or where a long part is not there any more.
 */
export async function keepLastWord(store: JobStore, word: LastWord): Promise<string> {
  const { id, drafts } = word;
  const kept = await store.read(id);
  const there = kept === null ? null : packJob(readJob(kept.job).job);
  if (isSame(there?.main, word.main)) {
    await store.putDrafts(id, drafts);
    return id;
  }
  const parts = new Map([...(there?.parts ?? []), ...word.parts]);
  const gone = word.main.cuts.find(([name]) => !parts.has(name));
  if (gone !== undefined) throw new Error(`its part ${gone[0]} was removed, perhaps in another window`);
  const isOurs = kept === null || kept.head.revision === word.revision || isSame(there?.main, word.underWay);
  const job = unpackJob(word.main, parts) as Job;
  if (!isOurs) return (await putAside(store, { id, job, drafts }, kept.head)).aside.id;
  await store.put(id, job, kept?.head.revision ?? null, { drafts });
  return id;
}

/** Whether two are kept alike; what is undefined is nothing. */
function isSame(one: MainPart | undefined, other: MainPart | null): boolean {
  return one !== undefined && other !== null && JSON.stringify(one) === JSON.stringify(other);
}
