import { counted } from '../../base/counted.ts';
import type { JudgedSurvey, RuleCheck, SurveyAnswer } from '../../survey/judgedSurvey.ts';
import { shownPercent, type UnitSystem } from '../units.ts';
import { filmBeside, foundWords, limitWords } from './filmWords.ts';

/** The answer as a verb. */
export const SURVEY_ANSWER_WORDS: Readonly<Record<SurveyAnswer, string>> = { pass: 'Passes', fail: 'Fails', undecided: 'Not decided' };

/** The verdict with its reason in one sentence: what fails; else what is open; else all that the rule asks, and on how few spots it was met. */
export function surveyReason(judged: JudgedSurvey, system: UnitSystem): string {
  const { answer, checks, readings } = judged;
  const head = SURVEY_ANSWER_WORDS[answer];
  if (readings.length === 0) return `${head}: there are no readings.`;
  if (checks.length === 0) return `${head}: the rule states no limit.`;
  return `${head}: ${fewSpotsWords(judged)}${checks.filter((check) => check.answer === answer).map((check) => checkWords(check, judged, system)).join('; ')}.`;
}

/** A pass on fewer spots than the rule asks for is no whole answer, so the sentence itself begins with it; else empty. */
export function fewSpotsWords({ answer, grouping, areas, spots }: JudgedSurvey): string {
  if (answer !== 'pass' || grouping === null || grouping.shortAreas === 0) return '';
  if (areas.length === 1) return `on ${counted(spots.length, 'spot')} of the five that the rule asks for, `;
  return `with ${grouping.shortAreas} of ${areas.length} areas on fewer than the five spots that the rule asks for, `;
}

/** One check as a clause: what was found, and what the rule asks. */
export function checkWords(check: RuleCheck, judged: JudgedSurvey, system: UnitSystem): string {
  switch (check.code) {
    case 'mean-low':
    case 'mean-high':
      return meanWords(check, system);
    case 'reading-low':
    case 'reading-high':
      return eachWords(check, counted(judged.readings.length, 'reading'), judged.readings.length, system);
    case 'low-share':
      return shareWords(check, judged, system);
    case 'spread':
      return spreadWords(check);
    case 'spot-low':
    case 'spot-high':
      return groupWords(check, 'spot', judged.spots.length, outside(check, judged), system);
    case 'area-low':
    case 'area-high':
      return groupWords(check, 'area', judged.areas.length, outside(check, judged), system);
  }
}

function isLow({ code }: RuleCheck): boolean {
  return code.endsWith('-low');
}

function meanWords(check: RuleCheck, system: UnitSystem): string {
  const [found, limit] = [foundWords(check.found, check.limit, system), limitWords(check.limit, system)];
  if (check.answer === 'undecided') return `the mean is ${found}, which leaves open whether it ${isLow(check) ? 'reaches' : 'stays within'} ${limit}`;
  if (check.answer === 'fail') return `the mean, ${found}, is ${isLow(check) ? 'below' : 'above'} ${limit}`;
  return `the mean, ${found}, ${isLow(check) ? 'reaches' : 'stays within'} ${limit}`;
}

function eachWords(check: RuleCheck, all: string, count: number, system: UnitSystem): string {
  const [side, edge] = isLow(check) ? ['below', 'the least'] : ['above', 'the most'];
  const limit = limitWords(check.limit, system);
  const found = `${edge} is ${foundWords(check.found, check.limit, system)}`;
  const beyond = check.readings.length;
  if (check.answer === 'pass') return `no reading is ${side} ${limit} (${found})`;
  const which = count === beyond && count > 1 ? `all ${all}` : `${beyond} of ${all}`;
  if (check.answer === 'undecided') return `${which} may be ${side} ${limit} (${found})`;
  return `${which} ${beyond === 1 ? 'is' : 'are'} ${side} ${limit} (${found})`;
}

function shareWords(check: RuleCheck, { readings, rule }: JudgedSurvey, system: UnitSystem): string {
  const [low, high] = check.found;
  const allowed = check.limit === 0 ? 'none may' : `${check.includesLimit ? 'at most' : 'fewer than'} ${shownPercent(check.limit)} may`;
  const least = Math.round(low * readings.length);
  const most = Math.round(high * readings.length);
  const counts = least === most ? `${least} of ${counted(readings.length, 'reading')} (${shownPercent(low)})` : `${least} to ${most} of ${counted(readings.length, 'reading')} (${shownPercent(low)} to ${shownPercent(high)})`;
  const band = bandWords(rule, system);
  return `${most === 0 ? 'no reading' : counts} ${most <= 1 ? 'lies' : 'lie'} ${band}, and ${allowed}`;
}

function bandWords(rule: JudgedSurvey['rule'], system: UnitSystem): string {
  if (rule.kind === 'mean-80') return `from ${limitWords((rule.nominal_um * rule.low_percent) / 1e8, system)} to below the nominal ${limitWords(rule.nominal_um * 1e-6, system)}`;
  return rule.kind === 'ninety-ten' ? `below the nominal ${limitWords(rule.nominal_um * 1e-6, system)}` : 'low';
}

function spreadWords({ found: [spread], limit, answer }: RuleCheck): string {
  if (answer === 'undecided') return 'the spread cannot be told from these readings (it takes two at least, none of them of a comb)';
  return `the spread is ${shownPercent(spread)} of the mean, and at most ${shownPercent(limit)} may be`;
}

/** Spots or areas whose readings decide a check. */
function outside({ code, readings, answer }: RuleCheck, { spots, areas }: JudgedSurvey): number {
  if (answer === 'pass') return 0;
  const deciding = new Set(readings);
  return (code.startsWith('spot') ? spots : areas).filter((group) => group.readings.every((index) => deciding.has(index))).length;
}

function groupWords(check: RuleCheck, noun: string, count: number, beyond: number, system: UnitSystem): string {
  const low = isLow(check);
  const limit = limitWords(check.limit, system);
  const [bottom, top] = check.found;
  const edge = `${low ? 'lowest' : 'highest'}: ${check.where ?? noun}, ${bottom === top ? filmBeside(bottom, check.limit, system) : foundWords(check.found, check.limit, system)}`;
  if (check.answer === 'pass') return `every ${noun} ${low ? 'reaches' : 'stays within'} ${limit} (${edge})`;
  const verb = check.answer === 'undecided' ? 'may be' : beyond === 1 ? 'is' : 'are';
  return `${beyond} of ${counted(count, noun)} ${verb} ${low ? 'below' : 'above'} ${limit} (${edge})`;
}
