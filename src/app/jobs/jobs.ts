import { computed, signal } from '@preact/signals';
import { EARLIER_KEPT } from '../../../sim/index.ts';
import { openJobs, type JobHead, type JobShelf } from '../../storage/jobs.ts';
import type { KeptJob } from '../../storage/jobStore.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { findable, findJobs } from './findJobs.ts';
import type { JobsPrefs } from './jobsPrefs.ts';

/** A job that was removed, or replaced from a zip, as it was, so that it can be put back. */
export interface RemovedJob extends KeptJob {
  /** Revision of what was written in its place; none where it was removed. What is of a later one is work that putting back would lose. */
  readonly replacement?: number;
}

/** The jobs of this browser, as the sheets show them. */
export const jobs = {
  /** Newest first. */
  list: signal<readonly JobHead[]>([]),
  /** Whether the list was read, so that an empty one means no jobs. */
  isRead: signal(false),
  search: signal(''),
  /** Id of the job that is looked at. */
  chosen: signal(''),
  /** Removed since the sheet was opened, the last one last. */
  removed: signal<readonly RemovedJob[]>([]),
  /** Something asked for did not work; stays until dismissed. */
  problem: signal<Problem | null>(null),
  /** What was done last, for a screen reader too. */
  told: signal(''),
  working: signal(false),
};

const findables = computed(() => findable(jobs.list.value));

/** The jobs found, newest first, those put away apart. */
export const found = computed(() => {
  const all = findJobs(findables.value, jobs.search.value);
  return { present: all.filter(({ archived }) => !archived), archived: all.filter(({ archived }) => archived) };
});

/** The job that is looked at: the chosen one, else the one in hand, else the newest. */
export const chosenJob = computed<JobHead | null>(() => {
  const { present, archived } = found.value;
  const shown = [...present, ...archived];
  return shown.find(({ id }) => id === jobs.chosen.value) ?? shown.find(({ id }) => id === state.jobId.value) ?? shown[0] ?? null;
});

/** Changes some of what the reader looks at. */
export function lookAtJobs(changed: Partial<JobsPrefs>): void {
  state.jobs.value = { ...state.jobs.peek(), ...changed };
}

/** Remembers digests under which a job was handed over or taken in. */
export function rememberDigests(digests: ReadonlyMap<string, readonly string[]>): void {
  const before = state.jobs.peek().earlier;
  const after = [...digests].map(([id, added]) => [id, [...(before[id] ?? []).filter((each) => !added.includes(each)), ...added].slice(-EARLIER_KEPT)]);
  lookAtJobs({ earlier: { ...before, ...(Object.fromEntries(after) as JobsPrefs['earlier']) } });
}

let open: () => Promise<JobShelf> = openJobs;
let opened: Promise<JobShelf> | null = null;

/** Reads the list; called when the sheet is opened. */
export async function startJobs(opening?: () => Promise<JobShelf>): Promise<void> {
  if (opening !== undefined) open = opening;
  await withShelf('The list of jobs could not be read', refresh);
}

/** Lets go of the storage when the sheet is closed; what was removed can then no longer be put back. */
export async function stopJobs(): Promise<void> {
  const closing = opened;
  opened = null;
  jobs.isRead.value = false;
  jobs.list.value = [];
  jobs.removed.value = [];
  jobs.told.value = '';
  jobs.search.value = '';
  await closing?.then((shelf) => shelf.close(), () => undefined);
}

/** Reads the list again. */
export async function refresh(shelf: JobShelf): Promise<void> {
  jobs.list.value = await shelf.list();
  jobs.isRead.value = true;
}

/** Does one thing with the storage, opened at need; tells where that fails. @returns whether it was done. */
export async function withShelf(title: string, act: (shelf: JobShelf) => Promise<void>): Promise<boolean> {
  jobs.working.value = true;
  try {
    opened ??= open();
    await act(await opened.catch(forget));
    jobs.problem.value = null;
    return true;
  } catch (thrown) {
    jobs.problem.value = problemOf(title, thrown);
    return false;
  } finally {
    jobs.working.value = false;
  }
}

/** A storage that did not open is asked for again the next time. */
function forget(why: unknown): never {
  opened = null;
  throw why;
}
