import { CELSIUS_0_K } from '../base/units.ts';
import type { Sourced } from './sourced.ts';

const GAS_CONSTANT_J_mol_K = 8.314462618;
/** Below this an Antoine law's denominator nears zero; the pressure there is nothing. */
const LEAST_DENOMINATOR_K = 5;

/**
 * Vapour pressure against temperature.
 * `antoine`: ln P[Pa] = a - b/(c + t), t in °C, b and c in °C, whatever logarithm and unit the
 * source used (converted where it is stated).
 * `reference`: one pressure and the latent heat (Clausius-Clapeyron, latent heat held constant).
 */
export type VapourPressureLaw =
  | { readonly kind: 'antoine'; readonly a: number; readonly b: number; readonly c: number; readonly source: string }
  | { readonly kind: 'reference'; readonly pressure_Pa: number; readonly temperature_K: number; readonly source: string };

/** A solvent of lacquers and dopes. */
export interface Solvent {
  readonly id: string;
  readonly name: string;
  readonly molarMass_kg_mol: number;
  /** Liquid at 20 °C. */
  readonly density_kg_m3: Sourced;
  readonly vapourPressure: VapourPressureLaw;
  /** At 25 °C, taken as constant. */
  readonly latentHeat_J_mol: Sourced;
  /** For the Fuller equation. */
  readonly diffusionVolume_cm3_mol: number;
  /** By volume, n-butyl acetate = 1. */
  readonly relativeEvaporation: Sourced;
  /** Closed cup. */
  readonly flashPoint_K: Sourced;
  /** Lower explosive limit in air by volume: the lower of the two published, 0 to 1. */
  readonly lowerExplosiveFraction: Sourced;
  /** Eight-hour limits in air, parts per million; null where none is set or known here. */
  readonly oshaPel_ppm: Sourced | null;
  readonly acgihTlv_ppm: Sourced | null;
}

/**
 * Pressure of the saturated vapour over the pure liquid, Pa, from about 220 K to the boiling
 * point. An Antoine law is used outside its fitted range where the table says so, and falls to 0
 * far below it.
 */
export function vapourPressure_Pa(solvent: Solvent, temperature_K: number): number {
  const law = solvent.vapourPressure;
  if (law.kind === 'reference') {
    const slope_K = solvent.latentHeat_J_mol.value / GAS_CONSTANT_J_mol_K;
    return law.pressure_Pa * Math.exp(slope_K * (1 / law.temperature_K - 1 / temperature_K));
  }
  const denominator_K = law.c + temperature_K - CELSIUS_0_K;
  return denominator_K < LEAST_DENOMINATOR_K ? 0 : Math.exp(law.a - law.b / denominator_K);
}

/** Volume of one mole of the liquid at 20 °C, m³/mol. */
export function molarVolume_m3_mol(solvent: Solvent): number {
  return solvent.molarMass_kg_mol / solvent.density_kg_m3.value;
}
