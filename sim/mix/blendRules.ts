import { checkRange } from '../base/check.ts';
import { M2_S_PER_MM2_S } from '../base/units.ts';

/** One liquid of a blend. */
export interface BlendedLiquid {
  /** Share of the blend's mass, 0 to 1; the shares of a blend add to 1. */
  readonly massFraction: number;
  readonly viscosity_m2_s: number;
}

/** Below this, mm²/s, the Refutas index is the logarithm of a negative number. */
const REFUTAS_LEAST_MM2_S = 0.2;

/**
 * Viscosity of a blend of like liquids by the Refutas index, m²/s:
 * VBN = 14.534 ln(ln(ν + 0.8)) + 10.975 with ν in mm²/s, averaged by mass.
 * Source: R. E. Maples, Petroleum Refinery Process Economics, 2nd ed. 2000.
 * @throws CrosscoatError `range` for a viscosity not above 0.2 mm²/s.
 */
export function refutasBlend_m2_s(liquids: readonly BlendedLiquid[]): number {
  const index = weightedSum(liquids, (mm2_s) => {
    checkRange({ name: 'refutasBlend: viscosity', value: mm2_s, low: REFUTAS_LEAST_MM2_S + 1e-9, high: 1e9, unit: 'mm²/s', why: 'the index is a logarithm of a logarithm of ν + 0.8', advice: 'use the logarithmic or the cube-root rule' });
    return 14.534 * Math.log(Math.log(mm2_s + 0.8)) + 10.975;
  });
  return (Math.exp(Math.exp((index - 10.975) / 14.534)) - 0.8) * M2_S_PER_MM2_S;
}

/**
 * Viscosity of a blend by the logarithmic rule, m²/s: ln ν = Σ x ln ν. S. Arrhenius 1887, as given in handbooks.
 * @throws CrosscoatError `range` for a viscosity that is not above 0.
 */
export function arrheniusBlend_m2_s(liquids: readonly BlendedLiquid[]): number {
  return Math.exp(weightedSum(liquids, (mm2_s) => {
    checkRange({ name: 'arrheniusBlend: viscosity', value: mm2_s, low: Number.MIN_VALUE, high: 1e9, unit: 'mm²/s', advice: 'give a viscosity above 0' });
    return Math.log(mm2_s);
  })) * M2_S_PER_MM2_S;
}

/**
 * Viscosity of a blend by the cube-root rule, m²/s: ν^(1/3) = Σ x ν^(1/3). Kendall and Monroe 1917, by mass
 * after Gambill 1959, as given in handbooks. Meant for liquids of like viscosity: it is farthest off where one is a thousand
 * times the other.
 * @throws CrosscoatError `range` for a negative viscosity.
 */
export function cubeRootBlend_m2_s(liquids: readonly BlendedLiquid[]): number {
  return weightedSum(liquids, (mm2_s) => {
    checkRange({ name: 'cubeRootBlend: viscosity', value: mm2_s, low: 0, high: 1e9, unit: 'mm²/s', advice: 'give a viscosity of 0 or more' });
    return Math.cbrt(mm2_s);
  }) ** 3 * M2_S_PER_MM2_S;
}

/** What the three textbook rules make of one thinning. */
export interface ThinningGuess {
  readonly refutas_m2_s: number;
  readonly arrhenius_m2_s: number;
  readonly cubeRoot_m2_s: number;
  /** The largest of the three over the smallest. */
  readonly spreadRatio: number;
}

/**
 * A first guess of a thinned finish by all three rules. None is meant for a polymer in its thinner, which is no blend of
 * like liquids: they lie up to tenfold apart, and two cup readings go before all of them.
 * @throws CrosscoatError `range` where a rule has no value.
 */
export function thinningGuess(finish: BlendedLiquid, thinner: BlendedLiquid): ThinningGuess {
  const liquids = [finish, thinner];
  const [refutas_m2_s, arrhenius_m2_s, cubeRoot_m2_s] = [refutasBlend_m2_s(liquids), arrheniusBlend_m2_s(liquids), cubeRootBlend_m2_s(liquids)];
  const all = [refutas_m2_s, arrhenius_m2_s, cubeRoot_m2_s];
  return { refutas_m2_s, arrhenius_m2_s, cubeRoot_m2_s, spreadRatio: Math.max(...all) / Math.min(...all) };
}

function weightedSum(liquids: readonly BlendedLiquid[], of: (mm2_s: number) => number): number {
  return liquids.reduce((sum, { massFraction, viscosity_m2_s }) => sum + massFraction * of(viscosity_m2_s / M2_S_PER_MM2_S), 0);
}
