import { withChange, type LogEntrySpec } from '../../../sim/index.ts';
import { closeStep } from '../document.ts';
import { doneNow } from './doneNow.ts';
import { logStage, openEntry, openIndex } from './log.ts';
import { RecordChanges } from './recordChanges.ts';

const changes = new RecordChanges<LogEntrySpec>({ shown: openEntry, path: () => ['log', openIndex.peek()], problem: logStage.problem });

/**
 * Sets one value of the open entry, undoable, with what was there before in its history. A signed entry is left as it is, and the
 * stage tells why.
 * @param pointer JSON pointer within the entry; undefined takes the key or the item out.
 * @param key keystrokes of one key that follow each other are one change and one step; null for one of its own.
 * @returns whether it was changed.
 */
export function changeEntry(label: string, pointer: string, value: unknown, key: string | null = null): boolean {
  return changes.change(label, key, (entry, since) => withChange(entry, pointer, value, doneNow(entry), since)) !== null;
}

/** What is typed from now on is a change of its own. */
export function endEntryTyping(): void {
  changes.endTyping();
  closeStep();
}

/** Puts another entry in the place of the open one. @returns it; null where that was refused, which the stage tells. */
export function replaceEntry(label: string, next: (entry: LogEntrySpec) => LogEntrySpec): LogEntrySpec | null {
  return changes.change(label, null, next);
}
