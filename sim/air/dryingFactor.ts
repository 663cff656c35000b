import { CELSIUS_0_K } from '../base/units.ts';
import { moleFractions, type MolePart } from '../materials/blend.ts';
import { molarVolume_m3_mol, vapourPressure_Pa } from '../materials/solvent.ts';
import type { MixSolvent } from '../mix/mix.ts';
import { filmTemperature_K, stefanDrive } from './filmTemperature.ts';
import { massTransfer_m_s, molarDensity_mol_m3 } from './gasTransfer.ts';
import type { MoistAir } from './moistAir.ts';

/** Temperature at which the trade states its waits: 70 °F, 21.1 °C. */
export const RULE_TEMPERATURE_K = (70 - 32) / 1.8 + CELSIUS_0_K;

/** How much longer a wait is today than at 70 °F: by the trade's rule, and by the first evaporation of this mix. */
export interface DryingFactor {
  readonly ruleRatio: number;
  readonly modelRatio: number;
}

/**
 * The trade's rule, 2^((70 − T)/10) with T in °F: waits double for each 10 °F below 70 and halve
 * above. AC 43.13-1B 2-21 says "by 100 percent" for each 10 °F; doubling and halving is the
 * sensible reading of it.
 */
export function ruleDryingRatio(temperature_K: number): number {
  return 2 ** (((RULE_TEMPERATURE_K - temperature_K) * 1.8) / 10);
}

/**
 * Liquid that leaves a square metre of fresh film of a blend, m/s: each solvent in ideal solution
 * at the film's temperature.
 */
export function evaporation_m_s(air: MoistAir, moles: readonly MolePart[], film_K: number): number {
  const density_mol_m3 = molarDensity_mol_m3(air.temperature_K, air.pressure_Pa);
  return moles.reduce((sum, { solvent, moleFraction }) => {
    const share = (moleFraction * vapourPressure_Pa(solvent, film_K)) / air.pressure_Pa;
    return sum + molarVolume_m3_mol(solvent) * massTransfer_m_s(air, solvent) * density_mol_m3 * stefanDrive(share);
  }, 0);
}

/**
 * Both factors for a blend of solvents. The model's own: what leaves the fresh film at 70 °F over
 * what leaves it today, self-cooling included, with the same air speed and pressure. It knows
 * nothing of the slow loss from a set film, which the rule covers too.
 */
export function dryingFactor(air: MoistAir, solvents: readonly MixSolvent[], faces: 1 | 2): DryingFactor {
  const moles = moleFractions(solvents);
  const rate_m_s = (today: MoistAir) => evaporation_m_s(today, moles, filmTemperature_K(today, moles, faces));
  return {
    ruleRatio: ruleDryingRatio(air.temperature_K),
    modelRatio: rate_m_s({ ...air, temperature_K: RULE_TEMPERATURE_K }) / rate_m_s(air),
  };
}
