import { counted } from '../../base/counted.ts';
import type { GroupMean, SurveyAnswer } from '../../survey/judgedSurvey.ts';
import type { SamplingNumbers } from '../../survey/samplingNumbers.ts';
import { bulleted, wrapped } from '../textLines.ts';
import { textTable } from '../textTable.ts';
import { shown, type UnitSystem } from '../units.ts';
import { capitalised } from '../words.ts';
import type { ReportedSurvey } from './reportedSurvey.ts';
import { ruleWords } from './ruleWords.ts';
import { checkWords, surveyReason } from './surveyReason.ts';
import { groupMeanWords, MORE_NOTE, moreSentences, SURVEY_NOTE, takenSentences } from './surveyWords.ts';

const ANSWER_CELLS: Readonly<Record<SurveyAnswer, string>> = { pass: 'holds', fail: 'FAILS', undecided: 'open' };
/** Spots or areas that a table lists; those that fail first beyond it. */
const MOST_LISTED = 30;

/** A survey and its verdict as plain text; lines joined, one newline at the end. */
export function surveyText(reported: ReportedSurvey, system: UnitSystem): string {
  const { name, judged, more, warnings, sampling } = reported;
  const { name: ruleName, borrowed, asks, note } = ruleWords(judged.rule, system);
  const taken = takenSentences(reported);
  const lines = [
    ...wrapped(`${name}: ${counted(judged.readings.length, 'reading')}`),
    ...wrapped(surveyReason(judged, system)),
    '',
    ...figureTable(reported, system),
    ...bulleted(ruleName, [borrowed, ...asks, note]),
    '',
    ...(judged.checks.length === 0 ? [] : [...bulleted('Checks', judged.checks.map((check) => `${ANSWER_CELLS[check.answer]}: ${checkWords(check, judged, system)}.`)), '']),
    ...groupTable('Areas', judged.areas, system),
    ...groupTable('Spots', judged.spots, system),
    ...(judged.readings.length === 0 ? [] : [...bulleted('More readings', [...moreSentences(more, system), MORE_NOTE]), '']),
    ...(sampling === null ? [] : [...wrapped(`The rule’s own table asks for ${samplingWords(sampling)} on this panel. ${sampling.source}.`), '']),
    ...(taken.length === 0 ? [] : [...bulleted('Taken', taken), '']),
    ...(warnings.length === 0 ? [] : [...bulleted('Warnings', warnings.map(({ text }) => text)), '']),
    ...wrapped(SURVEY_NOTE),
  ];
  return `${lines.join('\n')}\n`;
}

/** `45 readings: 3 areas, 15 spots`. */
export function samplingWords({ areas, spots, readings }: SamplingNumbers): string {
  return spots === readings ? counted(readings, 'reading') : `${counted(readings, 'reading')} in ${counted(spots, 'spot')} of ${counted(areas, 'area')}`;
}

/** A comb counts here by the middle between its teeth, in the checks by both bounds: the table says so. */
function figureTable({ judged: { figures, readings } }: ReportedSurvey, system: UnitSystem): string[] {
  if (figures.count === 0) return [];
  const film = (value: number): string => shown(value, 'film', system);
  const { mean_m, least_m, most_m, deviation_m, meanInterval_m } = figures;
  const by = readings.some(({ low_m, high_m }) => low_m !== high_m) ? ', by the middle of the teeth' : '';
  return [
    ...textTable([
      [`mean${by}`, film(mean_m)],
      ...(meanInterval_m === null ? [] : [['95 % interval of the mean (at least this wide)', `${film(meanInterval_m[0])} to ${film(meanInterval_m[1])}`]]),
      [`least${by}`, film(least_m)],
      [`most${by}`, film(most_m)],
      [`standard deviation${by}`, film(deviation_m)],
    ]),
    '',
  ];
}

function groupTable(head: string, groups: readonly GroupMean[], system: UnitSystem): string[] {
  if (groups.length === 0) return [];
  const isLong = groups.length > MOST_LISTED;
  const listed = isLong ? [...groups.filter(({ answer }) => answer !== 'pass'), ...groups.filter(({ answer }) => answer === 'pass')].slice(0, MOST_LISTED) : groups;
  const rest = groups.length - listed.length;
  return [
    ...textTable([[head, 'readings', 'mean', ''], ...listed.map((group) => [capitalised(group.name), String(group.readings.length), groupMeanWords(group, system), ANSWER_CELLS[group.answer]])]),
    ...(rest === 0 ? [] : [`and ${rest} more`]),
    '',
  ];
}
