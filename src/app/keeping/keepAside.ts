import { batch } from '@preact/signals';
import type { Job } from '../../../sim/index.ts';
import { freshJobId } from '../../storage/freshJobId.ts';
import type { InHand } from '../../storage/inHand.ts';
import type { JobStore } from '../../storage/jobStore.ts';
import type { JobHead } from '../../storage/stores.ts';
import { state } from '../state.ts';
import { keeping } from './keeping.ts';
import { openKeptJob } from './openKeptJob.ts';

const ASIDE = ', from the other window';
/** The schema's limit. */
const LONGEST_NAME = 200;

/** Keeps what came too late to be written to its job as a job of its own, with which this window goes on; tells where both are. */
export async function keepAside(late: InHand, there: JobHead | null): Promise<void> {
  const { now } = keeping;
  if (now === null) return;
  const { aside, revision } = await putAside(now.store, late, there);
  now.keeper.hold(aside, revision);
  if (state.jobId.peek() === late.id) goOnWith(late, aside);
}

/** Writes `late` as a job of its own; tells where both are. @returns it as it is now kept. */
export async function putAside(store: JobStore, late: InHand, there: JobHead | null): Promise<{ readonly aside: InHand; readonly revision: number }> {
  const job: Job = { ...late.job, name: asideName(late.job.name, there) };
  const aside: InHand = { ...late, id: freshJobId(), job };
  const { revision } = await store.put(aside.id, job, null, { drafts: late.drafts });
  tell(job.name, late.id, there);
  return { aside, revision };
}

function asideName(name: string, there: JobHead | null): string {
  return there === null || name.endsWith(ASIDE) ? name : name.slice(0, LONGEST_NAME - ASIDE.length) + ASIDE;
}

/** It has another name, also in the steps that Undo goes back, and in what was typed meanwhile. */
function goOnWith(late: InHand, aside: InHand): void {
  const renamed = (job: Job): Job => (job === late.job ? aside.job : job.name === late.job.name ? { ...job, name: aside.job.name } : job);
  batch(() => {
    for (const steps of [state.past, state.future]) steps.value = steps.peek().map((step) => ({ ...step, job: renamed(step.job) }));
    state.jobId.value = aside.id;
    state.job.value = renamed(state.job.peek());
  });
}

function tell(name: string, id: string, there: JobHead | null): void {
  state.notice.value =
    there === null
      ? { title: `"${name}" was removed in another window; it is kept again, as you have it here`, text: 'It is a new job now. Remove it on the sheet Jobs if you do not want it.', place: {} }
      : {
          title: `"${there.name}" was changed in another window at the same time; nothing was overwritten`,
          text: `What you have here is kept as a job of its own, "${name}". What the other window wrote is still in "${there.name}".`,
          place: {},
          act: { words: 'Open the other window’s', run: () => void openKeptJob(id) },
        };
}
