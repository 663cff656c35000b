import { moleFractions, type MolePart } from '../materials/blend.ts';
import { vapourPressure_Pa } from '../materials/solvent.ts';
import type { SolventClass } from '../mix/mix.ts';
import { heatTransfer_W_m2_K, massTransfer_m_s, molarDensity_mol_m3 } from './gasTransfer.ts';
import type { MoistAir } from './moistAir.ts';

const START_K = 230;
const END_K = 340;
const STEP_K = 0.25;
const NODES = Math.round((END_K - START_K) / STEP_K) + 1;

/** How one class of solvents leaves a film. An empty class leaves nothing: its rate is 0. */
export interface ClassEvaporation {
  /** Of the class as mixed. */
  readonly molarVolume_m3_mol: number;
  /** Heat that a volume of the liquid takes as it evaporates. */
  readonly latentHeat_J_m3: number;
  /** Liquid volume flux per unit of −ln(1 − y), y = x_i a P_i(T)/p, m/s. */
  readonly rate_m_s: number;
  /** P(T)/p of the class at even nodes of temperature, mole-weighted within the class. */
  readonly pressureShare: Float64Array;
}

/** All that the film needs to dry in this air: tables, no calls. */
export interface EvaporationLaw {
  /** First node of temperature, K. */
  readonly start_K: number;
  /** From node to node, K. */
  readonly step_K: number;
  readonly fast: ClassEvaporation;
  readonly slow: ClassEvaporation;
  /** To one face. */
  readonly heatTransfer_W_m2_K: number;
  readonly air: MoistAir;
}

/**
 * Evaporation of a mix's two classes from a panel in this air: laminar air over 0.3 m at no less
 * than 0.1 m/s, properties at the air's temperature, ideal solution. Nodes every 0.25 K from 230
 * to 340 K. Within a class the solvents keep their proportions; its transfer coefficient is
 * weighted by how much each gives off at the air's temperature.
 */
export function evaporationLaw(air: MoistAir, mix: { readonly fast: SolventClass; readonly slow: SolventClass }): EvaporationLaw {
  return {
    start_K: START_K,
    step_K: STEP_K,
    fast: classEvaporation(air, mix.fast),
    slow: classEvaporation(air, mix.slow),
    heatTransfer_W_m2_K: heatTransfer_W_m2_K(air),
    air,
  };
}

function classEvaporation(air: MoistAir, { parts, molarVolume_m3_mol }: SolventClass): ClassEvaporation {
  const pressureShare = new Float64Array(NODES);
  if (parts.length === 0) return { molarVolume_m3_mol: 0, latentHeat_J_m3: 0, rate_m_s: 0, pressureShare };
  const moles = moleFractions(parts);
  for (let node = 0; node < NODES; node++) {
    pressureShare[node] = classPressure_Pa(moles, START_K + node * STEP_K) / air.pressure_Pa;
  }
  const given = moles.map(({ solvent, moleFraction }) => moleFraction * vapourPressure_Pa(solvent, air.temperature_K));
  const transfer_m_s =
    moles.reduce((sum, { solvent }, i) => sum + (given[i] as number) * massTransfer_m_s(air, solvent), 0) / given.reduce((sum, each) => sum + each, 0);
  return {
    molarVolume_m3_mol,
    latentHeat_J_m3: moles.reduce((sum, { solvent, moleFraction }) => sum + moleFraction * solvent.latentHeat_J_mol.value, 0) / molarVolume_m3_mol,
    rate_m_s: molarVolume_m3_mol * transfer_m_s * molarDensity_mol_m3(air.temperature_K, air.pressure_Pa),
    pressureShare,
  };
}

function classPressure_Pa(moles: readonly MolePart[], temperature_K: number): number {
  return moles.reduce((sum, { solvent, moleFraction }) => sum + moleFraction * vapourPressure_Pa(solvent, temperature_K), 0);
}

/** P(T)/p of a class between the nodes, linear; held at the ends outside 230 to 340 K. */
export function pressureShareAt(law: EvaporationLaw, of: ClassEvaporation, temperature_K: number): number {
  const at = Math.min(Math.max((temperature_K - law.start_K) / law.step_K, 0), of.pressureShare.length - 1);
  const node = Math.min(Math.floor(at), of.pressureShare.length - 2);
  const below = of.pressureShare[node] as number;
  return below + ((of.pressureShare[node + 1] as number) - below) * (at - node);
}
