import { checkRange } from '../../base/check.ts';
import { CrosscoatError } from '../../base/errors.ts';
import type { Job } from '../../job/schema.ts';
import { MOST_THINNER } from '../../mix/makeMix.ts';
import { coatOf } from '../settle.ts';
import type { FitLimits, FitRange, Wish } from './wish.ts';

/** More coats than this are another scheme. Assumed. */
const MOST_COATS = 20;
/** Dry film of a whole scheme, m. Assumed: a millimetre lies far above what is sprayed on cloth. */
const MOST_DRY_M = 1e-3;
/** The same by weight; no finish's solids are denser than 2500 kg/m³. */
const MOST_WEIGHT_KG_M2 = 2.5;

interface LimitRow {
  readonly name: string;
  readonly range: FitRange | undefined;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly advice: string;
}

/**
 * Checks what can be said of a wish before any search: numbers that are none, ranges the wrong way round,
 * names that the job has not, two amounts at once.
 * @throws CrosscoatError `range`, `not-found` or `schema`, saying what to give instead.
 */
export function checkWish(job: Job, coatId: string, { dry_m, weight_kg_m2, coatCount = 1, limits = {} }: Wish): void {
  coatOf(job, coatId);
  if (dry_m !== undefined && weight_kg_m2 !== undefined) {
    throw new CrosscoatError('schema', 'fit: both a dry film and a weight are wished for (each fixes the other); give one of them');
  }
  checkRange({ name: 'fit: coats', value: coatCount, low: 1, high: MOST_COATS, advice: 'give how many coats make up the film' });
  if (!Number.isInteger(coatCount)) throw new CrosscoatError('range', `fit: coats = ${coatCount} is not a whole number (a coat is laid or not); give a whole number of coats`);
  if (dry_m !== undefined) checkAbove('fit: dry film', dry_m, MOST_DRY_M, 'm', 'give the dry film of all coats together, such as 25e-6 m');
  if (weight_kg_m2 !== undefined) checkAbove('fit: weight', weight_kg_m2, MOST_WEIGHT_KG_M2, 'kg/m²', 'give the weight of the dry film of all coats, such as 0.03 kg/m²');
  checkNames('set-up', limits.setUps, job.setUps);
  checkNames('mix', limits.mixes, job.mixes);
  for (const id of Object.keys(limits.fluidRate_m3_s ?? {})) checkNames('set-up', [id], job.setUps);
  for (const row of limitRows(limits)) checkLimit(row);
  if (limits.mostTime_s !== undefined) checkAbove('fit: most time', limits.mostTime_s, 86_400, 's', 'give the time that one coat may take');
  if (limits.mostLiquid_m3 !== undefined) checkAbove('fit: most liquid', limits.mostLiquid_m3, 1, 'm³', 'give the liquid that all coats may take');
}

function limitRows({ distance_m, speed_m_s, overlapFraction, fluidRate_m3_s = {}, thinnerRatio }: FitLimits): LimitRow[] {
  return [
    { name: 'distance', range: distance_m, low: 0.02, high: 1, unit: 'm', advice: 'give gun distances such as 0.15 to 0.25 m' },
    { name: 'speed', range: speed_m_s, low: 0.01, high: 5, unit: 'm/s', advice: 'give travel speeds such as 0.2 to 0.6 m/s' },
    { name: 'overlap', range: overlapFraction, low: 0, high: 0.95, unit: '', advice: 'give shares of the fan such as 0.4 to 0.7' },
    { name: 'thinner per finish', range: thinnerRatio, low: 0, high: MOST_THINNER, unit: '', advice: 'give volumes of thinner to one of finish' },
    ...Object.entries(fluidRate_m3_s).map(([id, range]) => ({ name: `fluid rate of set-up "${id}"`, range, low: 1e-9, high: 5e-3 / 60, unit: 'm³/s', advice: 'give rates such as 2e-6 to 4e-6 m³/s (120 to 240 mL/min)' })),
  ];
}

function checkLimit({ name, range, low, high, unit, advice }: LimitRow): void {
  if (range === undefined) return;
  const said = unit === '' ? {} : { unit };
  checkRange({ name: `fit: least ${name}`, value: range[0], low, high, ...said, advice });
  checkRange({ name: `fit: most ${name}`, value: range[1], low: range[0], high, ...said, why: 'the least comes first', advice });
}

/** Above nothing and up to a limit. */
function checkAbove(name: string, value: number, high: number, unit: string, advice: string): void {
  if (!(value > 0)) throw new CrosscoatError('range', `${name} = ${value} ${unit} is not above 0 ${unit} (there would be nothing to spray); ${advice}`);
  checkRange({ name, value, low: 0, high, unit, advice });
}

function checkNames(what: string, ids: readonly string[] | undefined, known: readonly { readonly id: string }[]): void {
  if (ids === undefined) return;
  const names = known.map(({ id }) => id).join(', ') || 'none';
  if (ids.length === 0) throw new CrosscoatError('schema', `fit: no ${what} may be used (nothing can be sprayed then); allow one or more of ${names}`);
  for (const id of ids) {
    if (!known.some((one) => one.id === id)) throw new CrosscoatError('not-found', `fit: ${what} "${id}" is not in the job (it has ${names}); give one of these`);
  }
}
