import { ALUMINIUM_REFLECTANCE } from '../materials/aluminiumFilm.ts';
import { colourRuns, type ColourRun } from './colourRuns.ts';
import { coatsToHide, contrastBetween, contrastOver, contrastRatio, filmReflectance, hidingFilm_m, infiniteReflectance, seenReflectance } from './hiding.ts';
import type { PlannedScheme } from './planned.ts';

/** How well the coats of one colour hide what is beneath. */
export interface HidingRow {
  readonly run: ColourRun;
  /** Least dry film that hides, m; Infinity where none does. */
  readonly hiding_m: number;
  /** Of the film laid: over the colour or the aluminium beneath, or over a chart's black and white where that is not known. */
  readonly contrast: number;
  /** The same as seen with a glossy face, which adds its own shine to both; null over a chart. */
  readonly seenContrast: number | null;
  /** Coats like the thickest of them, in all and beyond those planned. */
  readonly coatsToHide: number;
  readonly moreCoats: number;
  /** Weight of those further coats where they lie, kg/m². */
  readonly moreWeight_kg_m2: number;
}

/** One row for each colour of a scheme, in the order in which they are laid. */
export function hidingRows(plan: PlannedScheme): HidingRow[] {
  return colourRuns(plan).map((run) => hidingRow(plan, run));
}

/** How well a run of coats hides. */
export function hidingRow(plan: PlannedScheme, run: ColourRun): HidingRow {
  const { optics, film_m, coat_m, lastStep } = run;
  const ground = groundOf(run);
  const hiding_m = hidingFilm_m(optics, ground);
  const moreCoats = coatsToHide(Math.max(0, hiding_m - film_m), coat_m);
  const density_kg_m3 = plan.steps[lastStep]?.coat?.mix.finish.solidsDensity_kg_m3.value ?? 0;
  return {
    run,
    hiding_m,
    contrast: ground === null ? contrastRatio(optics, film_m) : contrastOver(optics, film_m, ground),
    seenContrast: ground === null ? null : contrastBetween(seenReflectance(filmReflectance(optics, film_m, ground)), seenReflectance(infiniteReflectance(optics))),
    coatsToHide: coatsToHide(hiding_m, coat_m),
    moreCoats,
    moreWeight_kg_m2: moreCoats * coat_m * density_kg_m3,
  };
}

/** What lies beneath throws back: the colour's own figure, a usual one for aluminium, or null where neither is there. */
function groundOf({ beneath, isOverAluminium }: ColourRun): number | null {
  if (beneath !== null) return beneath.reflectance_percent / 100;
  return isOverAluminium ? ALUMINIUM_REFLECTANCE.value : null;
}
