import { lookAtSurvey } from '../../app/survey/survey.ts';
import type { SurveyPrefs } from '../../app/survey/surveyPrefs.ts';
import { problemOf } from '../../app/problem.ts';
import { state } from '../../app/state.ts';

/** Opens the survey over the window, at a sheet if told; its script is fetched only now. */
export async function openSurvey(at: Partial<SurveyPrefs> = {}): Promise<void> {
  try {
    const { showSurvey } = await import('./showSurvey.tsx');
    lookAtSurvey(at);
    showSurvey();
  } catch (thrown) {
    state.notice.value = problemOf('The survey could not be fetched; everything else still works', thrown);
  }
}
