import { MOST_FREEDOM, studentShare } from '../base/studentQuantile.ts';
import { middles_m } from './filmReading.ts';
import type { JudgedSurvey, RuleCheck } from './judgedSurvey.ts';
import { deviation, mean } from './meanFilm.ts';
import { halfInterval } from './surveyFigures.ts';

/** Half-width that the mean is wished to, as a share of it, where none is stated. Assumed: a twentieth is what gauges themselves claim. */
const USUAL_HALF_WIDTH = 0.05;

/** What more readings would bring. All of it takes readings as independent and normally scattered about one mean. */
export interface MoreReadings {
  /** What is counted: spots where the rule judges their means, else readings. */
  readonly of: 'reading' | 'spot';
  /** How many there are. */
  readonly count: number;
  /** Half of the 95 % interval of the mean, as wished, m. */
  readonly wished_m: number;
  /** As it is; null below two. */
  readonly halfWidth_m: number | null;
  /** More of them until it is as wished, the deviation staying as it is; null below two, Infinity beyond 10 000. */
  readonly more: number | null;
  /** Limit that the mean must reach or stay within, the nearest to it, m; null where the rule has none. */
  readonly meanLimit_m: number | null;
  /** More of them until the mean's interval lies on one side of that limit, mean and deviation staying; null and Infinity likewise. */
  readonly moreForLimit: number | null;
  /** Least and most of a single one, m; null where the rule has none. */
  readonly least_m: number | null;
  readonly most_m: number | null;
  /** Chance that the next one falls below the least, or above the most, 0 to 1; null without a limit and below two. */
  readonly chanceBelow: number | null;
  readonly chanceAbove: number | null;
}

/**
 * How many more readings would settle the mean, and the chance that one more falls outside the limits: Student's predictive law, t =
 * (limit - mean) / (s √(1 + 1/n)) with n - 1 degrees of freedom (A. Gelman and others, Bayesian Data Analysis, 3rd ed. 2013,
 * section 3.2, from memory). Readings near each other are alike, so places far from all readings may be worse than that says.
 *
 * @param wished_m half of the 95 % interval that is wished, above 0; a twentieth of the mean where not given.
 */
export function moreReadings(judged: JudgedSurvey, wished_m?: number): MoreReadings {
  const isOfSpots = judged.rule.kind === 'spots-areas';
  const values = isOfSpots ? judged.spots.flatMap(({ mean_m: [low, high] }) => (Number.isFinite(high) ? [(low + high) / 2] : [])) : middles_m(judged.readings);
  const [count, mean_m, deviation_m] = [values.length, mean(values), deviation(values)];
  const wished = wished_m ?? Math.abs(mean_m) * USUAL_HALF_WIDTH;
  const meanLimit_m = nearestLimit(mean_m, judged.checks.filter(({ code }) => /^(mean|area)-/.test(code)));
  const limitOf = (code: RuleCheck['code']): number | null => judged.checks.find((check) => check.code === code)?.limit ?? null;
  const least_m = limitOf(isOfSpots ? 'spot-low' : 'reading-low');
  const most_m = limitOf(isOfSpots ? 'spot-high' : 'reading-high');
  const chance = (limit_m: number | null, side: 1 | -1): number | null => (limit_m === null || count < 2 ? null : chanceBelow(side * mean_m, deviation_m, count, side * limit_m));
  return {
    of: isOfSpots ? 'spot' : 'reading',
    count,
    wished_m: wished,
    halfWidth_m: halfInterval(deviation_m, count),
    more: countFor(deviation_m, count, wished),
    meanLimit_m,
    moreForLimit: meanLimit_m === null ? null : countFor(deviation_m, count, Math.abs(mean_m - meanLimit_m)),
    least_m,
    most_m,
    chanceBelow: chance(least_m, 1),
    chanceAbove: chance(most_m, -1),
  };
}

function nearestLimit(mean_m: number, checks: readonly RuleCheck[]): number | null {
  return checks.reduce<number | null>((nearest, { limit }) => (nearest === null || Math.abs(limit - mean_m) < Math.abs(nearest - mean_m) ? limit : nearest), null);
}

/** Fewest further ones that bring half the interval to a width; it narrows with each, so halving finds it. */
function countFor(deviation_m: number, count: number, width_m: number): number | null {
  if (count < 2) return null;
  const isEnough = (all: number): boolean => (halfInterval(deviation_m, all) as number) <= width_m;
  if (isEnough(count)) return 0;
  let [low, high] = [count, count + MOST_FREEDOM];
  if (!isEnough(high)) return Infinity;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (isEnough(middle)) high = middle;
    else low = middle;
  }
  return high - count;
}

/** Chance that the next value falls below a limit. */
function chanceBelow(mean_m: number, deviation_m: number, count: number, limit_m: number): number {
  const step = limit_m - mean_m;
  if (deviation_m === 0) return step > 0 ? 1 : 0;
  return studentShare(step / (deviation_m * Math.sqrt(1 + 1 / count)), Math.min(MOST_FREEDOM, count - 1));
}
