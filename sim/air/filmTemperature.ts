import type { MolePart } from '../materials/blend.ts';
import { vapourPressure_Pa } from '../materials/solvent.ts';
import { AIR_HEAT_J_mol_K, airDiffusivity_m2_s, vapourDiffusivity_m2_s } from './gasTransfer.ts';
import type { MoistAir } from './moistAir.ts';
import { saturationPressure_Pa } from './psychrometrics.ts';

/** No film of these solvents cools farther than this below the air. */
const DEEPEST_K = 100;
/** Bisection: 100 K halved so often is 1e-7 K. */
const HALVINGS = 30;
/** A share of vapour this near 1 boils; the balance is capped there. */
const MOST_SHARE = 1 - 1e-9;

/**
 * −ln(1 − y): what drives the vapour away through the air that it must push aside (Stefan), where
 * y is its share at the film.
 */
export function stefanDrive(share: number): number {
  return -Math.log1p(-Math.min(share, MOST_SHARE));
}

/**
 * Temperature of a wet film that takes all its heat of evaporation from the air, K: the wet-bulb
 * balance for solvents (W. K. Lewis, Trans. ASME 44, 1922), by bisection to 1e-6 K:
 * m (T_air − T_f) = Σ ΔH_i / (c_p Le_i^⅔) · (−ln(1 − x_i P_i(T_f)/p)).
 * Ideal solution, no vapour in the room's air, the whole blend still there; no radiation and no
 * heat from what lies beneath, so a lower bound. The air's speed drops out.
 * @param solvents mole fractions that add to 1.
 * @param faces that take heat: 1 backed, 2 open cloth (it evaporates from one).
 */
export function filmTemperature_K(air: MoistAir, solvents: readonly MolePart[], faces: 1 | 2): number {
  const { temperature_K, pressure_Pa } = air;
  const thermal_m2_s = airDiffusivity_m2_s(temperature_K, pressure_Pa);
  const terms = solvents.map(({ solvent, moleFraction }) => ({
    solvent,
    moleFraction,
    cooling_K: solvent.latentHeat_J_mol.value / (AIR_HEAT_J_mol_K * (thermal_m2_s / vapourDiffusivity_m2_s(solvent, temperature_K, pressure_Pa)) ** (2 / 3)),
  }));
  const surplus_K = (film_K: number) =>
    terms.reduce(
      (left, { solvent, moleFraction, cooling_K }) => left - cooling_K * stefanDrive((moleFraction * vapourPressure_Pa(solvent, film_K)) / pressure_Pa),
      faces * (temperature_K - film_K),
    );
  let low_K = temperature_K - DEEPEST_K;
  let high_K = temperature_K;
  for (let i = 0; i < HALVINGS; i++) {
    const middle_K = (low_K + high_K) / 2;
    // Colder than the balance, the film gains heat.
    if (surplus_K(middle_K) > 0) low_K = middle_K;
    else high_K = middle_K;
  }
  return (low_K + high_K) / 2;
}

/** Relative humidity of this air at which its dew point is the film's temperature: above it the film can blush. */
export function criticalHumidityFraction(air: MoistAir, film_K: number): number {
  return saturationPressure_Pa(film_K) / saturationPressure_Pa(air.temperature_K);
}
