import { computed, signal } from '@preact/signals';
import type { LogEntrySpec } from '../../../sim/index.ts';
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

/** Place in the log of the entry whose fields are open; -1 where none is. */
export const openIndex = computed(() => (state.job.value.log ?? []).findIndex(({ id }) => id === state.log.value.entry));

/** The entry whose fields are open; null where none is. */
export const openEntry = computed<LogEntrySpec | null>(() => state.job.value.log?.[openIndex.value] ?? null);
