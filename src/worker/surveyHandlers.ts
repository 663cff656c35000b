import { compareWithPlan, CrosscoatError, differenceField, errorField, plannedField, whereToRead, type Job, type SurveySpec } from '../../sim/index.ts';
import type { Handlers } from './serve.ts';

/** What the worker does for the sheets of the survey. Nothing is kept. */
export function makeSurveyHandlers(): Pick<Handlers, 'surveyTruth' | 'surveyWhere'> {
  return {
    surveyTruth: ({ job, survey, gaugeNoise_m }) => {
      const comparison = compareWithPlan(job, surveyOf(job, survey), gaugeNoise_m === null ? {} : { gaugeNoise_m });
      return Promise.resolve({ reply: { comparison, fields: { planned: plannedField(comparison), difference: differenceField(comparison), error: errorField(comparison) } } });
    },
    surveyWhere: ({ job, survey }) => Promise.resolve({ reply: { plan: whereToRead(job, surveyOf(job, survey)) } }),
  };
}

function surveyOf({ surveys = [] }: Job, id: string): SurveySpec {
  const found = surveys.find((survey) => survey.id === id);
  if (found === undefined) throw new CrosscoatError('not-found', `survey "${id}" is not in the job; choose one that is`);
  return found;
}
