import type { MixSpec } from '../job/schema.ts';
import { changedMixSpec, USUAL_RETARDER } from './changedMixSpec.ts';
import type { MixRatio } from './mixRatio.ts';
import { specRatio } from './partDensities.ts';

/** Nothing that anybody pours differs by less. */
const SAME = 1e-9;

/** A stated mix thinned by a ratio; its cup reading is kept where the ratio is its own, and dropped where it is another. */
export function thinnedSpec(spec: MixSpec, { thinnerPerFinish, retarderFraction }: MixRatio): MixSpec {
  const own = specRatio(spec);
  if (Math.abs(own.thinnerPerFinish - thinnerPerFinish) < SAME && Math.abs(own.retarderFraction - retarderFraction) < SAME) return spec;
  const percent = Number((retarderFraction * 100).toPrecision(12));
  return changedMixSpec(spec, { thinnerPerFinish, retarder_percent: percent, retarder: spec.retarder?.solvent ?? USUAL_RETARDER });
}
