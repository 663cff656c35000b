import { checkRange } from '../base/check.ts';
import type { CoatAmount } from './amounts.ts';

/** What was used and what is on the part. */
export interface CoverageReading {
  /** Mixed liquid gone from pot and cup, m³. */
  readonly used_m3: number;
  /** Volume solids of the mixed liquid, 0 to 1. */
  readonly volumeSolidsFraction: number;
  readonly solidsDensity_kg_m3: number;
  /** Weight that the dry film added to the part, kg. */
  readonly gained_kg: number;
  /** Area that was sprayed, all sides, m². */
  readonly area_m2: number;
}

/** Where the liquid went. */
export interface CoverageAnswer {
  /** Solids on the part over solids used: transfer efficiency with all losses in it. Above 1 it cannot be. */
  readonly landedFraction: number;
  readonly lost_m3: number;
  /** Mean dry film on the part, m. */
  readonly dry_m: number;
  /** Area that a volume of mixed liquid covered at that film, m²/m³, and what a label's figure, with nothing lost, would be. */
  readonly covered_m2_m3: number;
  readonly lossless_m2_m3: number;
  readonly isPossible: boolean;
}

/** A landed share this far above 1 is rounding of the scales. */
const ROUNDING = 1e-9;

/**
 * Transfer efficiency from what was used: solids that stayed on the part over solids used, by weight or volume alike (after the
 * definition of US air-quality rules: weight of solids that stay over weight of solids used). What was left in the pot is
 * in `used_m3` unless it was poured back. Says nothing of where the rest went.
 * @throws CrosscoatError `range` for a volume, solids, density or area that is not above 0, or a weight below 0.
 */
export function coverageOf(reading: CoverageReading): CoverageAnswer {
  const { used_m3, volumeSolidsFraction, solidsDensity_kg_m3, gained_kg, area_m2 } = reading;
  checkRange({ name: 'coverageOf: used_m3', value: used_m3, low: 1e-9, high: 10, unit: 'm³', advice: 'give the mixed liquid that was used' });
  checkRange({ name: 'coverageOf: volumeSolidsFraction', value: volumeSolidsFraction, low: 1e-4, high: 1, advice: 'give the volume solids of the mixed liquid' });
  checkRange({ name: 'coverageOf: solidsDensity_kg_m3', value: solidsDensity_kg_m3, low: 100, high: 20000, unit: 'kg/m³', advice: 'give the density of the dry film' });
  checkRange({ name: 'coverageOf: gained_kg', value: gained_kg, low: 0, high: 1e4, unit: 'kg', advice: 'give the weight gained when dry' });
  checkRange({ name: 'coverageOf: area_m2', value: area_m2, low: 1e-6, high: 1e5, unit: 'm²', advice: 'give the area that was sprayed' });
  const solids_m3 = gained_kg / solidsDensity_kg_m3;
  const landedFraction = solids_m3 / (used_m3 * volumeSolidsFraction);
  const dry_m = solids_m3 / area_m2;
  return {
    landedFraction,
    lost_m3: used_m3 * Math.max(0, 1 - landedFraction),
    dry_m,
    covered_m2_m3: area_m2 / used_m3,
    lossless_m2_m3: dry_m > 0 ? volumeSolidsFraction / dry_m : Infinity,
    isPossible: landedFraction <= 1 + ROUNDING,
  };
}

/** The same for a planned coat: its mix and the area that it covers. @throws CrosscoatError as `coverageOf`. */
export function coatCoverage({ step, coat: { mix } }: CoatAmount, used_m3: number, gained_kg: number): CoverageAnswer {
  return coverageOf({
    used_m3, gained_kg, area_m2: step.area_m2,
    volumeSolidsFraction: mix.volumeSolidsFraction, solidsDensity_kg_m3: mix.finish.solidsDensity_kg_m3.value,
  });
}
