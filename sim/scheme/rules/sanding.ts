import { stackStep, type StackedFilm } from '../filmStack.ts';
import { findingAt, type Layer, type SchemeFinding } from '../finding.ts';
import type { PlannedScheme, PlannedStep } from '../planned.ts';
import { isDopedFabric } from './coatsOf.ts';

/** AC 43.13-1B 2-21h. */
const COARSEST_GRIT = 280;
/** Places that a list of "keep off" should name on doped fabric, by the words that name them. */
const KEEP_OFF: readonly (readonly [place: string, word: RegExp])[] = [['rib lacing', /lac/i], ['tape edges', /tape/i]];

/** Sanding that takes too much, from the wrong coat, with the wrong paper, or without saying where not to. */
export function sandingFindings(plan: PlannedScheme): SchemeFinding[] {
  const films: StackedFilm[] = [];
  return plan.steps.flatMap((step, k) => {
    const top = films.at(-1)?.layer;
    const found = step.spec.kind === 'sand' ? [...throughFindings(step, k, films), ...(isDopedFabric(plan) ? fabricFindings(plan, step, k, top) : [])] : [];
    stackStep(films, step, k, plan.area_m2);
    return found;
  });
}

/** Sanding is meant to stay within the layer on top, of however many coats. */
function throughFindings(step: PlannedStep, k: number, films: readonly StackedFilm[]): SchemeFinding[] {
  if (step.spec.kind !== 'sand') return [];
  const top = films.at(-1);
  if (top === undefined) return [];
  let below = films.length - 1;
  while (below >= 0 && films[below]?.layer === top.layer) below--;
  const film_m = films.slice(below + 1).reduce((sum, each) => sum + each.film_m, 0);
  const removes_m = step.spec.removes_um * 1e-6;
  return removes_m < film_m ? [] : [findingAt(step, k, 'stop', { rule: 'sand-through', removes_m, film_m, reaches: films[below]?.layer ?? 'cloth' }, 'removes_um')];
}

function fabricFindings(plan: PlannedScheme, step: PlannedStep, k: number, top: Layer | undefined): SchemeFinding[] {
  if (step.spec.kind !== 'sand') return [];
  const { grit, keepOff } = step.spec;
  const missing = KEEP_OFF.flatMap(([place, word]) => (keepOff.some((text) => word.test(text)) ? [] : [place]));
  const isLast = !plan.steps.slice(k).some(({ coat }) => coat?.layer === 'aluminium');
  return [
    ...(top === 'aluminium' && isLast ? [findingAt(step, k, 'stop', { rule: 'sand-last-aluminium' })] : []),
    ...(top === 'aluminium' && grit < COARSEST_GRIT ? [findingAt(step, k, 'doubt', { rule: 'sand-coarse', grit, finest: COARSEST_GRIT }, 'grit')] : []),
    ...(missing.length > 0 ? [findingAt(step, k, keepOff.length === 0 ? 'stop' : 'doubt', { rule: 'sand-keep-off', missing }, 'keepOff')] : []),
  ];
}
