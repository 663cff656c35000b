import { counted, parseJob, type Job } from '../../../sim/index.ts';
import { JobConflict, type JobHead, type JobShelf } from '../../storage/jobs.ts';
import { demoWithSession } from '../demo.ts';
import { changeJob, closeStep, replaceJob } from '../document.ts';
import { saveJobFile } from '../files.ts';
import { keepNow, openKeptJob } from '../keeping/openKeptJob.ts';
import { state } from '../state.ts';
import { jobs, refresh, withShelf, type RemovedJob } from './jobs.ts';
import { blankJob, namedAfter, planAgain } from './newJobs.ts';

/** Where a new job comes from. */
export type NewFrom = 'demo' | 'blank' | 'chosen';

/** Takes a job in hand; the one before it is kept first. @returns whether it is in hand. */
export async function openJob({ id, name }: JobHead): Promise<boolean> {
  const isOpen = await openKeptJob(id);
  jobs.told.value = isOpen ? `“${name}” is open.` : '';
  return isOpen;
}

/** A new job, taken in hand and kept; the one before it is kept first. */
export async function newJob(from: NewFrom, chosen: JobHead | null): Promise<boolean> {
  return withShelf('No new job was made', async (shelf) => {
    await keepNow();
    const job = from === 'demo' ? await demoWithSession() : from === 'blank' ? blankJob() : planAgain(await wholeJob(shelf, chosen));
    replaceJob(`New job: ${job.name}`, job);
    await keepNow();
    jobs.search.value = '';
    jobs.chosen.value = state.jobId.peek();
    await refresh(shelf);
    jobs.told.value = `“${job.name}” is new, and open.`;
  });
}

export async function duplicateJob({ id, name }: JobHead): Promise<void> {
  await withShelf(`“${name}” was not duplicated`, async (shelf) => {
    await keepNow();
    const copy = await shelf.duplicate(id, namedAfter(name, 'copy'));
    await refresh(shelf);
    jobs.chosen.value = copy.id;
    jobs.told.value = `“${copy.name}” is a whole copy, with log, surveys and recordings.`;
  });
}

/** Gives a job another name; the one in hand by a step that can be undone. */
export async function renameJob(head: JobHead, name: string): Promise<void> {
  await withShelf(`“${head.name}” was not renamed`, async (shelf) => {
    if (head.id === state.jobId.peek()) {
      changeJob('Name of the job', { ...state.job.peek(), name });
      closeStep();
      await keepNow();
    } else await shelf.write(head.id, { ...(await wholeJob(shelf, head)), name }, head.revision);
    await refresh(shelf);
    jobs.told.value = `Renamed to “${name}”.`;
  });
}

/** Puts a job away, or brings it back. */
export async function archiveJob({ id, name, archived }: JobHead): Promise<void> {
  await withShelf(`“${name}” was not ${archived ? 'brought back' : 'put away'}`, async (shelf) => {
    await keepNow();
    await shelf.archive(id, !archived);
    await refresh(shelf);
    jobs.chosen.value = id;
    jobs.told.value = archived ? `“${name}” is back in the list.` : `“${name}” is put away, under Archived. It still takes its room.`;
  });
}

/** What goes with a job, in words, so that nobody removes a record by a slip. */
export async function whatGoes(head: JobHead): Promise<string> {
  let words = '';
  await withShelf(`“${head.name}” could not be looked into`, async (shelf) => {
    const kept = await shelf.read(head.id);
    const { log = [], surveys = [], recordings = [] } = (kept?.job ?? {}) as Partial<Job>;
    const photos = log.reduce((sum, entry) => sum + (entry.photos?.length ?? 0), 0);
    const parts = [counted(head.coats, 'coat'), ...[[log.length, 'log entry', 'log entries'], [photos, 'photograph', 'photographs'], [surveys.length, 'survey', 'surveys'], [recordings.length, 'recording', 'recordings']].flatMap(([count, one, many]) => (Number(count) > 0 ? [counted(Number(count), String(one), String(many))] : []))];
    words = `It goes with all that is in it: ${parts.join(', ')}.`;
  });
  return words;
}

/** Removes a job; `putBackJob` undoes it until the sheet is closed. */
export async function removeJob(head: JobHead): Promise<void> {
  await withShelf(`“${head.name}” was not removed`, async (shelf) => {
    const kept = await shelf.read(head.id);
    if (kept === null) throw new Error('it was removed already, perhaps in another window');
    await shelf.remove(head.id);
    jobs.removed.value = [...jobs.removed.peek(), kept];
    await refresh(shelf);
    jobs.told.value = `“${head.name}” is removed.`;
  });
}

/** Puts back the job that was removed or replaced last, under its own id; beside what is there where that was changed since. */
export async function putBackJob(): Promise<void> {
  const last = jobs.removed.peek().at(-1);
  if (last === undefined) return;
  await withShelf(`“${last.head.name}” was not put back`, async (shelf) => {
    await keepNow();
    const { head, told } = await putBack(shelf, last);
    jobs.removed.value = jobs.removed.peek().filter((each) => each !== last);
    await refresh(shelf);
    jobs.chosen.value = head.id;
    jobs.told.value = told;
  });
}

async function putBack(shelf: JobShelf, { head: { id, madeAt, archived, name }, job, drafts = {}, replacement }: RemovedJob): Promise<{ readonly head: JobHead; readonly told: string }> {
  const create = (): Promise<JobHead> => shelf.create(job as Job, { id, madeAt, archived, drafts });
  const told = `“${name}” is back.`;
  try {
    return { head: await (replacement === undefined ? create() : shelf.write(id, job as Job, replacement, { drafts })), told };
  } catch (why) {
    if (!(why instanceof JobConflict)) throw why;
    if (why.there === null) return { head: await create(), told };
    // Work that came later is never written over.
    const head = await shelf.create({ ...(job as Job), name: namedAfter(name, 'as it was') }, { madeAt, archived, drafts });
    return { head, told: `“${why.there.name}” was changed meanwhile, perhaps in another window, so it stays as it is. What was there before is kept beside it as “${head.name}”.` };
  }
}

/** Saves a job as a file that the reader keeps, without taking it in hand. */
export async function saveKeptJob(head: JobHead): Promise<void> {
  await withShelf(`“${head.name}” was not saved as a file`, async (shelf) => {
    await keepNow();
    saveJobFile(await wholeJob(shelf, head));
  });
}

async function wholeJob(shelf: JobShelf, head: JobHead | null): Promise<Job> {
  const kept = head === null ? null : await shelf.read(head.id);
  if (kept === null) throw new Error('there is no such job any more; it was removed, perhaps in another window');
  return parseJob(kept.job).job;
}
