import { counted } from '../../base/counted.ts';
import { momentShown } from '../changeWords.ts';
import { logText } from '../logText.ts';
import { surveyReason } from '../survey/surveyReason.ts';
import { planRatioSentence } from '../survey/truthWords.ts';
import { bulleted, wrapped } from '../textLines.ts';
import type { UnitSystem } from '../units.ts';
import { productDoubts, RECORD_STATEMENT, recordFaults, surveyAnswerWords, unsignedNames } from './recordWords.ts';
import type { RecordedSurvey, ReportedRecord } from './reportedRecord.ts';

/** A record as plain text: what to look at first, the log, the surveys' verdicts, the digest. The page has it all. */
export function recordText(record: ReportedRecord, system: UnitSystem): string {
  const { job, made, log, surveys, digest } = record;
  const look = [...recordFaults(record), ...productDoubts(job)];
  const unsigned = unsignedNames(record);
  const lines = [
    ...wrapped(`Record: ${job.name}. ${job.part.name}. Written ${momentShown(made.at)} by Crosscoat ${made.version}.`),
    ...wrapped(`${counted(log.length, 'entry', 'entries')} of the log, ${counted(surveys.length, 'survey')}; not signed: ${unsigned.length === 0 ? 'nothing' : unsigned.join('; ')}.`), '',
    ...(look.length === 0 ? [] : [...bulleted('Look at these first', look), '']),
    ...logText(log, system).trimEnd().split('\n'), '',
    ...(surveys.length === 0 ? [] : [...bulleted('Surveys', surveys.map((each) => surveySentence(each, system))), '']),
    `SHA-256 of the job's canonical form (RFC 8785): ${digest}`, '',
    ...wrapped(RECORD_STATEMENT),
  ];
  return `${lines.join('\n')}\n`;
}

function surveySentence(recorded: RecordedSurvey, system: UnitSystem): string {
  const { survey, reported, problem, comparison } = recorded;
  const verdict = reported === null ? `${surveyAnswerWords(recorded)}: ${problem}` : surveyReason(reported.judged, system);
  return `${survey.name}. ${verdict}${comparison === null ? '' : ` ${planRatioSentence(comparison)}`}`;
}
