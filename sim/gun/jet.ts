/** Ratio of specific heats and gas constant of dry air, J/(kg K). */
const HEAT_RATIO = 1.4;
const AIR_GAS_J_KG_K = 287.05;

/** Widest opening that the air at a cap can be counted as, m. Assumed: a round jet of 3 mm. */
export const JET_DIAMETER_M = 0.003;
/** Length of a round jet's core in diameters; beyond it the middle slows as one over the distance. From memory: N. Rajaratnam, Turbulent Jets, 1976 (5.8 to 6.6 in texts). */
const CORE_DIAMETERS = 6.2;

/**
 * Speed of air that leaves a cap, m/s: an isentropic nozzle, at most the speed of sound,
 * `M = √(5((p0/p)^(2/7) - 1))`, `U = M √(1.4 R T0/(1 + 0.2 M²))`.
 * @param pressure_Pa air pressure at the cap above the room's, 0 or more.
 * @param room_Pa pressure of the room. @param temperature_K of the air in the hose.
 */
export function capAirSpeed_m_s(pressure_Pa: number, room_Pa = 101325, temperature_K = 293.15): number {
  const mach = Math.min(1, Math.sqrt(5 * ((1 + pressure_Pa / room_Pa) ** (2 / 7) - 1)));
  return mach * Math.sqrt((HEAT_RATIO * AIR_GAS_J_KG_K * temperature_K) / (1 + 0.2 * mach * mach));
}

/**
 * Speed in the middle of the jet at a distance from the cap, m/s: `6.2 U0 d/x` beyond the core. A fan's
 * flat jet slows faster, so this is an upper bound and an order of magnitude.
 */
export function jetSpeed_m_s(capSpeed_m_s: number, distance_m: number): number {
  return capSpeed_m_s * Math.min(1, (CORE_DIAMETERS * JET_DIAMETER_M) / distance_m);
}
