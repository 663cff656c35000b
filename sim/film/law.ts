import type { ClassEvaporation, EvaporationLaw } from '../air/evaporationLaw.ts';

/**
 * Everything that a wet film's minutes depend on, SI, sampled into tables so that a step over a cell
 * takes no power and no exponential. Made once for a mix, the day's air and what the film lies on.
 */
export interface FilmLaw {
  /** By solids fraction at `SOLIDS_NODES + 1` even nodes from 0 to 1, read at the nearest, three numbers a node: activity of the solvent, diffusion rate (π²/4)·D in m²/s, fluidity at `temperature_K` in 1/(Pa s). */
  readonly bySolids: Float64Array;
  /** By temperature, read at the nearest node, three numbers a node: P/p of the fast and of the slow solvents, fluidity relative to that at `temperature_K`. */
  readonly byTemperature: Float64Array;
  readonly start_K: number;
  readonly nodesPerK: number;
  readonly fast: ClassEvaporation;
  readonly slow: ClassEvaporation;
  /** Share of the solvent, as mixed, that is fast. */
  readonly fastFraction: number;
  /** Heat that the air gives for each kelvin, all faces that take it, W/(m² K). */
  readonly heatTransfer_W_m2_K: number;
  /** Heat store of what the film lies on, J/(m² K). */
  readonly backingHeat_J_m2_K: number;
  readonly air: EvaporationLaw['air'];
  readonly density_kg_m3: number;
  readonly surfaceTension_N_m: number;
  /** Shear stress below which the film stays where it is, Pa. */
  readonly yieldStress_Pa: number;
  /** Solids fraction at which the film counts as set (dry to touch). */
  readonly setFraction: number;
  /** Solids fraction at which another coat may follow. */
  readonly recoatFraction: number;
  /** Gravity along the film, from the panel's attitude: m/s² along +x and +y. */
  readonly gravityX_m_s2: number;
  readonly gravityY_m_s2: number;
}

/** Steps of the table by solids fraction; the fluidity at the nearest node is right to 0.25 %. */
export const SOLIDS_NODES = 4096;

/** Numbers a node in either table. */
export const NODE_WIDTH = 3;

/** Heat that a volume of liquid film holds, J/(m³ K). From memory: organic liquids 1.5e6 to 2.0e6. */
export const FILM_HEAT_J_M3_K = 1.8e6;

/** Viscosity from the law's tables, Pa s. */
export function viscosityOf(law: FilmLaw, solidsFraction: number, temperature_K: number): number {
  const fluidity = law.bySolids[NODE_WIDTH * Math.round(solidsFraction * SOLIDS_NODES) + 2] as number;
  const last = law.byTemperature.length / NODE_WIDTH - 1;
  const warmNode = Math.max(0, Math.min(last, Math.round((temperature_K - law.start_K) * law.nodesPerK)));
  return 1 / (fluidity * (law.byTemperature[NODE_WIDTH * warmNode + 2] as number));
}
