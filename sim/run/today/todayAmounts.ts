import { LEFT_IN_POT_M3, TEST_SHARE } from '../../materials/potLoss.ts';
import type { Mix } from '../../mix/mix.ts';
import type { TodayAmounts, TodayFilm, TodayQuestion } from '../../scheme/today.ts';

/** Liquid to mix, and weight added. What lands is as mixed: solvent lost in flight is part of the liquid that was sprayed. */
export function todayAmounts({ area_m2, efficiencyFraction }: TodayQuestion, mix: Mix, { coats, coatDry_m, allDry_m, allWet_m }: TodayFilm): TodayAmounts {
  const { finish, thinnerRatio } = mix;
  const landed_m3 = allWet_m * area_m2;
  const missed_m3 = landed_m3 / efficiencyFraction - landed_m3;
  const pot_m3 = coats * LEFT_IN_POT_M3.value + TEST_SHARE.value * (landed_m3 + missed_m3);
  const mix_m3 = landed_m3 + missed_m3 + pot_m3;
  const finish_m3 = mix_m3 / (1 + thinnerRatio);
  const { low, high, source } = finish.heaviestCoat_kg_m2;
  const solids_kg_m3 = finish.solidsDensity_kg_m3.value;
  return {
    coats,
    landed_m3,
    missed_m3,
    pot_m3,
    mix_m3,
    finish_m3,
    thinner_m3: mix_m3 - finish_m3,
    mixOneCoat_m3: mix_m3 / coats,
    coat_kg_m2: coatDry_m * solids_kg_m3,
    all_kg_m2: allDry_m * solids_kg_m3,
    all_kg: allDry_m * solids_kg_m3 * area_m2,
    published_kg_m2: [low, high],
    publishedSource: source,
  };
}
