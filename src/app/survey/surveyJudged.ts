import { computed } from '@preact/signals';
import { judgeSurvey, type ReportedSurvey, type SurveySpec } from '../../../sim/index.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { shownSurvey } from './survey.ts';
import { RULE_KINDS, ruleOfKind } from './surveyRules.ts';

/** A survey judged, or why it cannot be. */
export type Judged = { readonly reported: ReportedSurvey } | { readonly problem: Problem };

/** The survey shown, judged by its rule; null without one. Ten thousand readings take some tens of milliseconds, so that it is done on the page. */
export const judgedSurvey = computed<Judged | null>(() => (shownSurvey.value === null ? null : judge(shownSurvey.value)));

/** The same readings by the other rules, asking for the same film. */
export const judgedByOthers = computed<readonly Judged[]>(() => {
  const survey = shownSurvey.value;
  if (survey === null) return [];
  return RULE_KINDS.filter((kind) => kind !== survey.rule.kind && kind !== 'shop').map((kind) => judge({ ...survey, rule: ruleOfKind(kind, survey.rule) }));
});

/** Density and solids that a survey's weights and combs go by; null where its panel or its mixes cannot be made. */
export function takenOf(survey: SurveySpec): { readonly dryDensity_kg_m3: number | null; readonly solidsFraction: number | null } | null {
  const judged = judge({ ...survey, readings: [] });
  if ('problem' in judged) return null;
  const { dryDensity_kg_m3, solidsFraction } = judged.reported.taken;
  return { dryDensity_kg_m3: dryDensity_kg_m3?.value ?? null, solidsFraction: solidsFraction?.value ?? null };
}

function judge(survey: SurveySpec): Judged {
  try {
    return { reported: judgeSurvey(state.job.value, survey) };
  } catch (thrown) {
    return { problem: problemOf('The survey cannot be judged yet', thrown) };
  }
}
