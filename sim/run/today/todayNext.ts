import { CIRCULAR_WAITS_H } from '../../materials/circularWaits.ts';
import type { DryingFactor } from '../../air/dryingFactor.ts';
import type { MoistAir } from '../../air/moistAir.ts';
import type { Mix } from '../../mix/mix.ts';
import type { TodayFilm, TodayNext, TodayQuestion, TodayWait } from '../../scheme/today.ts';
import { filmLawOf } from '../filmLaw.ts';
import { dryEvenFilm, LONGEST_DRYING_S } from '../scheme/evenFilm.ts';

const HOUR_S = 3600;

const CIRCULAR = 'FAA AC 43.13-1B, paragraph 2-21';

interface StatedWaits {
  readonly coat?: readonly [hours: number, source: string];
  readonly sand?: readonly [hours: number, source: string];
  readonly dissolves: boolean;
}

/**
 * Waits that the trade states for 70 °F, by finish. The circular gives none between colour coats, which
 * are to be "dried"; for other finishes it says nothing. A lacquer-type finish is dissolved by the next
 * coat of the same for good; enamel and primer cure, and their sheets name a time.
 */
const STATED: Readonly<Record<string, StatedWaits>> = {
  'clear-dope': { coat: [CIRCULAR_WAITS_H.thirdClear, `${CIRCULAR}f, before and after the third clear coat`], dissolves: true },
  'aluminium-dope': { coat: [CIRCULAR_WAITS_H.betweenAluminium, `${CIRCULAR}g, between the two aluminium coats`], sand: [CIRCULAR_WAITS_H.beforeSanding, `${CIRCULAR}h, before wet sanding`], dissolves: true },
  'colour-dope': { dissolves: true },
  'lacquer': { dissolves: true },
};
const UNSTATED: StatedWaits = { dissolves: false };

/** When the next step may begin: the trade's waits today, and the model's for this film in this air. */
export function todayNext({ backing }: TodayQuestion, mix: Mix, air: MoistAir, { ruleRatio, modelRatio }: DryingFactor, { coatWet_m }: TodayFilm): TodayNext {
  const { coat, sand, dissolves } = STATED[mix.finish.id] ?? UNSTATED;
  const law = filmLawOf({ mix, air, panel: LEVEL_PANEL, backing });
  const { touchDry_s, recoat_s } = dryEvenFilm({ law, wet_m: coatWet_m, solidsFraction: mix.volumeSolidsFraction, fastFraction: law.fastFraction });
  const byTrade = coat === undefined ? null : waitOf(coat, ruleRatio);
  return {
    ruleRatio,
    modelRatio,
    coat: byTrade,
    sand: sand === undefined ? null : waitOf(sand, ruleRatio),
    touchDry_s,
    recoat_s,
    watched_s: LONGEST_DRYING_S,
    earliest_s: recoat_s === null ? null : Math.max(recoat_s, byTrade?.today_s ?? 0),
    dissolves,
  };
}

function waitOf([hours, source]: readonly [number, string], ratio: number): TodayWait {
  return { stated_s: hours * HOUR_S, today_s: hours * HOUR_S * ratio, source };
}

/** How steep it hangs changes where film goes, not how it dries. */
const LEVEL_PANEL = { attitude: { tilt_rad: 0, down_rad: 0 } };
