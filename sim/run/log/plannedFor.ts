import type { CoatSpec, Job, LogEntrySpec, MixSpec, SchemeSpec, SetUpSpec, StepSpec } from '../../job/schema.ts';

/** What the plan says of one thing done; null for what it does not say, or says no more. */
export interface PlannedFor {
  readonly scheme: SchemeSpec | null;
  readonly step: StepSpec | null;
  /** The step before it in its scheme, which states the wait. */
  readonly before: StepSpec | null;
  readonly coat: CoatSpec | null;
  readonly mix: MixSpec | null;
  readonly setUp: SetUpSpec | null;
}

/** What an entry is about. */
export type AboutPlan = Pick<LogEntrySpec, 'step' | 'coat'> & { readonly panels?: readonly string[] };

/**
 * What the plan says of an entry's step and coat. Of schemes that have a step of that name, the one on a panel of the entry counts.
 * The mix is the step's, else the coat's.
 */
export function plannedFor(job: Job, { step: stepId, coat: coatId, panels = [] }: AboutPlan): PlannedFor {
  const having = (job.schemes ?? []).filter(({ steps }) => stepId !== undefined && steps.some(({ id }) => id === stepId));
  const scheme = having.find((each) => each.panels.some((id) => panels.includes(id))) ?? having[0] ?? null;
  const place = scheme?.steps.findIndex(({ id }) => id === stepId) ?? -1;
  const step = scheme?.steps[place] ?? null;
  const named = coatId ?? (step?.kind === 'spray' ? step.coat : undefined);
  const coat = job.coats.find(({ id }) => id === named) ?? null;
  const mixId = step?.kind === 'brush' || step?.kind === 'spray' ? (step.mix ?? coat?.mix) : coat?.mix;
  return {
    scheme,
    step,
    before: scheme?.steps[place - 1] ?? null,
    coat,
    mix: job.mixes.find(({ id }) => id === mixId) ?? null,
    setUp: job.setUps.find(({ id }) => id === coat?.setUp) ?? null,
  };
}
