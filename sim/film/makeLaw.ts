import { interpolateEven } from '../base/interpolate.ts';
import type { ClassEvaporation, EvaporationLaw } from '../air/evaporationLaw.ts';
import { NODE_WIDTH, SOLIDS_NODES, type FilmLaw } from './law.ts';

/**
 * Viscosity at which a finish is dry to touch, Pa s. From memory: Z.W. Wicks, F.N. Jones,
 * S.P. Pappas, Organic Coatings, give about 1e3 for a film that resists a light touch.
 */
export const TOUCH_DRY_VISCOSITY_PA_S = 1000;

/**
 * Solids fraction at which another coat may follow. Assumed: with 18 % of solvent left a usual cross coat
 * of dope has stood about the hour that FAA AC 43.13-1B, paragraph 2-21, asks at 70 °F.
 */
export const RECOAT_FRACTION = 0.82;

/** Interaction of cellulose lacquers with their solvents (Flory and Huggins). Assumed: 0.3 to 0.5 for good solvents. */
const INTERACTION = 0.4;

/** Standard gravity, m/s². */
export const GRAVITY_M_S2 = 9.80665;

/** Nodes a kelvin of the table by temperature: vapour pressure, which grows by a twentieth a kelvin, is right to 1e-3 at the nearest. */
const NODES_PER_K = 32;

/** What a film's law is made of. */
export interface LawParts {
  readonly evaporation: EvaporationLaw;
  /** Viscosity at a solids fraction and temperature, Pa s. */
  readonly viscosity: (solidsFraction: number, temperature_K: number) => number;
  readonly density_kg_m3: number;
  readonly surfaceTension_N_m: number;
  readonly yieldStress_Pa: number;
  /** Diffusivity of the last solvent at the set solids, m²/s, and by how many powers of ten it falls per unit of solids fraction. */
  readonly setDiffusivity_m2_s: number;
  readonly diffusivityFall: number;
  /** Share of the solvent that is fast. */
  readonly fastFraction: number;
  /** Faces of the film and its backing that take heat from the air, 1 or 2, and the heat that the backing holds. */
  readonly faces: number;
  readonly backingHeat_J_m2_K: number;
  /** Angle from level, 0 to π, and the way down in the panel, counter-clockwise from +x. */
  readonly tilt_rad: number;
  readonly down_rad: number;
}

/**
 * The tables of a film.
 *
 * - activity `a(φ) = (1 - φ) exp(φ + χ φ²)`: P.J. Flory, Principles of Polymer Chemistry, 1953, for
 *   long chains (from memory), the solvents' own shares by Raoult's law on top;
 * - diffusion `D(φ) = D_set 10^(-fall (φ - φ_set))`, a straight line on a logarithmic scale between
 *   the two stages that C.M. Hansen (1970, from memory) told apart;
 * - the set point is where the viscosity reaches `TOUCH_DRY_VISCOSITY_PA_S` at the air's temperature.
 *
 * Left out: gradients inside the film, surface-tension gradients, water taken up from the air.
 */
export function makeFilmLaw(parts: LawParts): FilmLaw {
  const { evaporation } = parts;
  const temperature_K = evaporation.air.temperature_K;
  const setFraction = setPoint((solids) => parts.viscosity(solids, temperature_K));
  const alongDown = GRAVITY_M_S2 * Math.sin(parts.tilt_rad);
  return {
    bySolids: solidsTable(parts, setFraction, temperature_K),
    byTemperature: temperatureTable(parts, temperature_K),
    start_K: evaporation.start_K,
    nodesPerK: NODES_PER_K,
    fast: withVolume(evaporation.fast),
    slow: withVolume(evaporation.slow),
    fastFraction: parts.fastFraction,
    heatTransfer_W_m2_K: parts.faces * evaporation.heatTransfer_W_m2_K,
    backingHeat_J_m2_K: parts.backingHeat_J_m2_K,
    air: evaporation.air,
    density_kg_m3: parts.density_kg_m3,
    surfaceTension_N_m: parts.surfaceTension_N_m,
    yieldStress_Pa: parts.yieldStress_Pa,
    setFraction,
    recoatFraction: Math.max(RECOAT_FRACTION, setFraction),
    gravityX_m_s2: tidy(alongDown * Math.cos(parts.down_rad)),
    gravityY_m_s2: tidy(alongDown * Math.sin(parts.down_rad)),
  };
}

/** An empty class has no molar volume; any will do, as there is nothing of it. */
function withVolume(of: ClassEvaporation): ClassEvaporation {
  return of.molarVolume_m3_mol > 0 ? of : { ...of, molarVolume_m3_mol: 1e-4 };
}

/** Gravity under a billionth of g is the rounding of an angle: a level panel then runs nowhere. */
function tidy(gravity_m_s2: number): number {
  return Math.abs(gravity_m_s2) < 1e-9 * GRAVITY_M_S2 ? 0 : gravity_m_s2;
}

/** Solids fraction at which the viscosity, rising with it, reaches touch-dry; held below 0.95. */
function setPoint(viscosity: (solidsFraction: number) => number): number {
  let low = 0;
  let high = 0.95;
  for (let i = 0; i < 50; i++) {
    const middle = 0.5 * (low + high);
    if (viscosity(middle) < TOUCH_DRY_VISCOSITY_PA_S) low = middle;
    else high = middle;
  }
  return high;
}

function solidsTable(parts: LawParts, setFraction: number, temperature_K: number): Float64Array {
  const table = new Float64Array(NODE_WIDTH * (SOLIDS_NODES + 1));
  for (let node = 0; node <= SOLIDS_NODES; node++) {
    // At all solids the activity would be 0 and the last solvent would stay for ever.
    const solids = Math.min(node, SOLIDS_NODES - 0.25) / SOLIDS_NODES;
    const fall = parts.diffusivityFall * (solids - setFraction);
    table[NODE_WIDTH * node] = (1 - solids) * Math.exp(solids + INTERACTION * solids * solids);
    table[NODE_WIDTH * node + 1] = (Math.PI ** 2 / 4) * parts.setDiffusivity_m2_s * 10 ** -fall;
    table[NODE_WIDTH * node + 2] = 1 / parts.viscosity(solids, temperature_K);
  }
  return table;
}

function temperatureTable(parts: LawParts, temperature_K: number): Float64Array {
  const { fast, slow, start_K, step_K } = parts.evaporation;
  const nodes = Math.round((fast.pressureShare.length - 1) * step_K * NODES_PER_K) + 1;
  const table = new Float64Array(NODE_WIDTH * nodes);
  const warm = parts.viscosity(0, temperature_K);
  for (let node = 0; node < nodes; node++) {
    const at_K = start_K + node / NODES_PER_K;
    table[NODE_WIDTH * node] = interpolateEven(fast.pressureShare, start_K, step_K, at_K);
    table[NODE_WIDTH * node + 1] = interpolateEven(slow.pressureShare, start_K, step_K, at_K);
    table[NODE_WIDTH * node + 2] = warm / parts.viscosity(0, at_K);
  }
  return table;
}
