import { airAnswer } from '../../air/airAnswer.ts';
import type { MoistAir } from '../../air/moistAir.ts';
import type { MixSpec } from '../../job/schema.ts';
import { solventById } from '../../materials/solvents.ts';
import { changedMixSpec, USUAL_RETARDER } from '../../mix/changedMixSpec.ts';
import { makeMix } from '../../mix/makeMix.ts';
import { evaporationTimeRatio, judgeRetarder, type RetarderJudgement } from '../../mix/retarder.ts';

/** What one share of retarder does to a mix in this air. */
export interface RetarderStep {
  /** Share of the thinner, 0 to 1. */
  readonly fraction: number;
  readonly judgement: RetarderJudgement;
  /** Film less dew point, K: below 0 water can fall into it. */
  readonly blushMargin_K: number;
  /** Time that the solvents take over that without retarder. */
  readonly timeRatio: number;
}

/** From none to the most that practice allows. */
const SHARES_percent = [0, 5, 10, 15, 20, 25] as const;

/**
 * Blush margin and time against the share of retarder, from none to 25 % of the thinner; the mix's own retarder, else n-butyl alcohol.
 * Empty where the mix is not thinned, as there is no thinner to take it out of.
 * @throws CrosscoatError as `makeMix` does.
 */
export function retarderSteps(spec: MixSpec, pointer: string, air: MoistAir, faces: 1 | 2, ceiling_K: number): RetarderStep[] {
  if (spec.thinnerPerFinish === 0) return [];
  const retarder = spec.retarder?.solvent ?? USUAL_RETARDER;
  const [without, ...mixes] = SHARES_percent.map((percent) => makeMix(changedMixSpec(spec, { retarder, retarder_percent: percent }), pointer));
  if (without === undefined) return [];
  const retarded = mixes.map((mix) => ({ retarder: solventById(retarder).name, retarderFraction: mix.retarderFraction, mix }));
  const { blushMargin_K, retarders } = airAnswer(air, { mix: without, faces, ceiling_K, retarded });
  return [
    { fraction: 0, judgement: judgeRetarder(0), blushMargin_K, timeRatio: 1 },
    ...retarders.map((tried, i) => ({ fraction: tried.retarderFraction, judgement: judgeRetarder(tried.retarderFraction), blushMargin_K: tried.blushMargin_K, timeRatio: evaporationTimeRatio(mixes[i]?.solvents ?? [], without.solvents) })),
  ];
}
