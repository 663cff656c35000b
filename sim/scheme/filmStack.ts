import type { Layer } from './finding.ts';
import type { PlannedScheme, PlannedStep } from './planned.ts';

/** One of the films that lie on each other. */
export interface StackedFilm {
  readonly stepIndex: number;
  readonly layer: Layer;
  /** Share of the panels that it covers, 0 to 1. */
  readonly share: number;
  film_m: number;
}

/** Lays or sands one step on a stack of films, lowest first. Sanding takes from the top, through one film into the next. */
export function stackStep(films: StackedFilm[], { spec, coat, area_m2 }: PlannedStep, stepIndex: number, all_m2: number): void {
  if (coat !== null) films.push({ stepIndex, layer: coat.layer, share: Math.min(1, area_m2 / all_m2), film_m: coat.dry_m.value });
  if (spec.kind !== 'sand') return;
  let left_m = spec.removes_um * 1e-6;
  for (let top = films.at(-1); top !== undefined && left_m > 0; top = films.at(-1)) {
    const taken_m = Math.min(left_m, top.film_m);
    top.film_m -= taken_m;
    left_m -= taken_m;
    if (top.film_m > 0) return;
    films.pop();
  }
}

/** The films that lie on the part when all steps are done, lowest first, mean films without their spread. */
export function filmStack({ steps, area_m2 }: PlannedScheme): StackedFilm[] {
  const films: StackedFilm[] = [];
  for (const [k, step] of steps.entries()) stackStep(films, step, k, area_m2);
  return films;
}
