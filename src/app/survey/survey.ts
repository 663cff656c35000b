import { computed, signal } from '@preact/signals';
import type { SurveySpec } from '../../../sim/index.ts';
import type { Problem } from '../problem.ts';
import { state } from '../state.ts';
import type { SurveyPrefs } from './surveyPrefs.ts';

/** What the sheets of the survey show and nothing keeps. */
export const surveyStage = {
  /** Something asked for on a sheet did not work; stays until dismissed. */
  problem: signal<Problem | null>(null),
};

/** Changes some of what the reader looks at. */
export function lookAtSurvey(changed: Partial<SurveyPrefs>): void {
  state.survey.value = { ...state.survey.peek(), ...changed };
}

/** Place in the job of the survey that the sheets are about; -1 where the job has none. */
export const surveyIndex = computed(() => {
  const surveys = state.job.value.surveys ?? [];
  const found = surveys.findIndex(({ id }) => id === state.survey.value.survey);
  return found < 0 ? surveys.length - 1 : found;
});

/** The survey that the sheets are about; null where the job has none. */
export const shownSurvey = computed<SurveySpec | null>(() => state.job.value.surveys?.[surveyIndex.value] ?? null);
