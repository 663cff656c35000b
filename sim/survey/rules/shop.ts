import type { RuleSpec } from '../../job/schema.ts';
import { metresOf } from '../../materials/filmRules.ts';
import { middle_m, middles_m, type FilmReading } from '../filmReading.ts';
import type { RuleCheck } from '../judgedSurvey.ts';
import { answerAtMost, checkOfAll, checkOfEach } from '../limits.ts';
import { deviation, mean, meanBounds } from '../meanFilm.ts';
import { withoutSpots, type RuleAnswer } from './ruleAnswer.ts';

type ShopRule = Extract<RuleSpec, { readonly kind: 'shop' }>;

/** The shop's own rule: whichever limits it states, each of them itself allowed. A rule that states none judges nothing. */
export function judgeShop(rule: ShopRule, readings: readonly FilmReading[]): RuleAnswer {
  const found = meanBounds(readings);
  const asked = <T>(film_um: number | undefined, check: (limit: { readonly value: number; readonly includesLimit: true }) => T): T[] =>
    film_um === undefined ? [] : [check({ value: metresOf(film_um), includesLimit: true })];
  return withoutSpots(
    [
      ...asked(rule.meanMin_um, (limit) => checkOfAll({ code: 'mean-low', side: 'least', found, limit, readings })),
      ...asked(rule.meanMax_um, (limit) => checkOfAll({ code: 'mean-high', side: 'most', found, limit, readings })),
      ...asked(rule.eachMin_um, (limit) => checkOfEach({ code: 'reading-low', side: 'least', limit, readings })),
      ...asked(rule.eachMax_um, (limit) => checkOfEach({ code: 'reading-high', side: 'most', limit, readings })),
      ...(rule.spread_percent === undefined ? [] : [checkSpread(rule.spread_percent / 100, readings)]),
    ],
    readings,
  );
}

/** Standard deviation over mean, by the middles; a comb's own width leaves it open. */
function checkSpread(limit: number, readings: readonly FilmReading[]): RuleCheck {
  const middles = middles_m(readings);
  const middle = mean(middles);
  const spread = middle > 0 ? deviation(middles) / middle : NaN;
  const isKnown = middles.length >= 2 && Number.isFinite(spread) && readings.every(({ low_m, high_m }) => low_m === high_m);
  return { code: 'spread', answer: isKnown ? answerAtMost(spread, spread, { value: limit, includesLimit: true }) : 'undecided', found: [spread, spread], limit, includesLimit: true, readings: farthest(readings, middle), where: null };
}

/** The reading farthest from the mean says most of the spread. */
function farthest(readings: readonly FilmReading[], middle: number): number[] {
  const distances = readings.map((reading) => Math.abs((middle_m(reading) ?? middle) - middle));
  const most = distances.reduce((far, distance) => Math.max(far, distance), 0);
  return readings.filter((_, i) => distances[i] === most).map(({ index }) => index);
}
