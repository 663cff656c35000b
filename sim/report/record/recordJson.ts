import type { JsonValue } from '../jsonValue.ts';
import { jsonNumber } from '../jsonValue.ts';
import { logJson } from '../logJson.ts';
import { RESULT_VERSION } from '../reportJson.ts';
import { schemeJson } from '../schemeJson.ts';
import { surveyJson } from '../survey/surveyJson.ts';
import type { Estimate } from '../../survey/comparison.ts';
import type { UnitSystem } from '../units.ts';
import { decidingReadings } from './readingRows.ts';
import { RECORD_STATEMENT, recordFaults, unsignedNames } from './recordWords.ts';
import type { RecordedSurvey, ReportedRecord } from './reportedRecord.ts';

/**
 * A record as one JSON object: `digest`, `look` (rules that fail, signatures that do not match), `unsigned`, `plan`, `log`, `surveys`.
 * The job itself is not in it: the digest is of the job file's canonical form.
 * @param system units of the sentences in it.
 */
export function recordJson(record: ReportedRecord, system: UnitSystem): { readonly [key: string]: JsonValue } {
  const { job, made, digest, schemes, log, surveys } = record;
  return {
    schemaVersion: RESULT_VERSION,
    note: RECORD_STATEMENT,
    job: job.name,
    part: job.part.name,
    panels: job.part.panels.map(({ id, name }) => ({ id, name })),
    madeAt: made.at,
    madeBy: made.version,
    digest: { algorithm: 'SHA-256', of: 'canonical form of the job file (RFC 8785)', sha256: digest },
    look: recordFaults(record),
    unsigned: unsignedNames(record),
    plan: schemes.map(({ name, report, problem }) => (report === null ? { name, problem } : { name, ...(schemeJson(report, system)) })),
    log: logJson(log, system),
    surveys: surveys.map(surveyResult),
  };
}

function surveyResult({ survey, reported, problem, signature, comparison, comparisonProblem }: RecordedSurvey): JsonValue {
  const head = { id: survey.id, at: survey.at, who: survey.who, signature, sha256: survey.signed?.sha256 ?? null };
  const compared = comparison === null
    ? { problem: comparisonProblem }
    : { ratio_percent: estimateJson(comparison.ratio), plannedMean_um: jsonNumber(comparison.predictedMean_m, 1e-6), spread_percent: comparison.spread === null ? null : jsonNumber(comparison.spread, 0.01) };
  if (reported === null) return { ...head, name: survey.name, problem, againstPlan: compared };
  const decides = decidingReadings(reported.judged);
  return { ...surveyJson(reported), ...head, deciding: [...decides].map((index) => index + 1), againstPlan: compared };
}

function estimateJson(estimate: Estimate | null): JsonValue {
  if (estimate === null) return null;
  return { value: jsonNumber(estimate.value, 0.01), low: jsonNumber(estimate.low, 0.01), high: jsonNumber(estimate.high, 0.01) };
}
