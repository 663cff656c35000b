import { CrosscoatError } from '../../base/errors.ts';
import { secondsOfMoment } from '../../base/moment.ts';
import type { Job, SurveySpec } from '../../job/schema.ts';
import { canonicalForm, sha256Of } from '../../log/digest.ts';
import { signatureState } from '../../log/signing.ts';
import type { RecordedScheme, RecordedSurvey, RecordMade, ReportedRecord } from '../../report/record/reportedRecord.ts';
import type { ReportedEntry } from '../../report/reportedLog.ts';
import type { UnitSystem } from '../../report/units.ts';
import { reportLog } from '../log/reportLog.ts';
import { planScheme } from '../scheme/planScheme.ts';
import { reportScheme } from '../scheme/reportScheme.ts';
import { judgeSurvey } from '../survey/judgeSurvey.ts';
import { compareWithPlan } from '../survey/compareWithPlan.ts';
import { surveyMaps } from './surveyMaps.ts';

/**
 * The whole record of a job: its plan, its log with signatures checked, its surveys judged, its digest. A part that cannot be worked
 * out any more says why and takes nothing else with it: a record outlives the plan.
 * @param system units of the maps' scales. @param made when, and by which version: this model has no clock.
 */
export function reportRecord(job: Job, made: RecordMade, system: UnitSystem): ReportedRecord {
  return {
    job,
    made,
    schemes: (job.schemes ?? []).map(({ id, name }) => recordedScheme(job, id, name)),
    log: inOrder(reportLog(job)),
    surveys: (job.surveys ?? []).map((survey) => recordedSurvey(job, survey, system)),
    digest: sha256Of(canonicalForm(job)),
  };
}

/** By their start; entries begun at one time stay as they were written. */
function inOrder(log: readonly ReportedEntry[]): ReportedEntry[] {
  return [...log].sort((a, b) => (secondsOfMoment(a.entry.started) ?? 0) - (secondsOfMoment(b.entry.started) ?? 0));
}

function recordedScheme(job: Job, id: string, name: string): RecordedScheme {
  const { value, problem } = tried(() => reportScheme(planScheme(job, id)));
  return { name, report: value, problem };
}

function recordedSurvey(job: Job, survey: SurveySpec, system: UnitSystem): RecordedSurvey {
  const { value: reported, problem } = tried(() => judgeSurvey(job, survey));
  const compared = tried(() => compareWithPlan(job, survey));
  return {
    survey,
    reported,
    problem,
    signature: signatureState(survey, null),
    comparison: compared.value,
    comparisonProblem: compared.problem,
    maps: reported === null || compared.value === null ? [] : surveyMaps(survey.name, reported.judged, compared.value, system),
  };
}

/** A part of the record, or why there is none. Only what the job states can be at fault; a fault of the program is one. */
function tried<T>(make: () => T): { readonly value: T | null; readonly problem: string } {
  try {
    return { value: make(), problem: '' };
  } catch (thrown) {
    if (thrown instanceof CrosscoatError) return { value: null, problem: thrown.message };
    throw thrown;
  }
}
