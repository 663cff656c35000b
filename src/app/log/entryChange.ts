import { withChange, type LogEntrySpec } from '../../../sim/index.ts';
import { changeJob, closeStep } from '../document.ts';
import { withValueAt } from '../path.ts';
import { problemOf } from '../problem.ts';
import { state } from '../state.ts';
import { doneNow } from './doneNow.ts';
import { logStage, openEntry, openIndex } from './log.ts';
import { typingOn, type Typing } from './typing.ts';

let typing: Typing<LogEntrySpec> | null = null;

/**
 * Sets one value of the open entry, undoable, with what was there before in its history. A signed entry is left as it is, and the
 * stage tells why.
 * @param pointer JSON pointer within the entry; undefined takes the key or the item out.
 * @param key keystrokes of one key that follow each other are one change and one step; null for one of its own.
 * @returns whether it was changed.
 */
export function changeEntry(label: string, pointer: string, value: unknown, key: string | null = null): boolean {
  const entry = openEntry.peek();
  if (entry === null) return false;
  const on = key === null ? null : typingOn(typing, key, entry);
  const changed = replaceEntry(label, (open) => withChange(open, pointer, value, doneNow(open), on?.since), key);
  typing = changed === null || on === null ? null : { ...on, last: changed };
  return changed !== null;
}

/** What is typed from now on is a change of its own. */
export function endEntryTyping(): void {
  typing = null;
  closeStep();
}

/** Puts another entry in the place of the open one. @returns it; null where that was refused, which the stage tells. */
export function replaceEntry(label: string, next: (entry: LogEntrySpec) => LogEntrySpec, key: string | null = null): LogEntrySpec | null {
  const entry = openEntry.peek();
  if (entry === null) return null;
  try {
    const changed = next(entry);
    changeJob(label, withValueAt(state.job.peek(), ['log', openIndex.peek()], changed), key);
    logStage.problem.value = null;
    return changed;
  } catch (thrown) {
    logStage.problem.value = problemOf('Nothing was changed', thrown);
    return null;
  }
}
