import { batch } from '@preact/signals';
import { takenBack, type Job, type Recorded } from '../../../sim/index.ts';
import type { KeptJob } from '../../storage/jobStore.ts';
import { changeJob, undo } from '../document.ts';
import { endUndo } from '../log/endUndo.ts';
import { pathOf, valueAt } from '../path.ts';
import { problemOf } from '../problem.ts';
import { readJob } from '../readJob.ts';
import { state } from '../state.ts';
import { keeping } from './keeping.ts';

/** Fetched when another window has written, removed or opened the job in hand. */

/** Label of the step that Undo takes back. */
const TAKEN = 'Taken over from the other window';

/** The job in hand was removed elsewhere, with nothing unsaved here: it is the reader's to say whether it comes back. */
export function tellRemoved(): void {
  const id = state.jobId.peek();
  state.notice.value = {
    title: 'This job was removed in another window',
    text: 'You still have it here, and it is not kept any more. Your next change keeps it as a new job; so does the button.',
    place: {},
    act: { words: 'Keep it', run: () => keepAgain(id) },
  };
}

function keepAgain(id: string): void {
  state.notice.value = null;
  // Another object of the same content counts as changed, so that it is written.
  if (state.jobId.peek() === id) state.job.value = { ...state.job.peek() };
}

export function tellOpenElsewhere(): void {
  state.notice.value = {
    title: 'This job is open in another window too',
    text: 'What you change in one shows in the other. Where both change it at the same time nothing is overwritten: the later one is kept as a job of its own.',
    place: {},
  };
}

/** Takes over what another window wrote, as one step that can be undone however often it wrote, unless a signature came or went with it. Half-typed text stays where its field does. */
export function takeOver({ head, job: kept }: KeptJob, isClean: () => boolean): void {
  const { now } = keeping;
  if (now === null || !isClean()) return;
  try {
    const { job } = readJob(kept);
    const moved = Object.entries(state.drafts.peek()).filter(([pointer]) => !Object.is(valueAt(state.job.peek(), pathOf(pointer)), valueAt(job, pathOf(pointer))));
    // Text that is a value already, while its field is still in hand, is in the job: only what is none is lost with its field.
    if (moved.some(([, { problem }]) => problem !== null)) return keepBoth();
    const drafts = Object.fromEntries(Object.entries(state.drafts.peek()).filter(([pointer]) => !moved.some(([other]) => other === pointer)));
    const bringsSignature = signatures(state.job.peek()) !== signatures(job);
    now.keeper.hold({ id: head.id, job, drafts }, head.revision);
    batch(() => {
      state.drafts.value = drafts;
      changeJob(TAKEN, job, 'other-window');
      if (bringsSignature) endUndo();
    });
    state.notice.value = {
      title: 'Another window changed this job, and this window has taken it over',
      text: bringsSignature ? 'Something was signed or reopened there. Undo would leave no trace of that, so nothing before it can be undone here.' : 'Undo brings back what you had here.',
      place: {},
      ...(bringsSignature ? {} : { act: { words: 'Undo', run: undoTaking } }),
    };
  } catch (thrown) {
    state.notice.value = problemOf('Another window changed this job, and this window cannot read it; what you change here is kept as a job of its own', thrown);
  }
}

/** Which entries and surveys are signed, and each signature that was taken back: these have to be the same for Undo to lose none. */
function signatures({ log = [], surveys = [] }: Job): string {
  return JSON.stringify([log, surveys].map((records: readonly (Recorded & { readonly id: string })[]) =>
    records.map(({ id, signed, history }) => [id, signed?.sha256 ?? '', ...history.filter((change) => takenBack(change) !== null).map(({ before }) => before)]).filter(([, ...found]) => found.join('') !== '').sort()));
}

function undoTaking(): void {
  state.notice.value = null;
  if (state.past.peek().at(-1)?.label === TAKEN) undo();
}

/** Half-typed text stands in a field that the other window changed: both are wanted. */
function keepBoth(): void {
  state.job.value = { ...state.job.peek() };
}
