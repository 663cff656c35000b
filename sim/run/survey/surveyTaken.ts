import type { Warning } from '../../base/errors.ts';
import type { Job, ReadingSpec, RuleSpec } from '../../job/schema.ts';
import type { Mix } from '../../mix/mix.ts';
import type { SurveyTaken, TakenFigure } from '../../report/survey/reportedSurvey.ts';
import { mixOfCoat } from '../settle.ts';

/** Readings and the rule that judges them, without a job. */
export interface SurveyAsked {
  readonly name: string;
  readonly rule: RuleSpec;
  readonly readings: readonly ReadingSpec[];
  /** Of the dry film, for coupons. */
  readonly dryDensity_kg_m3?: number | undefined;
  /** Of the mix as sprayed, by volume, for combs. */
  readonly solids_percent?: number | undefined;
}

/**
 * Density of the dry film and solids as sprayed: as stated, else of the mixes of the coats. Assumed where these differ: the mean of
 * their densities, since a coupon weighs all coats together; and the solids of the last, since a comb reads the coat just sprayed.
 */
export function surveyTaken({ readings, dryDensity_kg_m3, solids_percent }: SurveyAsked, job: Job | null, coatIds: readonly string[]): { readonly taken: SurveyTaken; readonly warnings: readonly Warning[] } {
  const warnings: Warning[] = [];
  const has = (kind: 'coupon' | 'comb'): boolean => readings.some((reading) => reading.kind === kind);
  const mixes = job === null ? [] : mixesOf(job, coatIds, warnings);
  const density = dryDensity_kg_m3 === undefined ? meanDensity(mixes, has('coupon'), warnings) : { value: dryDensity_kg_m3, mix: null };
  const solids = solids_percent === undefined ? lastSolids(mixes, has('comb'), warnings) : { value: solids_percent / 100, mix: null };
  return { taken: { dryDensity_kg_m3: density, solidsFraction: solids }, warnings };
}

/** A record outlives the plan: coats that are gone are told, not refused. */
function mixesOf(job: Job, coatIds: readonly string[], warnings: Warning[]): Mix[] {
  const gone = coatIds.filter((id) => job.coats.every((coat) => coat.id !== id));
  if (gone.length > 0) warnings.push(warning('unknown-supply', `The job has no coat ${gone.join(', ')} any more; its mix could not be looked up.`));
  return coatIds.filter((id) => !gone.includes(id)).map((id) => mixOfCoat(job, id));
}

function meanDensity(mixes: readonly Mix[], isNeeded: boolean, warnings: Warning[]): TakenFigure | null {
  const [first] = mixes;
  if (first === undefined) return null;
  const densities = mixes.map(({ finish }) => finish.solidsDensity_kg_m3.value);
  const value = densities.reduce((sum, each) => sum + each, 0) / densities.length;
  if (isNeeded && new Set(densities).size > 1) {
    warnings.push(warning('defaults-used', `The coats’ dry films differ in density (${Math.min(...densities)} to ${Math.max(...densities)} kg/m³); coupons go by the mean, ${Math.round(value)} kg/m³. State the density to settle it.`));
  }
  return { value, mix: [...new Set(mixes.map(({ name }) => name))].join(' and ') };
}

function lastSolids(mixes: readonly Mix[], isNeeded: boolean, warnings: Warning[]): TakenFigure | null {
  const last = mixes[mixes.length - 1];
  if (last === undefined) return null;
  if (isNeeded && mixes.some(({ volumeSolidsFraction }) => volumeSolidsFraction !== last.volumeSolidsFraction)) {
    warnings.push(warning('defaults-used', `The coats’ mixes differ in solids; combs go by the last coat named, ${last.name}. State the solids to settle it.`));
  }
  return { value: last.volumeSolidsFraction, mix: last.name };
}

function warning(code: Warning['code'], text: string): Warning {
  return { code, text, place: {} };
}
