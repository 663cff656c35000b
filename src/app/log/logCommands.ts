import { entryFromPlan, MOST_ENTRIES, reopened, sha256Of, signed, type AboutPlan, type LogEntrySpec } from '../../../sim/index.ts';
import { changeJob } from '../document.ts';
import { nowMoment } from '../nowMoment.ts';
import { problemOf } from '../problem.ts';
import { state } from '../state.ts';
import { changeEntry, replaceEntry } from './entryChange.ts';
import { unfinishedFields } from './entryFields.ts';
import { refusedAsOnceSigned } from './keptSignature.ts';
import { logStage, lookAtLog, openEntry, openIndex } from './log.ts';
import { refusedAsUnfinished } from './unfinished.ts';

/** Begins an entry now, from a step of the scheme, from a coat, or blank, and opens it. The plan fills in what it can. */
export function beginEntry(label: string, of: AboutPlan): void {
  const job = state.job.peek();
  const log = job.log ?? [];
  if (log.length >= MOST_ENTRIES) {
    logStage.problem.value = { title: 'Nothing was begun', text: `A log holds ${MOST_ENTRIES} entries and this one has as many; begin another job.`, place: {} };
    return;
  }
  try {
    const entry = entryFromPlan(job, of, { at: nowMoment(), who: state.log.peek().who.trim() });
    changeJob(label, { ...job, log: [...log, entry] });
    lookAtLog({ entry: entry.id });
    logStage.problem.value = null;
  } catch (thrown) {
    logStage.problem.value = problemOf('Nothing was begun', thrown);
  }
}

/** Opens an entry's fields, or closes them where they are open. */
export function chooseEntry(id: string): void {
  lookAtLog({ entry: state.log.peek().entry === id ? '' : id });
}

/** Takes the open entry out of the log; undo brings it back. One that was ever signed stays, with its signature. */
export function removeEntry(): void {
  const [job, entry, gone] = [state.job.peek(), openEntry.peek(), openIndex.peek()];
  if (entry === null || refusedAsOnceSigned(entry, logStage.problem)) return;
  dropLogDrafts();
  changeJob('Remove an entry', { ...job, log: (job.log ?? []).filter((_, k) => k !== gone) });
  lookAtLog({ entry: '' });
}

/** Puts this minute, by the device's clock, as the start or the end of the open entry. */
export function noteNow(which: 'started' | 'ended'): void {
  changeEntry(which === 'started' ? 'Begin now' : 'End now', `/${which}`, nowMoment());
}

/** Signs the open entry, with the digest of its recording where it names one. What is half typed has to be finished or emptied first. @returns whether it was signed. */
export function signEntry(by: Pick<NonNullable<LogEntrySpec['signed']>, 'who' | 'certificate' | 'words'>): boolean {
  if (refusedAsUnfinished(unfinishedFields(), logStage.problem)) return false;
  const text = recordingText(openEntry.peek());
  const done = replaceEntry('Sign an entry', (entry) => signed(entry, { at: nowMoment(), ...by, ...(text === null ? {} : { recordingSha256: sha256Of(text) }) }));
  return done !== null;
}

/** Opens a signed entry for changes again. @returns whether that worked. */
export function reopenEntry(who: string, why: string): boolean {
  return replaceEntry('Reopen an entry', (entry) => reopened(entry, { at: nowMoment(), who }, why)) !== null;
}

/** Text of the recording that an entry names; null where it names none, or the job has it no more. */
export function recordingText(entry: LogEntrySpec | null): string | null {
  return state.job.value.recordings.find(({ id }) => id === entry?.recording)?.text ?? null;
}

/** Places move when an entry goes, so that a draft would stand in another one's field. */
function dropLogDrafts(): void {
  state.drafts.value = Object.fromEntries(Object.entries(state.drafts.peek()).filter(([pointer]) => !pointer.startsWith('/log/')));
}
