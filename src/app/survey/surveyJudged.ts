import { computed } from '@preact/signals';
import { filmReadings, judgeReadings, judgeSurvey, type JudgedSurvey, type ReportedSurvey, type SurveySpec, type TakenForReadings } from '../../../sim/index.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { shownSurvey } from './survey.ts';
import { RULE_KINDS, ruleOfKind } from './surveyRules.ts';

/** A survey judged, or why it cannot be. */
export type Judged = { readonly reported: ReportedSurvey } | { readonly problem: Problem };

/** The survey shown, judged by its rule; null without one. Ten thousand readings take some tens of milliseconds, so that it is done on the page. */
export const judgedSurvey = computed<Judged | null>(() => (shownSurvey.value === null ? null : judge(shownSurvey.value)));

/** The same readings by the other rules, asking for the same film; empty where the survey's own cannot be judged. */
export const judgedByOthers = computed<readonly JudgedSurvey[]>(() => {
  const [survey, own] = [shownSurvey.value, judgedSurvey.value];
  if (survey === null || own === null || 'problem' in own) return [];
  // The doubts about places and gauges are the same for every rule, so only the rule is worked out anew.
  const films = filmReadings(survey.readings, takenFigures(own.reported));
  return RULE_KINDS.filter((kind) => kind !== survey.rule.kind && kind !== 'shop').map((kind) => judgeReadings(ruleOfKind(kind, survey.rule), films));
});

/** Density and solids that a survey's weights and combs go by; null where its panel or its mixes cannot be made. */
export function takenOf(survey: SurveySpec): TakenForReadings | null {
  const judged = judge({ ...survey, readings: [] });
  if ('problem' in judged) return null;
  return takenFigures(judged.reported);
}

/** What a judged survey's weights and combs went by. */
export function takenFigures({ taken: { dryDensity_kg_m3, solidsFraction } }: ReportedSurvey): TakenForReadings {
  return { dryDensity_kg_m3: dryDensity_kg_m3?.value ?? null, solidsFraction: solidsFraction?.value ?? null };
}

function judge(survey: SurveySpec): Judged {
  try {
    return { reported: judgeSurvey(state.job.value, survey) };
  } catch (thrown) {
    return { problem: problemOf('The survey cannot be judged yet', thrown) };
  }
}
