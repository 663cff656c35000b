import type { PlanComparison } from '../survey/comparison.ts';
import { colourTable } from './colours.ts';
import { largest, thicknessDomain, type Field } from './field.ts';

/** Least half of the difference's scale, m: the last digit of a gauge should not fill all colours. */
const LEAST_HALF_M = 0.5e-6;

/** Film as believed less film as planned: thin purple, heavy orange, the same paler in the middle. Null without a reading to tell. */
export function differenceField({ between, panelGrid }: PlanComparison): Field | null {
  if (between === null) return null;
  const most = Math.max(LEAST_HALF_M, thicknessDomain(between.difference_m.map((value) => Math.abs(value)))[1]);
  return {
    kind: 'dry', grid: panelGrid.grid, values: between.difference_m, domain: [-most, most], isClipped: largest(between.difference_m.map((value) => Math.abs(value))) > most,
    unit: 'm', isLog: false, title: 'dry film as believed less planned', marks: [0], colours: colourTable('target'),
  };
}

/** Standard error of the film as believed. Null without a reading to tell. */
export function errorField({ between, panelGrid }: PlanComparison): Field | null {
  if (between === null) return null;
  return {
    kind: 'dry', grid: panelGrid.grid, values: between.error_m, domain: [0, Math.max(LEAST_HALF_M, thicknessDomain(between.error_m)[1])], isClipped: false,
    unit: 'm', isLog: false, title: 'standard error of the dry film', marks: [], colours: colourTable('solids'),
  };
}

/** The film as planned. */
export function plannedField({ predicted_m, panelGrid }: PlanComparison): Field {
  const values = predicted_m.map((value, cell) => ((panelGrid.cover[cell] as number) < 0.5 ? NaN : value));
  const domain = thicknessDomain(values);
  return { kind: 'dry', grid: panelGrid.grid, values, domain, isClipped: largest(values) > domain[1], unit: 'm', isLog: false, title: 'dry film as planned', marks: [], colours: colourTable('film') };
}
