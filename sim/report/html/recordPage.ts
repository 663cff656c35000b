import { DIGEST_CHECK, productDoubts, RECORD_ASSUMPTIONS, RECORD_STATEMENT, recordFaults, surveyAnswerWords, unsignedNames } from '../record/recordWords.ts';
import { momentShown } from '../changeWords.ts';
import type { ReportedRecord } from '../record/reportedRecord.ts';
import type { UnitSystem } from '../units.ts';
import { escaped } from './escape.ts';
import { htmlList, htmlPage, type PagePart } from './page.ts';
import { labelPart } from './record/labelPart.ts';
import { linesHtml } from './record/linesHtml.ts';
import { logPart } from './record/logPart.ts';
import { planPart } from './record/planPart.ts';
import { RECORD_STYLE } from './record/recordStyle.ts';
import { signPart } from './record/signPart.ts';
import { surveysPart } from './record/surveysPart.ts';

/**
 * The record of a job as one HTML file that needs nothing else: plan, log, surveys with their verdicts and maps, history, signatures,
 * lines to sign, a label, the digest and how to check it. No script, no request; it prints on A4 and Letter and reads with styles off.
 */
export function recordPage(record: ReportedRecord, system: UnitSystem): string {
  const { job, made } = record;
  return htmlPage({
    title: `Record: ${job.name}`,
    subtitle: `${job.part.name}. Written ${momentShown(made.at)} by Crosscoat ${made.version}.`,
    parts: [headPart(record), planPart(record, system), logPart(record, system), surveysPart(record, system), signPart(record), labelPart(record), digestPart(record)],
    assumptions: RECORD_ASSUMPTIONS,
    style: RECORD_STYLE,
  });
}

function headPart(record: ReportedRecord): PagePart {
  const { job, made, surveys } = record;
  const unsigned = unsignedNames(record);
  const lines = [
    { head: 'Job', text: job.name },
    ...(job.note === undefined ? [] : [{ head: 'Note', text: job.note }]),
    { head: 'Part', text: job.part.name },
    { head: 'Panels', text: job.part.panels.map(({ name }) => name).join('; ') },
    { head: 'Written', text: `${momentShown(made.at)}, by Crosscoat ${made.version}; job file version ${job.schemaVersion}, seed ${job.seed}` },
    ...surveys.map((each) => ({ head: 'Survey', text: `${each.survey.name}: ${surveyAnswerWords(each).toLowerCase()}` })),
    { head: 'Not signed', text: unsigned.length === 0 ? 'nothing' : unsigned.join('; ') },
  ];
  const look = [...recordFaults(record), ...productDoubts(job)];
  return { head: 'What this is', html: `<div class="cautions"><p>${escaped(RECORD_STATEMENT)}</p></div>${linesHtml(lines)}${look.length === 0 ? '' : `<h3>Look at these first</h3>${htmlList(look)}`}` };
}

function digestPart({ digest }: ReportedRecord): PagePart {
  return { head: 'Digest', html: `<p>SHA-256 of this job: <code>${escaped(digest)}</code></p>${htmlList(DIGEST_CHECK)}` };
}
