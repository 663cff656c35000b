import { computed, signal } from '@preact/signals';
import type { SetUpSpec } from '../../../sim/index.ts';
import { coat, setUpIndex } from '../document.ts';
import type { Problem } from '../problem.ts';
import { state } from '../state.ts';
import type { SetUpsPrefs } from './setUpsPrefs.ts';

/** What the sheets of the gun set-ups show and nothing keeps. */
export const setUps = {
  /** Something asked for on a sheet did not work; stays until dismissed. */
  problem: signal<Problem | null>(null),
};

/** Changes some of what the reader looks at. */
export function lookAt(changed: Partial<SetUpsPrefs>): void {
  state.setUps.value = { ...state.setUps.peek(), ...changed };
}

/** Place in the job of the set-up that the sheets are about. */
export const shownIndex = computed(() => {
  const found = state.job.value.setUps.findIndex(({ id }) => id === state.setUps.value.setUp);
  return found < 0 ? setUpIndex.value : found;
});

/** The set-up that the sheets are about. */
export const shownSetUp = computed(() => state.job.value.setUps[shownIndex.value] as SetUpSpec);

/** Whether the coat in hand sprays with another set-up than the one shown. */
export const isOther = computed(() => coat.value.setUp !== shownSetUp.value.id);
