import type { ReadonlySignal, Signal } from '@preact/signals';
import { changeJob } from '../document.ts';
import { withValueAt, type JobPath } from '../path.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { typingOn, type Typing } from './typing.ts';

/** A record that is shown to be changed: an entry of the log, a survey. */
export interface ShownRecord<T> {
  readonly shown: ReadonlySignal<T | null>;
  /** Where it stands in the job. */
  readonly path: () => JobPath;
  /** Tells why something was refused. */
  readonly problem: Signal<Problem | null>;
}

/** Changes the record shown, as undoable steps. */
export class RecordChanges<T extends object> {
  private typing: Typing<T> | null = null;

  constructor(private readonly record: ShownRecord<T>) {}

  /**
   * Puts another record in the place of the one shown.
   * @param key keystrokes of one key that follow each other are one step; null for a step of its own.
   * @param next is given the record, and as it was before this typing began.
   * @returns the new one; null where that was refused, which is told.
   */
  change(label: string, key: string | null, next: (record: T, since: T) => T): T | null {
    const record = this.record.shown.peek();
    if (record === null) return null;
    const on = key === null ? null : typingOn(this.typing, key, record);
    try {
      const changed = next(record, on?.since ?? record);
      this.typing = on === null ? null : { ...on, last: changed };
      changeJob(label, withValueAt(state.job.peek(), this.record.path(), changed), key);
      this.record.problem.value = null;
      return changed;
    } catch (thrown) {
      this.record.problem.value = problemOf('Nothing was changed', thrown);
      return null;
    }
  }

  /** What is typed from now on is a change of its own. */
  endTyping(): void {
    this.typing = null;
  }
}
