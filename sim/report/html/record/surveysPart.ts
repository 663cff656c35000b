import { momentShown } from '../../changeWords.ts';
import { readingRows, type ReadingRow } from '../../record/readingRows.ts';
import { personWords, surveyAnswerWords } from '../../record/recordWords.ts';
import type { RecordedSurvey, ReportedRecord } from '../../record/reportedRecord.ts';
import type { ReportedSurvey } from '../../survey/reportedSurvey.ts';
import { ruleWords } from '../../survey/ruleWords.ts';
import { checkWords, surveyReason, SURVEY_ANSWER_WORDS } from '../../survey/surveyReason.ts';
import { samplingWords } from '../../survey/surveyText.ts';
import { MORE_NOTE, moreSentences, SURVEY_NOTE, takenSentences } from '../../survey/surveyWords.ts';
import { causeSentences, planRatioSentence, spreadSentences } from '../../survey/truthWords.ts';
import type { Job, SurveySpec } from '../../../job/schema.ts';
import { shown, shownNumber, type UnitSystem } from '../../units.ts';
import { capitalised } from '../../words.ts';
import { counted } from '../../../base/counted.ts';
import { escaped } from '../escape.ts';
import { htmlList, type PagePart } from '../page.ts';
import { linesHtml } from './linesHtml.ts';
import { historyHtml, signatureHtml } from './signatureHtml.ts';

/** What the gauges read and what each survey's own rule makes of it. */
export function surveysPart({ job, surveys }: ReportedRecord, system: UnitSystem): PagePart {
  return { head: 'Surveys of the film', html: surveys.length === 0 ? '<p>No film was surveyed.</p>' : surveys.map((each) => surveyHtml(each, job, system)).join('\n') };
}

function surveyHtml(recorded: RecordedSurvey, job: Job, system: UnitSystem): string {
  const { survey, reported, problem, signature } = recorded;
  const rule = ruleWords(survey.rule, system);
  return [
    `<div class="entry"><h3>${escaped(survey.name)}</h3>`,
    `<p class="verdict">${escaped(reported === null ? `${surveyAnswerWords(recorded)}: ${problem}` : surveyReason(reported.judged, system))}</p>`,
    linesHtml(headLines(survey, job)),
    `<h4>${escaped(rule.name)}</h4><p>${escaped(rule.borrowed)}</p>${htmlList(rule.asks)}<p>${escaped(rule.note)}</p>`,
    reported === null ? '' : figuresHtml(reported, system),
    `<h4>Readings</h4>${readingsHtml(readingRows(recorded, system))}`,
    comparisonHtml(recorded, system),
    historyHtml(survey.history, system),
    signatureHtml(survey.signed, signature),
    '</div>',
  ].join('');
}

function headLines(survey: SurveySpec, job: Job): { readonly head: string; readonly text: string }[] {
  const { coats, gauge, notes } = survey;
  return [
    { head: 'When', text: momentShown(survey.at) },
    { head: 'Who', text: personWords(survey) },
    { head: 'Panel', text: job.part.panels.find(({ id }) => id === survey.panel)?.name ?? survey.panel },
    { head: 'Coats', text: coats.length === 0 ? 'none named' : coats.map((id) => job.coats.find((coat) => coat.id === id)?.name ?? `${id} (not in the job any more)`).join(', ') },
    { head: 'Gauge', text: gauge ?? 'not noted' },
    ...(notes === undefined ? [] : [{ head: 'Remark', text: notes }]),
  ];
}

function figuresHtml(reported: ReportedSurvey, system: UnitSystem): string {
  const { judged, more, sampling, warnings } = reported;
  const checks = judged.checks.map((check) => `${SURVEY_ANSWER_WORDS[check.answer]}: ${checkWords(check, judged, system)}.`);
  const figures = [
    ...figureSentences(reported, system),
    ...takenSentences(reported),
    ...(sampling === null ? [] : [`The rule’s own table asks for ${samplingWords(sampling)} on this panel. ${sampling.source}.`]),
    ...(judged.readings.length === 0 ? [] : [...moreSentences(more, system), MORE_NOTE]),
  ];
  const doubts = warnings.length === 0 ? '' : `<h4>Doubts</h4>${htmlList(warnings.map(({ text }) => text))}`;
  return `${checks.length === 0 ? '' : `<h4>Checks</h4>${htmlList(checks)}`}<h4>Figures</h4>${htmlList(figures)}${doubts}<p>${escaped(SURVEY_NOTE)}</p>`;
}

function figureSentences({ judged: { figures } }: ReportedSurvey, system: UnitSystem): string[] {
  const { count, mean_m, least_m, most_m, deviation_m, meanInterval_m } = figures;
  if (count === 0) return [];
  const interval = meanInterval_m === null ? '' : ` (95 % interval of the mean at the least ${shownNumber(meanInterval_m[0], 'film', system)} to ${shown(meanInterval_m[1], 'film', system)})`;
  return [`${capitalised(counted(count, 'reading'))}: mean ${shown(mean_m, 'film', system)} dry${interval}, from ${shownNumber(least_m, 'film', system)} to ${shown(most_m, 'film', system)}, standard deviation ${shown(deviation_m, 'film', system)}.`];
}

/** The survey beside the film that its coats should have laid, with its maps. */
function comparisonHtml({ comparison, comparisonProblem, maps }: RecordedSurvey, system: UnitSystem): string {
  if (comparison === null) return `<h4>Against the plan</h4><p>Not compared: ${escaped(comparisonProblem)}</p>`;
  const said = [planRatioSentence(comparison), ...spreadSentences(comparison, system), ...causeSentences(comparison), ...comparison.doubts];
  const figures = maps.map(({ svg, caption }) => `<figure>${svg}<figcaption>${escaped(caption)}</figcaption></figure>`);
  return `<h4>Against the plan</h4>${htmlList(said)}${figures.length === 0 ? '' : `<div class="maps">${figures.join('')}</div>`}`;
}

/** One table; the way of reading, the remarks and the planned film have a column only where they tell readings apart. */
function readingsHtml(rows: readonly ReadingRow[]): string {
  const kinds = [...new Set(rows.map(({ kind }) => kind))];
  if (kinds.length === 0) return '<p>No reading was entered.</p>';
  const shows = { kind: kinds.length > 1, note: rows.some(({ note }) => note !== ''), planned: rows.some(({ planned }) => planned !== '') };
  const columns: readonly (readonly [head: string, isShort: boolean, text: (row: ReadingRow) => string])[] = [
    ...(shows.kind ? [['Taken by', false, ({ kind }: ReadingRow) => kind] as const] : []),
    ['Place', false, ({ place }) => place],
    ['As read', false, ({ read }) => read],
    ...(shows.note ? [['Remark', false, ({ note }: ReadingRow) => note] as const] : []),
    ['Dry film', true, ({ film }) => film],
    ...(shows.planned ? [['Planned', true, ({ planned }: ReadingRow) => planned] as const] : []),
    ['Verdict', true, ({ decides }) => (decides ? 'decides' : '')],
  ];
  const body = rows.map((row) => `<tr${row.decides ? ' class="decides"' : ''}><th scope="row" class="short">${row.number}</th>${columns.map(([, isShort, text]) => `<td${isShort ? ' class="short"' : ''}>${escaped(text(row))}</td>`).join('')}</tr>`);
  const head = ['No.', ...columns.map(([name]) => name)].map((name) => `<th scope="col">${name}</th>`).join('');
  return `${shows.kind ? '' : `<p>All by ${escaped(kinds[0] as string)}.</p>`}<div class="words wide" tabindex="0"><table><thead><tr>${head}</tr></thead><tbody>${body.join('')}</tbody></table></div>`;
}
