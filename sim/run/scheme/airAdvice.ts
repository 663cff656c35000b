import type { AirAdvice } from '../../air/airAdvice.ts';
import { airAnswer, type RetardedMix } from '../../air/airAnswer.ts';
import { airAt, airByHour, type AirByHour } from '../../air/airByHour.ts';
import { dayVerdicts, recheckAfter } from '../../air/dayVerdicts.ts';
import { makeAir, type MoistAir } from '../../air/moistAir.ts';
import { remedies } from '../../air/remedies.ts';
import { CELSIUS_0_K } from '../../base/units.ts';
import type { AirSpec, HourSpec, MixSpec } from '../../job/schema.ts';
import { solventById } from '../../materials/solvents.ts';
import { changedMixSpec, USUAL_RETARDER } from '../../mix/changedMixSpec.ts';
import { makeMix } from '../../mix/makeMix.ts';

/** Shares of the thinner that are tried as retarder, %: steps of 5 up to the most that is thought well of. */
export const RETARDER_STEPS_percent = [5, 10, 15, 20, 25] as const;

/** What is asked of the room. */
export interface AirAdviceQuestion {
  readonly air: AirSpec;
  readonly mix: MixSpec;
  /** JSON pointer of the mix, for messages. */
  readonly pointer: string;
  readonly faces: 1 | 2;
  readonly surface_K: number | null;
  readonly hours: readonly HourSpec[];
  /** The air is that of this minute of the day; null: that of `air`, now. */
  readonly minute: number | null;
  /** Shares that `answer.retarders` shows, %. */
  readonly shown_percent?: readonly number[];
}

/**
 * The verdict on the room, what would turn it, and the day by the hour.
 * @throws what `makeAir`, `makeMix` and `airByHour` throw; `airByHour` is asked only where there are hours or a minute is named.
 */
export function airAdvice(question: AirAdviceQuestion): AirAdvice {
  const { air: spec, mix: mixSpec, pointer, faces, surface_K, hours, minute } = question;
  const day = hours.length === 0 && minute === null ? null : airByHour(hours, spec);
  const there = airThere(day, spec, minute);
  const mix = makeMix(mixSpec, pointer);
  const ceiling_K = spec.ceiling_C + CELSIUS_0_K;
  const retarded = retardedMixes(mixSpec, pointer, RETARDER_STEPS_percent);
  const shown = retardedMixes(mixSpec, pointer, question.shown_percent ?? RETARDER_STEPS_percent);
  const answer = airAnswer(there.air, { mix, faces, ceiling_K, retarded: shown });
  const verdicts = day === null ? null : dayVerdicts(day, { mix, faces, ceiling_K });
  // Without a time of its own the room as typed may be of any hour, so all of them may be waited for.
  const later = verdicts?.hours.filter((hour) => minute === null || hour.minute > minute) ?? [];
  return { answer, remedies: remedies({ answer, surface_K, retarded, later }), day: verdicts, minute, held: there.held, recheck: verdicts === null || minute === null ? null : recheckAfter(verdicts, minute) };
}

function airThere(day: AirByHour | null, spec: AirSpec, minute: number | null): { readonly air: MoistAir; readonly held: 'before' | 'after' | null } {
  if (day === null || minute === null) return { air: makeAir(spec, '/air'), held: null };
  return airAt(day, minute);
}

/** The mix with more retarder than it has; none where it is not thinned. */
export function retardedMixes(spec: MixSpec, pointer: string, shares_percent: readonly number[]): RetardedMix[] {
  const retarder = spec.retarder?.solvent ?? USUAL_RETARDER;
  const stated = spec.thinnerPerFinish === 0 ? [] : shares_percent.filter((percent) => percent > (spec.retarder?.percent ?? 0));
  return stated.map((percent) => ({
    retarder: solventById(retarder).name,
    retarderFraction: percent / 100,
    mix: makeMix(changedMixSpec(spec, { retarder_percent: percent }), pointer),
  }));
}
