import { batch } from '@preact/signals';
import { replaceJob } from '../document.ts';
import { problemOf } from '../problem.ts';
import { draftsFrom } from '../restore.ts';
import { readJob } from '../readJob.ts';
import { state } from '../state.ts';
import { keeping } from './keeping.ts';

/**
 * Takes a kept job in hand; the one before it is kept first, and Undo goes back to it. What does not work is told, and changes
 * nothing. @returns whether the job is in hand.
 */
export async function openKeptJob(id: string): Promise<boolean> {
  try {
    const { now } = keeping;
    if (now === null) throw new Error('this browser keeps nothing; see the message above');
    if (state.jobId.peek() === id) return true;
    await now.keeper.flush();
    const kept = await now.store.read(id);
    if (kept === null) throw new Error('it was removed, perhaps in another window');
    const { job } = readJob(kept.job);
    const drafts = draftsFrom(kept.drafts);
    now.keeper.hold({ id, job, drafts }, kept.head.revision);
    batch(() => {
      replaceJob(`Open ${job.name}`, job, id);
      state.drafts.value = drafts;
      state.notice.value = null;
    });
    now.keeper.ask();
    return true;
  } catch (thrown) {
    state.notice.value = problemOf('The job was not opened; nothing was changed', thrown);
    return false;
  }
}

/** Writes what is unsaved of the job in hand now, e.g. before all jobs are saved as one file. */
export async function keepNow(): Promise<void> {
  await keeping.now?.keeper.flush();
}
