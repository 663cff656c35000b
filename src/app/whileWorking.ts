import type { Signal } from '@preact/signals';
import { isDropped } from '../worker/client.ts';
import { problemOf, type Problem } from './problem.ts';

/** What a sheet tells of work that was asked of a worker. */
export interface WorkTold {
  readonly working: Signal<boolean>;
  readonly problem: Signal<Problem | null>;
}

/** Does some work for a sheet and tells that it is under way; what went wrong is told under `title`, unless nobody waits for it any more. */
export async function whileWorking({ working, problem }: WorkTold, title: string, work: () => Promise<void>): Promise<void> {
  working.value = true;
  try {
    await work();
  } catch (thrown) {
    if (!isDropped(thrown)) problem.value = problemOf(title, thrown);
  } finally {
    working.value = false;
  }
}
