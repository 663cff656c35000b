import { signal } from '@preact/signals';
import type { Problem } from '../problem.ts';
import { state } from '../state.ts';
import type { LogPrefs } from './logPrefs.ts';

/** What the sheets of the log show and nothing keeps. */
export const logStage = {
  /** Something asked for on a sheet did not work; stays until dismissed. */
  problem: signal<Problem | null>(null),
};

/** Changes some of what the reader looks at. */
export function lookAtLog(changed: Partial<LogPrefs>): void {
  state.log.value = { ...state.log.peek(), ...changed };
}
