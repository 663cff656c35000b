import { computed, signal } from '@preact/signals';
import type { SchemeSpec } from '../../../sim/index.ts';
import type { Problem } from '../problem.ts';
import { state } from '../state.ts';
import type { SchemePrefs } from './schemePrefs.ts';

/** What the sheets of the scheme show and nothing keeps. */
export const schemeStage = {
  /** Something asked for on a sheet did not work; stays until dismissed. */
  problem: signal<Problem | null>(null),
};

/** Changes some of what the reader looks at. */
export function lookAtScheme(changed: Partial<SchemePrefs>): void {
  state.scheme.value = { ...state.scheme.peek(), ...changed };
}

/** Place in the job of the scheme that the sheets are about; -1 where the job has none. */
export const schemeIndex = computed(() => {
  const schemes = state.job.value.schemes ?? [];
  const found = schemes.findIndex(({ id }) => id === state.scheme.value.scheme);
  return found < 0 ? Math.min(0, schemes.length - 1) : found;
});

/** The scheme that the sheets are about; null where the job has none. */
export const shownScheme = computed<SchemeSpec | null>(() => state.job.value.schemes?.[schemeIndex.value] ?? null);
