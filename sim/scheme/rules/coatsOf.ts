import type { Layer } from '../finding.ts';
import type { PlannedCoat, PlannedScheme, PlannedStep } from '../planned.ts';

/** A coat of a scheme with its place among the steps. */
export interface CoatStep {
  readonly step: PlannedStep;
  readonly coat: PlannedCoat;
  readonly stepIndex: number;
}

/** A coat over less than this share of the panels is no whole coat: over tapes, or a second colour. */
const WHOLE_SHARE = 0.99;

/** The steps that lay a coat, in order. */
export function coatsOf({ steps }: PlannedScheme): CoatStep[] {
  return steps.flatMap((step, stepIndex) => (step.coat === null ? [] : [{ step, coat: step.coat, stepIndex }]));
}

/** Whether a coat covers the whole of the panels. */
export function isWhole(plan: PlannedScheme, { step }: CoatStep): boolean {
  return step.area_m2 >= WHOLE_SHARE * plan.area_m2;
}

/** Coats of a layer that cover the whole of the panels. */
export function wholeCoats(plan: PlannedScheme, layer: Layer): CoatStep[] {
  return coatsOf(plan).filter((each) => each.coat.layer === layer && isWhole(plan, each));
}

/** Doped fabric, as a scheme that asks for clear coats is taken to be; the rules of the circular are for it alone. */
export function isDopedFabric({ scheme }: PlannedScheme): boolean {
  return scheme.clearCoats > 0;
}
