import { merged } from '../merged.ts';

/** The sheets of the survey. */
export const SURVEY_TABS = ['readings', 'verdict', 'where', 'truth'] as const;
export type SurveyTab = (typeof SURVEY_TABS)[number];

/** What the reader looks at of the surveys, kept in this browser. A sheet adds a key of its own for what it keeps. */
export interface SurveyPrefs {
  readonly tab: SurveyTab;
  /** Id of the survey that the sheets are about; empty, or gone from the job: the last. */
  readonly survey: string;
}

export const USUAL_SURVEY: SurveyPrefs = { tab: 'readings', survey: '' };

/** Kept values that fit today's sheets; what an older build wrote otherwise is left at its usual. */
export function surveyFrom(kept: unknown): SurveyPrefs {
  const prefs = merged(USUAL_SURVEY, kept) as SurveyPrefs;
  return { ...prefs, tab: SURVEY_TABS.includes(prefs.tab) ? prefs.tab : USUAL_SURVEY.tab };
}
