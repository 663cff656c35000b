import { computed } from '@preact/signals';
import { reportScheme, type PlannedStep, type ReportedScheme, type SchemeFinding } from '../../../sim/index.ts';
import { state } from '../state.ts';
import { shownScheme } from './scheme.ts';
import { schemePlan } from './schemePlan.ts';

/** What the rules say of the shown scheme as it was last worked out; null before that, and for another scheme. */
export const schemeReport = computed<ReportedScheme | null>(() => {
  const plan = schemePlan.plan.value;
  return plan === null || plan.scheme.id !== shownScheme.value?.id ? null : reportScheme(plan);
});

/** Whether the figures are of the job as it is now. */
export const isReportCurrent = computed(() => schemePlan.madeOf.value === state.job.value);

/** A step as worked out, by its id: places may have moved since. */
export function plannedStep(id: string): PlannedStep | null {
  return schemeReport.value?.plan.steps.find(({ spec }) => spec.id === id) ?? null;
}

/** Id of the step that a finding is about. */
export function stepOf({ stepIndex }: SchemeFinding): string {
  return schemeReport.value?.plan.steps[stepIndex]?.spec.id ?? '';
}

/** Findings about a step. */
export function findingsOf(id: string): SchemeFinding[] {
  return schemeReport.value?.findings.filter((finding) => stepOf(finding) === id) ?? [];
}

/** The letters of a drawing's coats, A first, by the id of the step. */
export const coatLetters = computed<ReadonlyMap<string, string>>(() => {
  const coats = (shownScheme.value?.steps ?? []).filter(({ kind }) => kind === 'brush' || kind === 'spray');
  return new Map(coats.map(({ id }, k) => [id, letter(k)]));
});

/** A to Z, then AA, AB and on. */
function letter(k: number): string {
  return (k < 26 ? '' : letter(Math.floor(k / 26) - 1)) + String.fromCharCode(65 + (k % 26));
}
