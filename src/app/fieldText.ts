import { closeStep, changeJob } from './document.ts';
import { keyOf, pointerOf, valueAt, withValueAt, type JobPath } from './path.ts';
import { problemOf } from './problem.ts';
import type { readNumber } from './readNumber.ts';
import { typedText, unitOfKey } from './units.ts';
import { state, type Draft } from './state.ts';
import type { Job, UnitSystem } from '../../sim/index.ts';

/** A number's field as it stands: the text in the box, its unit, and what is wrong with it. */
export interface FieldText {
  readonly id: string;
  readonly text: string;
  readonly unit: string;
  /** Null where the text is a value within its limits. */
  readonly problem: string | null;
}

/** The number field at `path`; a draft stands before the job's value. */
export function fieldText(job: Job, path: JobPath, system: UnitSystem, draft: Draft | undefined): FieldText {
  const id = pointerOf(path);
  const key = keyOf(path);
  const value = valueAt(job, path);
  const text = draft?.text ?? (typeof value === 'number' ? typedText(value, key, system) : '');
  return { id, text, unit: unitOfKey(key, system), problem: draft?.problem ?? null };
}

/** Reads a number against the schema's limits; null until the schema is here. */
let read: typeof readNumber | null = null;
/** Stands beside a text until then, so that it never passes for the job's value, also where the page is left first. */
const UNREAD = 'This is not taken over yet: it is still to be checked. If it stays so, type it once more.';
/** What waits for it, in the order asked, and the job that it is about. */
const waiting: { readonly jobId: string; readonly act: (read: typeof readNumber) => void }[] = [];

/** Fetches the schema, which no film needs: it is asked for after the first one, and by the first key if that comes sooner. */
export async function fetchSchema(): Promise<void> {
  const { readNumber } = await import('./readNumber.ts');
  // At once: whatever comes between would be done before what waits.
  read = readNumber;
  for (const { jobId, act } of waiting.splice(0)) if (jobId === state.jobId.peek()) attempt(() => act(readNumber));
}

/** Does what needs the schema: at once where it is here, else when it comes. */
function withSchema(act: (has: typeof readNumber) => void): void {
  if (read !== null) return act(read);
  waiting.push({ jobId: state.jobId.peek(), act });
  fetchSchema().catch((thrown: unknown) => (state.notice.value = problemOf('What you type cannot be checked yet, since a part of the page could not be fetched; it stays in its box', thrown)));
}

/** One that fails leaves the others their turn. */
function attempt(act: () => void): void {
  try {
    act();
  } catch (thrown) {
    state.notice.value = problemOf('What you typed could not be taken over; it stays in its box', thrown);
  }
}

/** Takes a keystroke: the text is kept as typed, and is the job's value as soon as it is one. */
export function typeNumber(path: JobPath, label: string, text: string): void {
  const id = pointerOf(path);
  if (read === null) keepDraft(id, { text, problem: UNREAD });
  withSchema((readIt) => {
    const job = state.job.peek();
    const typed = readIt(job, path, text, state.units.peek());
    keepDraft(id, { text, problem: 'problem' in typed ? typed.problem : null });
    if ('value' in typed) changeJob(label, withValueAt(job, path, typed.value), id);
  });
}

/** The reader has left the field: a good text is shown as its value, a bad one stays with its message. */
export function leaveField(id: string): void {
  if (waiting.length > 0) return withSchema(() => leave(id));
  leave(id);
}

function leave(id: string): void {
  closeStep();
  if (state.drafts.peek()[id]?.problem === null) dropDraft(id);
}

export function keepDraft(id: string, draft: Draft): void {
  state.drafts.value = { ...state.drafts.peek(), [id]: draft };
}

export function dropDraft(id: string): void {
  const { [id]: dropped, ...rest } = state.drafts.peek();
  if (dropped !== undefined) state.drafts.value = rest;
}
