import type { Cut, MainPart } from './jobParts.ts';
import { COUNT_KEY, MAIN } from './jobStore.ts';
import type { JobHead, Upgrading } from './stores.ts';

/** Id of the one job that versions 1 and 2 of the database kept. */
const FIRST_ID = 'first';
const RECORDING_KEY = 'recording:';

interface OldJob {
  readonly name?: unknown;
  readonly part?: { readonly name?: unknown };
  readonly coats?: unknown;
  readonly recordings?: unknown;
}

/**
 * Makes of the one job that older versions kept the first of many, within the upgrade's own transaction. It is moved as it is, not
 * read: a job that this build cannot read is told when it is opened, not lost.
 */
export async function moveOldJob(transaction: Upgrading): Promise<void> {
  const [kept, heads, parts] = [transaction.objectStore('kept'), transaction.objectStore('jobs'), transaction.objectStore('jobParts')];
  const job = (await kept.get('job')) as OldJob | undefined;
  if (typeof job !== 'object' || job === null) return;
  const keys = (await kept.getAllKeys()).filter((key) => key.startsWith(RECORDING_KEY));
  const drafts = await kept.get('drafts');
  let letters = JSON.stringify(job).length;
  for (const key of keys) {
    const text = await kept.get(key);
    letters += String(text).length;
    await Promise.all([parts.put(text, [FIRST_ID, key]), kept.delete(key)]);
  }
  const main: MainPart = { job, cuts: recordingCuts(job) };
  const at = new Date().toISOString();
  const head: JobHead = {
    id: FIRST_ID,
    name: typeof job.name === 'string' ? job.name : '',
    part: typeof job.part?.name === 'string' ? job.part.name : '',
    madeAt: at,
    changedAt: at,
    archived: false,
    revision: 1,
    letters,
    coats: Array.isArray(job.coats) ? job.coats.length : 0,
  };
  await Promise.all([
    heads.put(head),
    parts.put(main, [FIRST_ID, MAIN]),
    parts.put(drafts, [FIRST_ID, 'drafts']),
    parts.put(1, COUNT_KEY),
    kept.put(FIRST_ID, 'jobId'),
    kept.delete('job'),
    kept.delete('drafts'),
  ]);
}

function recordingCuts({ recordings }: OldJob): readonly Cut[] {
  if (!Array.isArray(recordings)) return [];
  return (recordings as readonly { readonly id?: unknown }[]).map((each, i) => [RECORDING_KEY + String(each?.id), ['recordings', i, 'text']]);
}
