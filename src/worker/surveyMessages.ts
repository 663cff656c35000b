import type { Field, Job, PlanComparison, SamplingPlan } from '../../sim/index.ts';

/** The film as planned, as believed less planned, and its standard error; the last two null without a placed reading. */
export interface TruthFields {
  readonly planned: Field;
  readonly difference: Field | null;
  readonly error: Field | null;
}

/** Messages of the survey: name, what is asked, what comes back. */
export interface SurveyMessages {
  /** A survey of the job, by its id, beside its plan; `gaugeNoise_m` null where nobody said. */
  surveyTruth: { request: { job: Job; survey: string; gaugeNoise_m: number | null }; reply: { comparison: PlanComparison; fields: TruthFields } };
  /** Where to read a survey of the job. */
  surveyWhere: { request: { job: Job; survey: string }; reply: { plan: SamplingPlan } };
}
