import type { Solvent } from '../materials/solvent.ts';

const GAS_CONSTANT_J_mol_K = 8.314462618;
const STANDARD_PRESSURE_Pa = 101325;
/** Dry air. */
const AIR_kg_mol = 28.96e-3;
/** Of air, for the Fuller equation, cm³/mol (Fuller et al., from memory). */
const AIR_VOLUME_cm3_mol = 19.7;
/** Heat capacity of air by the mole; from memory. */
export const AIR_HEAT_J_mol_K = 29.1;
/** Thermal diffusivity of air at 20 °C and one atmosphere, growing as T^1.81; from memory. */
const AIR_DIFFUSIVITY_m2_s = 2.14e-5;
const AIR_DIFFUSIVITY_POWER = 1.81;
/** Sutherland's law for air; from memory. */
const SUTHERLAND_Pa_s = 1.716e-5;
const SUTHERLAND_T_K = 273.15;
const SUTHERLAND_S_K = 110.4;

/** Assumed: length of panel over which the air has run when it reaches a place, between the start of a layer and a whole wing. */
export const PLATE_LENGTH_m = 0.3;
/** Assumed: natural convection beside a chilled film moves the air at least so fast. */
export const LEAST_AIR_SPEED_m_s = 0.1;

/** Moles of gas in a volume, mol/m³. */
export function molarDensity_mol_m3(temperature_K: number, pressure_Pa: number): number {
  return pressure_Pa / (GAS_CONSTANT_J_mol_K * temperature_K);
}

/** Kinematic viscosity of dry air, m²/s. */
export function airViscosity_m2_s(temperature_K: number, pressure_Pa: number): number {
  const dynamic_Pa_s = (SUTHERLAND_Pa_s * (temperature_K / SUTHERLAND_T_K) ** 1.5 * (SUTHERLAND_T_K + SUTHERLAND_S_K)) / (temperature_K + SUTHERLAND_S_K);
  return dynamic_Pa_s / (molarDensity_mol_m3(temperature_K, pressure_Pa) * AIR_kg_mol);
}

/** Thermal diffusivity of dry air, m²/s. */
export function airDiffusivity_m2_s(temperature_K: number, pressure_Pa: number): number {
  return ((AIR_DIFFUSIVITY_m2_s * STANDARD_PRESSURE_Pa) / pressure_Pa) * (temperature_K / 293.15) ** AIR_DIFFUSIVITY_POWER;
}

/** Diffusivity of a vapour from its molar mass and diffusion volume: see `vapourDiffusivity_m2_s`. */
export function fullerDiffusivity_m2_s(molarMass_kg_mol: number, volume_cm3_mol: number, temperature_K: number, pressure_Pa: number): number {
  const mass_g_mol = 2000 / (1 / molarMass_kg_mol + 1 / AIR_kg_mol);
  const size = Math.cbrt(volume_cm3_mol) + Math.cbrt(AIR_VOLUME_cm3_mol);
  const pressure_bar = pressure_Pa * 1e-5;
  return (0.00143e-4 * temperature_K ** 1.75) / (pressure_bar * Math.sqrt(mass_g_mol) * size ** 2);
}

/**
 * Diffusivity of a solvent's vapour in air, m²/s, to 5 or 10 %: Fuller, Schettler and Giddings
 * 1966; Fuller, Ensley and Giddings 1969, in the form of Poling, Prausnitz and O'Connell (2001),
 * eq. 11-4.4: D[cm²/s] = 0.00143 T^1.75 / (p[bar] √M (v_A^⅓ + v_B^⅓)²), M = 2/(1/M_A + 1/M_B) in g/mol.
 */
export function vapourDiffusivity_m2_s(solvent: Solvent, temperature_K: number, pressure_Pa: number): number {
  return fullerDiffusivity_m2_s(solvent.molarMass_kg_mol, solvent.diffusionVolume_cm3_mol, temperature_K, pressure_Pa);
}

/**
 * Transfer coefficient of laminar air along a flat plate, mean over its length, m/s:
 * Sh = k L/D = 0.664 Re^½ Sc^⅓ (Pohlhausen 1921; in Bird, Stewart and Lightfoot, and in Incropera
 * and DeWitt; from memory), for Reynolds numbers below 5e5. With a thermal diffusivity in place of
 * `diffusivity_m2_s` it gives heat transfer over the heat capacity by volume (Chilton and Colburn 1934).
 */
export function laminarTransfer_m_s(diffusivity_m2_s: number, viscosity_m2_s: number, speed_m_s: number, length_m: number): number {
  const reynolds = (speed_m_s * length_m) / viscosity_m2_s;
  return ((0.664 * diffusivity_m2_s) / length_m) * Math.sqrt(reynolds) * Math.cbrt(viscosity_m2_s / diffusivity_m2_s);
}

/** Air for transfer: what it is like and how fast it moves. */
export interface MovingAir {
  readonly temperature_K: number;
  readonly pressure_Pa: number;
  readonly speed_m_s: number;
}

/** Transfer coefficient of anything of that diffusivity in moving air over a panel, m/s. */
function panelTransfer_m_s(air: MovingAir, diffusivity_m2_s: number): number {
  const speed_m_s = Math.max(air.speed_m_s, LEAST_AIR_SPEED_m_s);
  return laminarTransfer_m_s(diffusivity_m2_s, airViscosity_m2_s(air.temperature_K, air.pressure_Pa), speed_m_s, PLATE_LENGTH_m);
}

/** Mass-transfer coefficient of a solvent's vapour from a panel, m/s; properties at the air's temperature. */
export function massTransfer_m_s(air: MovingAir, solvent: Solvent): number {
  return panelTransfer_m_s(air, vapourDiffusivity_m2_s(solvent, air.temperature_K, air.pressure_Pa));
}

/** Heat-transfer coefficient from the air to one face of a panel, W/(m² K). Radiation is left out. */
export function heatTransfer_W_m2_K(air: MovingAir): number {
  const heat_J_m3_K = AIR_HEAT_J_mol_K * molarDensity_mol_m3(air.temperature_K, air.pressure_Pa);
  return heat_J_m3_K * panelTransfer_m_s(air, airDiffusivity_m2_s(air.temperature_K, air.pressure_Pa));
}
