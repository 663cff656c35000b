import type { MixSpec } from '../job/schema.ts';
import { blendDensity_kg_m3 } from '../materials/blend.ts';
import { finishById } from '../materials/finishes.ts';
import { solventById } from '../materials/solvents.ts';
import type { MixRatio, PartDensities } from './mixRatio.ts';

/**
 * Densities of the finish as it comes in the can, of the thinner and of the retarder of a stated mix, at 20 °C, from
 * the generic finish and the solvents' handbook values. Volumes add.
 * @throws CrosscoatError `schema` for an unknown finish or solvent.
 */
export function partDensities(spec: MixSpec): PartDensities {
  const thinner_kg_m3 = blendDensity_kg_m3(spec.thinner.map(({ solvent, percent }) => ({ solvent: solventById(solvent), volumeFraction: percent / 100 })));
  return {
    finish_kg_m3: finishById(spec.finish).liquidDensity_kg_m3,
    thinner_kg_m3,
    retarder_kg_m3: spec.retarder === undefined ? thinner_kg_m3 : solventById(spec.retarder.solvent).density_kg_m3.value,
  };
}

/** How far a stated mix is thinned. */
export function specRatio({ thinnerPerFinish, retarder }: MixSpec): MixRatio {
  return { thinnerPerFinish, retarderFraction: retarder === undefined ? 0 : retarder.percent / 100 };
}
