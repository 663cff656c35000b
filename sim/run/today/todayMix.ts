import { CELSIUS_0_K } from '../../base/units.ts';
import type { MixSpec } from '../../job/schema.ts';
import { cupById } from '../../materials/cups.ts';
import { finishById } from '../../materials/finishes.ts';
import { thinnerById } from '../../materials/thinners.ts';
import { changedMixSpec, genericMixSpec } from '../../mix/changedMixSpec.ts';
import { isInCupRange } from '../../mix/cups.ts';
import type { TodayQuestion } from '../../scheme/today.ts';

/**
 * The mix as a job states it. A reading that its cup cannot say is left out: the finish's own usual
 * viscosity then stands for it.
 */
export function todayMixSpec({ finish, thinner, thinnerRatio, retarderFraction, cup, seconds, liquid_K, temperature_K }: TodayQuestion): MixSpec {
  const stated = changedMixSpec(genericMixSpec(finishById(finish).id, thinnerById(thinner).id, thinnerRatio), { retarder_percent: Number((retarderFraction * 100).toFixed(2)) });
  if (seconds === null || !isInCupRange(cupById(cup), seconds)) return stated;
  return { ...stated, cup: { kind: cup, seconds, temperature_C: tidy((liquid_K ?? temperature_K) - CELSIUS_0_K) } };
}

/** Without the last digits that changing the unit leaves. */
export function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
