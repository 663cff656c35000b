import type { JobStore, KeptJob } from '../../storage/jobStore.ts';
import { problemOf } from '../problem.ts';
import { state } from '../state.ts';

/**
 * The job that this window had in hand, else the one that any window had, else the one written last. A job whose parts do not come
 * out of storage is told and passed over, so that it stops neither the others nor the keeping; nothing of it is touched.
 * @param ids of the first two. @throws what storage says where not even the list can be read.
 */
export async function lastWork(store: JobStore, ids: readonly unknown[]): Promise<KeptJob | null> {
  const heads = [...(await store.heads())].sort((a, b) => b.revision - a.revision);
  const inTurn = [...ids.map((id) => heads.find((head) => head.id === id)), ...heads.filter(({ archived }) => !archived)];
  for (const head of new Set(inTurn)) {
    if (head === undefined) continue;
    try {
      const kept = await store.read(head.id);
      if (kept !== null) return kept;
    } catch (why) {
      state.notice.value ??= problemOf(`"${head.name}" could not be read; nothing of it is deleted, and another job is shown`, why);
    }
  }
  return null;
}
