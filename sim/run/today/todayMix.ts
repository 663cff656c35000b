import { CELSIUS_0_K } from '../../base/units.ts';
import type { MixSpec } from '../../job/schema.ts';
import { cupById } from '../../materials/cups.ts';
import { finishById } from '../../materials/finishes.ts';
import { thinnerById } from '../../materials/thinners.ts';
import { changedMixSpec, genericMixSpec } from '../../mix/changedMixSpec.ts';
import { cupTime } from '../../mix/cupTime.ts';
import { cupSeconds, isInCupRange } from '../../mix/cups.ts';
import type { TodayQuestion, TodayThinning } from '../../scheme/today.ts';

/** The finish thinned so far, as a job states it, of no cup reading. */
export function todayMixSpec({ finish, thinner, retarderFraction }: TodayQuestion, thinnerRatio: number): MixSpec {
  return changedMixSpec(genericMixSpec(finishById(finish).id, thinnerById(thinner).id, thinnerRatio), { retarder_percent: Number((retarderFraction * 100).toFixed(2)) });
}

/**
 * The mix that was read. A reading that its cup cannot say is left out: the finish's own usual
 * viscosity then stands for it.
 */
export function readMixSpec(question: TodayQuestion, thinnerRatio: number): MixSpec {
  const { cup, seconds } = question;
  const stated = todayMixSpec(question, thinnerRatio);
  return seconds === null || !isInCupRange(cupById(cup), seconds) ? stated : { ...stated, cup: readingOf(question, cup, seconds) };
}

/** The mix as sprayed. Where it is thinned from the one that was read, by what the thinning law says that its cup would read. */
export function sprayedMixSpec(question: TodayQuestion, { thinnerRatio, sprayed, sprayCup }: TodayThinning): MixSpec {
  const read = readMixSpec(question, thinnerRatio);
  if (sprayed.thinnerRatio === thinnerRatio) return read;
  const stated = todayMixSpec(question, sprayed.thinnerRatio);
  const { fitting } = cupTime(sprayCup, sprayed.viscosity_m2_s);
  if (read.cup === undefined || fitting === null) return stated;
  return { ...stated, cup: readingOf(question, fitting.id, cupSeconds(fitting, sprayed.viscosity_m2_s)) };
}

function readingOf({ liquid_K, temperature_K }: TodayQuestion, kind: string, seconds: number): NonNullable<MixSpec['cup']> {
  return { kind, seconds: tidy(seconds), temperature_C: tidy((liquid_K ?? temperature_K) - CELSIUS_0_K) };
}

/** Without the last digits that changing the unit leaves. */
export function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
