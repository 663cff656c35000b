import { colourRuns, type ColourRun } from '../colourRuns.ts';
import { findingAt, type SchemeFinding } from '../finding.ts';
import { hidingOrder } from '../hiding.ts';
import { hidingRow } from '../hidingRows.ts';
import type { PlannedScheme, PlannedStep } from '../planned.ts';

/** Order of colours, colours that stain, and colours that do not hide. */
export function colourFindings(plan: PlannedScheme): SchemeFinding[] {
  return colourRuns(plan).flatMap((run) => [...darkFirst(plan, run), ...bleeding(plan, run), ...showsThrough(plan, run)]);
}

function stepAt(plan: PlannedScheme, k: number): PlannedStep {
  return plan.steps[k] as PlannedStep;
}

/** A lighter colour over a darker one, where it takes more film than the other way round. */
function darkFirst(plan: PlannedScheme, { colour, optics, beneath, firstStep }: ColourRun): SchemeFinding[] {
  if (beneath === null || beneath.id === colour.id || !(beneath.reflectance_percent < colour.reflectance_percent)) return [];
  const dark = colourRuns(plan).find((run) => run.colour.id === beneath.id);
  if (dark === undefined) return [];
  const { firstOnTop_m, secondOnTop_m } = hidingOrder(optics, dark.optics);
  if (!(firstOnTop_m > secondOnTop_m)) return [];
  return [findingAt(stepAt(plan, firstStep), firstStep, 'doubt', { rule: 'dark-first', dark: beneath.name, light: colour.name, lightOnTop_m: firstOnTop_m, darkOnTop_m: secondOnTop_m }, 'colour')];
}

/** A colour that stains, with another coat over it that is no barrier of aluminium. */
function bleeding(plan: PlannedScheme, { colour, lastStep }: ColourRun): SchemeFinding[] {
  if (!colour.bleeds) return [];
  const k = plan.steps.findIndex(({ coat }, i) => i > lastStep && coat !== null);
  const over = plan.steps[k];
  if (over === undefined || over.coat?.layer === 'aluminium') return [];
  return [findingAt(over, k, 'doubt', { rule: 'bleeds', colour: colour.name, over: over.spec.name })];
}

/** All coats of a colour together against the film that hides. */
function showsThrough(plan: PlannedScheme, run: ColourRun): SchemeFinding[] {
  const { hiding_m, contrast, moreCoats } = hidingRow(plan, run);
  if (run.film_m >= hiding_m) return [];
  return [findingAt(stepAt(plan, run.lastStep), run.lastStep, 'doubt', { rule: 'shows-through', colour: run.colour.name, isOverAluminium: run.isOverAluminium, film_m: run.film_m, hiding_m, contrast, moreCoats })];
}
