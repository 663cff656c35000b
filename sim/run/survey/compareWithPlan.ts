import { counted } from '../../base/counted.ts';
import { CrosscoatError } from '../../base/errors.ts';
import type { Job, SetUpSpec, SurveySpec } from '../../job/schema.ts';
import type { ComparedReading, Estimate, PlanComparison } from '../../survey/comparison.ts';
import { filmReadings } from '../../survey/filmReadings.ts';
import type { FilmReading } from '../../survey/filmReading.ts';
import { gaugeNoise } from '../../survey/gaugeNoise.ts';
import { fitCovariance } from '../../survey/kriging/fitCovariance.ts';
import { placedValues, type PlacedValues } from '../../survey/kriging/placedValues.ts';
import { mean } from '../../survey/meanFilm.ts';
import { correlatedRatio, meanRatio, planRatio, spreadAbout, trendsOf } from '../../survey/planRatio.ts';
import { chanceBelow, filmBetween, type Differences } from './filmBetween.ts';
import { predictedAt, predictedFilm, type PredictedFilm } from './predictedFilm.ts';
import { setUpOffers } from './setUpOffers.ts';
import { surveyTaken } from './surveyTaken.ts';
import { ratioCause, wetComparison } from './wetFilm.ts';

/** A place where less than this share of the mean film was planned says nothing of the ratio: the edge decides there. */
const LEAST_PLANNED = 0.2;
/** Assumed: no hand lays a coat more evenly than 3 % of its mean, and one without a reading to tell is taken to lay it within 15 %. */
const EVENEST = 0.03;
const USUAL_SPREAD = 0.15;

/** What may be said beside the job. */
export interface CompareOptions {
  /** Standard deviation of the gauge's own noise, m; found from the readings or assumed where not given. */
  readonly gaugeNoise_m?: number;
}

/**
 * A survey beside the film that its coats should have laid: ratio, spread, trends, what explains them, the film between the
 * readings, and how likely it is too thin where nobody read.
 *
 * The difference that is kriged is the reading less the plan times the mean ratio, so that a common ratio does not show as a
 * pattern of the plan's own. Combs are compared wet and take no part in the dry film.
 * @throws CrosscoatError `range` where the survey names no coat of its panel; what laying the coats throws.
 */
export function compareWithPlan(job: Job, survey: SurveySpec, options: CompareOptions = {}): PlanComparison {
  const { ids, doubts } = coatsOf(job, survey);
  const predicted = predictedFilm(job, ids);
  const { taken } = surveyTaken(survey, job, ids);
  const density = taken.dryDensity_kg_m3?.value ?? null;
  const films = filmReadings(survey.readings, { dryDensity_kg_m3: density, solidsFraction: taken.solidsFraction?.value ?? null }).filter(({ kind }) => kind !== 'comb');
  const gauge = gaugeNoise(films, survey.readings, density, options.gaugeNoise_m ?? null);
  const readings = comparedReadings(films, gauge.of, predicted);
  const used = readings.filter(({ predicted_m }) => predicted_m >= LEAST_PLANNED * predicted.mean_m);
  const placeless = films.filter(({ at_m }) => at_m === null);
  const told = ratioOf(used, placeless, predicted);
  const differences = told.ratio === null || used.length === 0 ? null : told.differences;
  const wet = wetComparison(job, survey, predicted, told.ratio);
  const cause = ratioCause(told.ratio, wet);
  const spread = told.ratio === null ? null : spreadAbout(used, told.ratio.value);
  const { width_m, height_m } = (predicted.coats[0] as PredictedFilm['coats'][number]).setting.panel;
  return {
    survey: survey.id,
    coats: predicted.coats.map(({ setting, strokes }) => ({ id: setting.coat.id, name: setting.coat.name, strokes: strokes.source })),
    panelGrid: predicted.panelGrid,
    predicted_m: predicted.dry_m,
    predictedMean_m: predicted.mean_m,
    readings,
    placeless: placeless.length,
    noise: gauge.noise,
    ratio: told.ratio,
    isCorrelated: told.isCorrelated,
    spread,
    noiseShare: spread === null || told.ratio === null ? null : noiseShare(used, spread, told.ratio.value),
    trends: trendsOf(used, [width_m, height_m]),
    wet,
    cause,
    offers: setUpOffers(setUpsOf(job, ids), cause, told.ratio, wet),
    between: differences === null ? null : filmBetween(predicted, differences),
    below: differences === null ? null : chanceBelow(job, survey.rule, predicted, differences),
    doubts: [...doubts, ...leftOut(readings.length - used.length, placeless.length, used.length)],
  };
}

/** The coats that the job still has, all on the survey's panel. */
function coatsOf(job: Job, survey: SurveySpec): { readonly ids: string[]; readonly doubts: string[] } {
  const gone = survey.coats.filter((id) => job.coats.every((coat) => coat.id !== id));
  const ids = survey.coats.filter((id) => job.coats.some((coat) => coat.id === id && coat.panel === survey.panel));
  const elsewhere = survey.coats.length - gone.length - ids.length;
  if (ids.length === 0) {
    throw new CrosscoatError('range', `survey "${survey.name}": it names no coat of its panel that the job has, so there is no plan to compare with; say on the sheet Readings whose film was read`);
  }
  return {
    ids,
    doubts: [
      ...(gone.length === 0 ? [] : [`The job has no coat ${gone.join(', ')} any more; its film is missing from the plan.`]),
      ...(elsewhere === 0 ? [] : [`${counted(elsewhere, 'coat')} of the survey lie on another panel and were left out.`]),
    ],
  };
}

function setUpsOf(job: Job, coatIds: readonly string[]): SetUpSpec[] {
  const used = new Set(job.coats.filter(({ id }) => coatIds.includes(id)).map(({ setUp }) => setUp));
  return job.setUps.filter(({ id }) => used.has(id));
}

function comparedReadings(films: readonly FilmReading[], noise: readonly number[], predicted: PredictedFilm): ComparedReading[] {
  const placed = films.flatMap((film, i) => (film.at_m === null ? [] : [{ ...film, at_m: film.at_m, noise_m: noise[i] as number }]));
  const planned = predictedAt(predicted, placed.map(({ at_m }) => at_m));
  return placed.map(({ index, kind, at_m, low_m, noise_m }, i) => {
    const { dry_m, orderMoment_m } = planned[i] as (typeof planned)[number];
    return { index, kind, at_m, measured_m: low_m, predicted_m: dry_m, noise_m, order: dry_m > 0 ? orderMoment_m / dry_m : 0 };
  });
}

interface ToldRatio {
  readonly ratio: Estimate | null;
  readonly isCorrelated: boolean;
  readonly differences: Differences | null;
}

/** The ratio, first as if readings were independent; where the differences from it show a pattern, with that taken into account. */
function ratioOf(used: readonly ComparedReading[], placeless: readonly FilmReading[], predicted: PredictedFilm): ToldRatio {
  const first = used.length > 0 ? planRatio(used) : meanRatio(placeless.map(({ low_m }) => low_m), predicted.mean_m);
  if (first === null || used.length === 0) return { ratio: first, isCorrelated: false, differences: null };
  const fitted = fitCovariance(differencesFrom(used, first.value), {
    range_m: assumedRange(predicted),
    leastSill_m2: (EVENEST * predicted.mean_m) ** 2,
    usualSill_m2: (USUAL_SPREAD * predicted.mean_m) ** 2,
  });
  const isCorrelated = fitted.origin === 'fitted';
  const placed = (of: (reading: ComparedReading) => number): PlacedValues => placedValues(used.map((reading) => ({ at_m: reading.at_m, value_m: of(reading), noise_m: reading.noise_m })));
  const ratio = isCorrelated ? correlatedRatio(placed(({ measured_m }) => measured_m), placed(({ predicted_m }) => predicted_m), fitted.law) : first;
  return { ratio, isCorrelated, differences: { values: differencesFrom(used, ratio.value), fitted, ratio: ratio.value } };
}

function differencesFrom(used: readonly ComparedReading[], ratio: number): PlacedValues {
  return placedValues(used.map(({ at_m, measured_m, predicted_m, noise_m }) => ({ at_m, value_m: measured_m - ratio * predicted_m, noise_m })));
}

/** Assumed where readings cannot say: the width of the fan, over which a hand's errors are smeared. */
function assumedRange({ coats }: PredictedFilm): number {
  const { setting } = coats[coats.length - 1] as PredictedFilm['coats'][number];
  return setting.setUp.fan.width_m;
}

/** Variance that the gauge's noise alone would make, over the variance seen. */
function noiseShare(used: readonly ComparedReading[], spread: number, ratio: number): number {
  const planned_m = mean(used.map(({ predicted_m }) => predicted_m));
  return Math.min(1, mean(used.map(({ noise_m }) => noise_m ** 2)) / (spread * ratio * planned_m) ** 2);
}

function leftOut(thin: number, placeless: number, used: number): string[] {
  return [
    ...(thin === 0 ? [] : [`${counted(thin, 'reading')} where less than a fifth of the mean film was planned: shown, but left out of ratio and map.`]),
    ...(placeless === 0 ? [] : [used === 0
      ? 'No reading has a place: their mean is compared with the mean of the plan, and there is no map.'
      : `${counted(placeless, 'reading')} without a place: left out here.`]),
  ];
}
