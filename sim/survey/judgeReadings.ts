import type { RuleSpec } from '../job/schema.ts';
import type { FilmReading } from './filmReading.ts';
import type { JudgedSurvey, SurveyAnswer } from './judgedSurvey.ts';
import { worstAnswer } from './limits.ts';
import { judgeMeanEighty } from './rules/meanEighty.ts';
import { judgeNinetyTen } from './rules/ninetyTen.ts';
import type { RuleAnswer } from './rules/ruleAnswer.ts';
import { judgeShop } from './rules/shop.ts';
import { judgeSpotsAreas } from './rules/spotsAreas.ts';
import { surveyFigures } from './surveyFigures.ts';

/** What decides stands first. */
const URGENCY: Readonly<Record<SurveyAnswer, number>> = { fail: 0, undecided: 1, pass: 2 };

/**
 * Judges readings by a rule. It fails where one of the rule's checks fails; it is undecided where bounds of combs leave one open,
 * where there is no reading, and for a shop's rule that states no limit. Limits that the readings meet to the rounding of double
 * arithmetic are met.
 *
 * @param readings as dry film, from `filmReadings`; a rule's correction for a rough surface is taken here.
 * @returns checks with those that decide first; figures after the correction.
 */
export function judgeReadings(rule: RuleSpec, readings: readonly FilmReading[]): JudgedSurvey {
  if (readings.length === 0) return { rule, answer: 'undecided', checks: [], figures: surveyFigures([]), spots: [], areas: [], grouping: null, readings };
  const { checks, spots, areas, grouping, readings: corrected } = answerOf(rule, readings);
  return {
    rule,
    answer: checks.length === 0 ? 'undecided' : worstAnswer(checks.map(({ answer }) => answer)),
    checks: [...checks].sort((a, b) => URGENCY[a.answer] - URGENCY[b.answer]),
    figures: surveyFigures(corrected),
    spots,
    areas,
    grouping,
    readings: corrected,
  };
}

function answerOf(rule: RuleSpec, readings: readonly FilmReading[]): RuleAnswer {
  switch (rule.kind) {
    case 'mean-80':
      return judgeMeanEighty(rule, readings);
    case 'spots-areas':
      return judgeSpotsAreas(rule, readings);
    case 'ninety-ten':
      return judgeNinetyTen(rule, readings);
    case 'shop':
      return judgeShop(rule, readings);
  }
}
