import type { DayTask } from './dayTask.ts';
import { fitsHours, nextOpening, onClock, START_STEP_min, type WorkingHours } from './workingHours.ts';

/** Whether a task may begin: the reason in words where it may not. */
export type MayBegin = (task: DayTask, minute: number) => true | string;

/** What fixes a start beside the tasks that stand already. */
export interface StartRules {
  readonly working: WorkingHours;
  /** The air's word on wet work. Asked of tasks that lay wet dope only. */
  readonly mayBegin: MayBegin;
}

/** Why a task did not begin at a time. */
export interface Hold {
  readonly why: 'asked' | 'hours' | 'crew' | 'air';
  /** First time that it was held by this. */
  readonly from: number;
  /** What the air's word was; empty for the others. */
  readonly words: string;
}

/**
 * The first time, from `from` on and not after `horizon`, at which a task may begin and be ended: in working hours, with the crew
 * free and, for wet work, in air that allows it. @returns null where there is none, with what held it.
 * @param busy when the crew is at work already, in order of time, without overlap.
 */
export function firstStart(task: DayTask, from: number, horizon: number, busy: readonly (readonly [number, number])[], rules: StartRules): { readonly start: number | null; readonly holds: readonly Hold[] } {
  const holds: Hold[] = [];
  const hold = (why: Hold['why'], at: number, words = ''): void => {
    if (!holds.some((known) => known.why === why && known.words === words)) holds.push({ why, from: at, words });
  };
  let at = onClock(from);
  while (at <= horizon) {
    if (!fitsHours(rules.working, at, task.work_min)) {
      hold('hours', at);
      at = onClock(nextOpening(rules.working, at + 1));
      continue;
    }
    const taken = busyUntil(busy, at, at + task.work_min);
    if (taken !== null) {
      hold('crew', at);
      at = onClock(Math.max(taken, at + 1));
      continue;
    }
    const word = task.wet !== null ? rules.mayBegin(task, at) : true;
    if (word === true) return { start: at, holds };
    hold('air', at, word);
    at += START_STEP_min;
  }
  return { start: null, holds };
}

/** When the crew is free again that is at work at some time of a span; null where it is free throughout. */
function busyUntil(busy: readonly (readonly [number, number])[], from: number, to: number): number | null {
  // The first work that ends after `from`, by bisection.
  let [low, high] = [0, busy.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((busy[middle] as readonly [number, number])[1] > from) high = middle;
    else low = middle + 1;
  }
  const next = busy[low];
  return next !== undefined && next[0] < Math.max(to, from + 1) ? next[1] : null;
}
