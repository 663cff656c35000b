import { coatCoverage, type CoatAmount, type CoverageAnswer } from '../../../sim/index.ts';

/** Where a coat's liquid went, by what was used and gained as typed; null while either is missing. */
export function coverageTyped(coat: CoatAmount, used_mL: number | null, gained_g: number | null): CoverageAnswer | null {
  return used_mL === null || gained_g === null ? null : coatCoverage(coat, used_mL * 1e-6, gained_g / 1000);
}
