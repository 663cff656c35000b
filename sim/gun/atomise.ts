import { capAirSpeed_m_s } from './jet.ts';

/** A liquid broken up by air. */
export interface Atomising {
  /** Air speed at the cap. */
  readonly airSpeed_m_s: number;
  /** Air mass over liquid mass. */
  readonly airLiquidRatio: number;
  /** Opening of the nozzle. */
  readonly nozzle_m: number;
  readonly density_kg_m3: number;
  readonly surfaceTension_N_m: number;
  readonly viscosity_Pa_s: number;
}

/** Density of air, kg/m³. */
const AIR_DENSITY_KG_M3 = 1.204;

/**
 * Sauter mean drop of a plain-jet airblast atomiser, m, after N.K. Rizk and A.H. Lefebvre, 1984:
 * `d32/d0 = 0.48 (σ/(ρ_A U² d0))^0.4 (1 + 1/ALR)^0.4 + 0.15 (µ²/(σ ρ d0))^0.5 (1 + 1/ALR)`
 * (from memory, as given in A.H. Lefebvre, Atomization and Sprays, 1989).
 *
 * Made for fuel nozzles, it overshoots measured paint sprays two to three times, since the fan's jets
 * break drops again: only its ratios are used.
 */
export function airblastDrop_m(of: Atomising): number {
  const { airSpeed_m_s, airLiquidRatio, nozzle_m, density_kg_m3, surfaceTension_N_m, viscosity_Pa_s } = of;
  const lean = 1 + 1 / airLiquidRatio;
  const torn = 0.48 * (surfaceTension_N_m / (AIR_DENSITY_KG_M3 * airSpeed_m_s ** 2 * nozzle_m)) ** 0.4 * lean ** 0.4;
  const drawn = 0.15 * Math.sqrt(viscosity_Pa_s ** 2 / (surfaceTension_N_m * density_kg_m3 * nozzle_m)) * lean;
  return nozzle_m * (torn + drawn);
}

/** Air that a hand-held gun blows at its stated pressure, m³/s. Assumed: 300 L/min. */
const AIR_FLOW_M3_S = 5e-3;
/** Assumed: a 1.4 mm nozzle. */
const NOZZLE_M = 1.4e-3;

/** A gun at work: what the drops answer to. */
export interface Spraying {
  readonly capPressure_Pa: number;
  readonly fluidRate_m3_s: number;
  readonly density_kg_m3: number;
  readonly surfaceTension_N_m: number;
  readonly viscosity_Pa_s: number;
}

/**
 * By how much the mean drop differs from what it was when it was stated: coarser for a thicker or
 * colder liquid and for more of it, finer for more air. The air's flow is taken to grow with its speed.
 * @returns a ratio above 0, 1 where the two are alike.
 */
export function dropRatio(now: Spraying, stated: Spraying): number {
  return airblastDrop_m(atomisingOf(now)) / airblastDrop_m(atomisingOf(stated));
}

/** Air speed at which a gun is taken to blow `AIR_FLOW_M3_S`: that of 55 kPa at the cap. */
const USUAL_AIR_SPEED_M_S = capAirSpeed_m_s(55e3);

function atomisingOf({ capPressure_Pa, fluidRate_m3_s, ...liquid }: Spraying): Atomising {
  const airSpeed_m_s = capAirSpeed_m_s(capPressure_Pa);
  const air_kg_s = (AIR_FLOW_M3_S * airSpeed_m_s * AIR_DENSITY_KG_M3) / USUAL_AIR_SPEED_M_S;
  return { ...liquid, airSpeed_m_s, airLiquidRatio: air_kg_s / (fluidRate_m3_s * liquid.density_kg_m3), nozzle_m: NOZZLE_M };
}
