import { CrosscoatError, type Warning } from '../../base/errors.ts';
import type { Job, SurveySpec } from '../../job/schema.ts';
import { makePanel } from '../../panel/makePanel.ts';
import type { ReportedSurvey } from '../../report/survey/reportedSurvey.ts';
import { filmReadings } from '../../survey/filmReadings.ts';
import { judgeReadings } from '../../survey/judgeReadings.ts';
import { moreReadings } from '../../survey/moreReadings.ts';
import { samplingNumbers } from '../../survey/samplingNumbers.ts';
import { surveyDoubts, type SurveyedPanel } from './surveyDoubts.ts';
import { surveyTaken, type SurveyAsked } from './surveyTaken.ts';

/**
 * Judges a survey of a job by its own rule. Density and solids that it does not state are those of the mix of its coats.
 * @param survey of the job, or one that is not in it yet.
 * @throws CrosscoatError `not-found` for a panel that is not in the job, `geometry` for one that cannot be made, `range` where a coupon or
 *   a comb finds no density or solids.
 */
export function judgeSurvey(job: Job, survey: SurveySpec): ReportedSurvey {
  const index = job.part.panels.findIndex(({ id }) => id === survey.panel);
  const spec = job.part.panels[index];
  if (spec === undefined) {
    const known = job.part.panels.map(({ id }) => id).join(', ');
    throw new CrosscoatError('not-found', `survey "${survey.id}": panel "${survey.panel}" is not in the job (it has ${known}); give one of these`);
  }
  const { panel } = makePanel(spec, `/part/panels/${index}`);
  return reported(survey, job, survey, { panel, backing: spec.backing });
}

/** Judges readings that belong to no job, such as a gauge's own file. @throws CrosscoatError `range` as `judgeSurvey`. */
export function judgeAlone(asked: SurveyAsked): ReportedSurvey {
  return reported(asked, null, null, null);
}

function reported(asked: SurveyAsked, job: Job | null, survey: SurveySpec | null, surveyed: SurveyedPanel | null): ReportedSurvey {
  const { taken, warnings } = surveyTaken(asked, job, survey?.coats ?? []);
  const films = filmReadings(asked.readings, { dryDensity_kg_m3: taken.dryDensity_kg_m3?.value ?? null, solidsFraction: taken.solidsFraction?.value ?? null });
  const judged = judgeReadings(asked.rule, films);
  const sampling = surveyed === null ? null : samplingNumbers(asked.rule.kind, surveyed.panel.area_m2);
  const doubts: readonly Warning[] = [...warnings, ...surveyDoubts(judged, films, surveyed, sampling)];
  return { name: asked.name, survey, panel: surveyed?.panel ?? null, judged, taken, more: moreReadings(judged), sampling, warnings: doubts };
}
