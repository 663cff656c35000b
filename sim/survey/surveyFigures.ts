import { MOST_FREEDOM, studentQuantile } from '../base/studentQuantile.ts';
import { middles_m, type FilmReading } from './filmReading.ts';
import type { SurveyFigures } from './judgedSurvey.ts';
import { deviation, mean } from './meanFilm.ts';

/** Upper end of a 95 % interval. */
const UPPER = 0.975;

/**
 * What readings come to, by the middle of each; those without a middle are left out. The interval of the mean is Student's, for
 * readings that scatter independently about one mean; readings of one hand seldom do, so it is the least that can be said.
 */
export function surveyFigures(readings: readonly FilmReading[]): SurveyFigures {
  const middles = middles_m(readings);
  const mean_m = mean(middles);
  const deviation_m = deviation(middles);
  const half_m = halfInterval(deviation_m, middles.length);
  return {
    count: middles.length,
    mean_m,
    least_m: middles.reduce((least, film) => Math.min(least, film), middles[0] ?? NaN),
    most_m: middles.reduce((most, film) => Math.max(most, film), middles[0] ?? NaN),
    deviation_m,
    meanInterval_m: half_m === null ? null : [mean_m - half_m, mean_m + half_m],
  };
}

/** Half of the 95 % interval of a mean, by Student's t; null below two values. Beyond 10 001 values the law of 10 001 stands in. */
export function halfInterval(deviation_m: number, count: number): number | null {
  if (count < 2) return null;
  return (studentQuantile(UPPER, Math.min(MOST_FREEDOM, count - 1)) * deviation_m) / Math.sqrt(count);
}
