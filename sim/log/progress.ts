import { secondsOfMoment } from '../base/moment.ts';
import type { LogEntrySpec, SchemeSpec, StepSpec } from '../job/schema.ts';

/** How far a planned step is, by what the log says. */
export type StepState = 'done' | 'under-way' | 'not-yet';

/** A planned step and the entries about it, in the order of the log. */
export interface StepProgress {
  readonly step: StepSpec;
  readonly state: StepState;
  readonly entries: readonly LogEntrySpec[];
}

/**
 * The steps of a scheme in order, with what the log says of each: done where an entry about it has ended or is signed, under way
 * where one was begun. An entry counts where it names the step, and a panel of the scheme or none.
 */
export function schemeProgress({ steps, panels }: Pick<SchemeSpec, 'steps' | 'panels'>, log: readonly LogEntrySpec[]): StepProgress[] {
  const here = log.filter((entry) => entry.panels.length === 0 || entry.panels.some((id) => panels.includes(id)));
  return steps.map((step) => {
    const entries = here.filter((entry) => entry.step === step.id);
    const isDone = entries.some(({ ended, signed }) => ended !== undefined || signed !== undefined);
    return { step, entries, state: isDone ? 'done' : entries.length > 0 ? 'under-way' : 'not-yet' };
  });
}

/** What was done before an entry, and the time between. */
export interface WaitBefore {
  readonly entry: LogEntrySpec;
  /** From its end, or its start where no end is noted, to the start of the other, s; below 0 where it had not ended by then. */
  readonly wait_s: number;
  /** It says when it ended. */
  readonly fromEnd: boolean;
}

/**
 * The entry begun last before this one, or at the same time and written above it, on a panel of this one's (an entry without panels is
 * about all of them), and the wait between. Null where there is none, or a time is no moment.
 */
export function waitBefore(log: readonly LogEntrySpec[], entry: LogEntrySpec): WaitBefore | null {
  const start = secondsOfMoment(entry.started);
  if (start === null) return null;
  let found: { readonly entry: LogEntrySpec; readonly start: number } | null = null;
  const place = log.findIndex(({ id }) => id === entry.id);
  for (const [i, other] of log.entries()) {
    const began = secondsOfMoment(other.started);
    const isBefore = began !== null && (began < start || (began === start && i < place));
    if (i !== place && isBefore && sharesPanel(other, entry) && (found === null || began >= found.start)) found = { entry: other, start: began };
  }
  if (found === null) return null;
  const end = found.entry.ended === undefined ? null : secondsOfMoment(found.entry.ended);
  return { entry: found.entry, wait_s: start - (end ?? found.start), fromEnd: end !== null };
}

function sharesPanel(one: LogEntrySpec, other: LogEntrySpec): boolean {
  return one.panels.length === 0 || other.panels.length === 0 || one.panels.some((id) => other.panels.includes(id));
}
