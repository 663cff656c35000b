import type { SchemeSpec, StepSpec } from '../../../sim/index.ts';
import { changeJob } from '../document.ts';
import { freshId } from '../freshId.ts';
import { withValueAt } from '../path.ts';
import { state } from '../state.ts';
import { missingFor, newStep, type StepKind } from './newStep.ts';
import { lookAtScheme, schemeIndex, shownScheme } from './scheme.ts';

/** Place of the chosen step in the shown scheme; -1 where none is. */
export function chosenStep(): number {
  return shownScheme.value?.steps.findIndex(({ id }) => id === state.scheme.value.step) ?? -1;
}

/** Opens a step's fields, or closes them where they are open. */
export function chooseStep(id: string): void {
  lookAtScheme({ step: state.scheme.peek().step === id ? '' : id });
}

/** A step of a kind after a place (-1: first), chosen at once. Nothing happens where the job has nothing to lay it with. */
export function addStep(kind: StepKind, after: number): void {
  const [job, scheme] = [state.job.peek(), shownScheme.peek()];
  if (scheme === null || missingFor(job, scheme.panels, kind) !== null) return;
  const step = newStep(job, scheme, kind, scheme.steps.slice(0, after + 1));
  setSteps('Add a step', [...scheme.steps.slice(0, after + 1), step, ...scheme.steps.slice(after + 1)]);
  lookAtScheme({ step: step.id });
}

/** The step once more, right after it. */
export function duplicateStep(place: number): void {
  const scheme = shownScheme.peek();
  const step = scheme?.steps[place];
  if (scheme === null || step === undefined) return;
  const copy = { ...step, id: freshId(step.kind, scheme.steps.map(({ id }) => id)) };
  setSteps('Copy a step', [...scheme.steps.slice(0, place + 1), copy, ...scheme.steps.slice(place + 1)]);
  lookAtScheme({ step: copy.id });
}

/** Moves a step up (-1) or down (1). @returns its new place; the same where there is no room. */
export function moveStep(place: number, by: -1 | 1): number {
  const steps = shownScheme.peek()?.steps ?? [];
  const [step, other] = [steps[place], steps[place + by]];
  if (step === undefined || other === undefined) return place;
  setSteps('Move a step', steps.map((each, k) => (k === place ? other : k === place + by ? step : each)));
  return place + by;
}

/** Takes a step out. A scheme keeps at least one. */
export function removeStep(place: number): void {
  const steps = shownScheme.peek()?.steps ?? [];
  if (steps.length < 2 || steps[place] === undefined) return;
  const left = steps.filter((_, k) => k !== place);
  setSteps('Remove a step', left);
  lookAtScheme({ step: left[Math.min(place, left.length - 1)]?.id ?? '' });
}

/** Sets one key of a step; undefined takes the key out. */
export function setInStep(label: string, place: number, key: string, value: unknown): void {
  const step = shownScheme.peek()?.steps[place];
  if (step === undefined) return;
  const next: Record<string, unknown> = { ...step, [key]: value };
  if (value === undefined) Reflect.deleteProperty(next, key);
  changeJob(label, withValueAt(state.job.peek(), ['schemes', schemeIndex.peek(), 'steps', place], next));
}

/** Sets one key of the shown scheme; undefined takes the key out. */
export function setInScheme(label: string, key: keyof SchemeSpec, value: unknown): void {
  const scheme = shownScheme.peek();
  if (scheme === null) return;
  const next: Record<string, unknown> = { ...scheme, [key]: value };
  if (value === undefined) Reflect.deleteProperty(next, key);
  changeJob(label, withValueAt(state.job.peek(), ['schemes', schemeIndex.peek()], next));
}

function setSteps(label: string, steps: readonly StepSpec[]): void {
  dropSchemeDrafts();
  changeJob(label, withValueAt(state.job.peek(), ['schemes', schemeIndex.peek(), 'steps'], steps));
}

/** Steps move when one comes or goes, so that a draft would stand in another step's field. */
export function dropSchemeDrafts(): void {
  state.drafts.value = Object.fromEntries(Object.entries(state.drafts.peek()).filter(([pointer]) => !pointer.startsWith('/schemes/')));
}
