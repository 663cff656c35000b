import type { MixSpec } from '../../job/schema.ts';
import { solventById } from '../../materials/solvents.ts';
import type { Between } from '../../mix/between.ts';
import { changedMixSpec } from '../../mix/changedMixSpec.ts';
import { makeMix } from '../../mix/makeMix.ts';
import { batchLiquid_m3, fillPots, mixedParts, wetForDry_m, type BatchNeed } from '../../mix/mixBatch.ts';
import type { MixRatio } from '../../mix/mixRatio.ts';
import { partDensities, specRatio } from '../../mix/partDensities.ts';
import { evaporationTimeRatio, judgeRetarder } from '../../mix/retarder.ts';
import { thinnedSpec } from '../../mix/thinnedSpec.ts';
import type { ReportedMixing } from '../../report/reportedMixing.ts';
import { exactly, scaled } from '../../scheme/spread.ts';
import { planThinning, type ThinningAsked } from './planThinning.ts';

/** A coat to be mixed for: as a dry or a wet film. */
export interface BatchAsked extends Omit<BatchNeed, 'wet_m'> {
  readonly film: { readonly kind: 'dry' | 'wet'; readonly thickness_m: Between };
}

/** What is asked of a mix. */
export interface MixingAsked {
  /** How far to thin; as the mix states it where not given. */
  readonly ratio?: MixRatio;
  readonly batch?: BatchAsked;
  /** Liquid of another reckoning, in place of `batch`, m³. */
  readonly liquid_m3?: Between;
  /** What may be filled into the pot; without batch and liquid, one pot is filled. */
  readonly pot_m3?: number;
  readonly thinning?: ThinningAsked;
}

/**
 * Works a stated mix out for pouring: ratio, parts by volume and weight, cup marks, solids, films, seconds in a cup.
 * @param pointer JSON pointer of the mix, for messages.
 * @throws CrosscoatError as `makeMix`, `batchLiquid_m3`, `fillPots` and `fitThinning` do.
 */
export function planMixing(spec: MixSpec, pointer: string, asked: MixingAsked): ReportedMixing {
  const ratio = asked.ratio ?? specRatio(spec);
  const thinned = thinnedSpec(spec, ratio);
  const mix = makeMix(thinned, pointer);
  const densities = partDensities(thinned);
  const canSolids = mix.finish.volumeSolidsFraction;
  const mixedSolids = scaled(canSolids, 1 / (1 + ratio.thinnerPerFinish));
  const need = asked.batch === undefined ? null : needOf(asked.batch, canSolids, ratio);
  const liquid_m3 = need !== null ? batchLiquid_m3(need) : (asked.liquid_m3 ?? (asked.pot_m3 === undefined ? null : exactly(asked.pot_m3)));
  return {
    mix,
    ratio,
    densities,
    thinnerWords: spec.thinner.map(({ solvent, percent }) => `${solventById(solvent).name} ${Number(percent.toFixed(1))} %`).join(', '),
    retarder: retarderOf(thinned, mix.solvents, pointer),
    canSolids,
    mixedSolids,
    film: asked.batch === undefined || need === null ? null : { wet_m: need.wet_m, dry_m: asked.batch.film.kind === 'dry' ? asked.batch.film.thickness_m : dryOf(need.wet_m, mixedSolids) },
    need,
    liquid_m3,
    parts: liquid_m3 === null ? null : mixedParts(liquid_m3.value, ratio, densities),
    fill: liquid_m3 === null || asked.pot_m3 === undefined ? null : fillPots(liquid_m3.value, asked.pot_m3, ratio, densities),
    thinning: asked.thinning === undefined ? null : planThinning(spec, pointer, ratio, densities, asked.thinning),
  };
}

function needOf({ film, ...rest }: BatchAsked, canSolids: Between, { thinnerPerFinish }: MixRatio): BatchNeed {
  return { ...rest, wet_m: film.kind === 'wet' ? film.thickness_m : wetForDry_m(film.thickness_m, canSolids, thinnerPerFinish) };
}

function dryOf(wet_m: Between, solids: Between): Between {
  return { value: wet_m.value * solids.value, low: wet_m.low * solids.low, high: wet_m.high * solids.high };
}

function retarderOf(spec: MixSpec, solvents: Parameters<typeof evaporationTimeRatio>[0], pointer: string): ReportedMixing['retarder'] {
  if (spec.retarder === undefined || spec.thinnerPerFinish === 0) return null;
  const without = makeMix(changedMixSpec(spec, { retarder_percent: 0 }), pointer);
  return { name: solventById(spec.retarder.solvent).name, judgement: judgeRetarder(spec.retarder.percent / 100), timeRatio: evaporationTimeRatio(solvents, without.solvents) };
}
