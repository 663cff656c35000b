import { checkRange } from '../../base/check.ts';
import type { LivingFilm } from '../../film/life/state.ts';
import { peelAmplitude_m, weightedDrop_m3 } from '../../film/level/peel.ts';
import { BLUSH_SCALE_K } from '../../verdict/faults.ts';
import { limitOf } from '../../verdict/judged.ts';
import type { Target } from '../../verdict/target.ts';
import type { CoatSetting } from '../result.ts';
import { stopIfAsked } from '../stop.ts';
import { lapRipple, strokeShape, type LapRipple, type StrokeShape } from './lapRipple.ts';
import { passClocks, type PassClock } from './lineClock.ts';
import { pointColumns } from './pointColumns.ts';
import { conditionsFor, type PointConditions } from './pointConditions.ts';
import { pointLanding } from './pointLanding.ts';
import type { PointFilm, SprayPoint, WindowFault } from './sprayPoint.ts';

/** How points are predicted. */
export interface PredictOptions {
  /** Asked often; true ends with a `cancelled` error. */
  readonly shouldStop?: () => boolean;
  /** Multiplies every step in time, for convergence tests; 1 where not given. */
  readonly stepScale?: number;
}

/** Predicts points of one coat; what points share is made once and kept from call to call. */
export type Predictor = (points: readonly SprayPoint[], options?: PredictOptions) => PointFilm[];

/** What every point of a coat shares. */
interface Shared {
  readonly setting: CoatSetting;
  readonly shape: StrokeShape;
  readonly clocks: readonly PassClock[];
  readonly conditionsAt: (point: SprayPoint) => PointConditions;
  readonly rippleAt: (overlapFraction: number) => LapRipple;
}

/** Points between two questions whether to stop. */
const ASK_EVERY = 64;

/**
 * The film that each point lays in the middle of a large panel, from two columns of it: the thinnest and
 * the heaviest place of the laps. See `predictorFor`.
 * @throws CrosscoatError `range` for a point that cannot be sprayed; `cancelled`.
 */
export function predictPoints(setting: CoatSetting, points: readonly SprayPoint[], options: PredictOptions = {}): PointFilm[] {
  return predictorFor(setting)(points, options);
}

/**
 * A predictor for one coat as it is settled: its gun, panel, plan (single or cross), target and mix.
 *
 * The film as laid is exact for endless strokes, all alike. Its life is that of a panel's cell, with the
 * same kernels: liquid lands and air blows as the strokes pass, at the times that the plan's mean line and
 * pass would take at that speed and pitch, seen from the middle of the panel; a cross coat's second pass
 * comes half of both passes later. Steps in time are half as long again as a panel's, which leaves a film
 * up to 0.1 K less chilled.
 *
 * `run_m` is how far the sheet slides. A verdict on a panel calls a run only what has also gathered; an
 * even sheet on an even wall gathers nothing, but the first seam, edge or hurried lap makes it, so here the
 * slide alone counts.
 *
 * Left out: edges, corners and holes; the hand; a coat beneath (the film is laid on the bare backing);
 * film carried from place to place by blown air or by sliding.
 */
export function predictorFor(setting: CoatSetting): Predictor {
  const shape = strokeShape(setting.setUp.fan);
  const ripples = new Map<number, LapRipple>();
  const rippleAt = (overlapFraction: number) => {
    const ripple = ripples.get(overlapFraction) ?? lapRipple(shape, overlapFraction);
    ripples.set(overlapFraction, ripple);
    return ripple;
  };
  const shared = { setting, shape, clocks: passClocks(setting), conditionsAt: conditionsFor(setting), rippleAt };
  return (points, options = {}) =>
    points.map((point, i) => {
      if (i % ASK_EVERY === 0) stopIfAsked(options.shouldStop);
      checkPoint(point);
      return predictPoint(shared, point, options.stepScale ?? 1);
    });
}

/** The limits of a plan and a set-up; mixes and rooms have their own. */
function checkPoint({ distance_m, speed_m_s, overlapFraction, fluidRate_m3_s }: SprayPoint): void {
  const check = (name: string, value: number, low: number, high: number, unit: string, advice: string) =>
    checkRange({ name: `predictPoints: ${name}`, value, low, high, unit, advice });
  check('distance', distance_m, 0.02, 1, 'm', 'give a gun distance such as 0.2 m');
  check('speed', speed_m_s, 0.01, 5, 'm/s', 'give a travel speed such as 0.3 m/s');
  check('overlap', overlapFraction, 0, 0.95, '', 'give a share of the fan such as 0.5');
  check('fluid rate', fluidRate_m3_s, 1e-9, 1e-3, 'm³/s', 'give a rate such as 3e-6 m³/s (180 mL/min)');
}

function predictPoint({ setting, shape, clocks, conditionsAt, rippleAt }: Shared, point: SprayPoint, stepScale: number): PointFilm {
  const { target } = setting;
  const conditions = conditionsAt(point);
  const ripple = rippleAt(point.overlapFraction);
  const landing = pointLanding(conditions, point, shape, ripple);
  const film = pointColumns({ point, setting, conditions, shape, ripple, landing, clocks, stepScale });
  const wetMean_m = clocks.length * landing.pass_m;
  const dryMean_m = (wetMean_m * landing.solids) / landing.wet;
  const judged_m = target.film === 'wet' ? wetMean_m : dryMean_m;
  const figures = { least_m: ripple.least * judged_m, most_m: ripple.most * judged_m, dryFraction: landing.dryFraction, ...lifeFigures(film, conditions) };
  const [near_m, far_m] = conditions.setUp.distanceRange_m;
  return {
    wetMean_m,
    dryMean_m,
    ...figures,
    // Ripples of two passes at right angles are independent: their variances add.
    cv: ripple.cv / Math.sqrt(clocks.length),
    landedFraction: landing.wet * (1 - shape.cutFraction),
    slack: slackOf(figures, target),
    distanceInRange: point.distance_m >= near_m && point.distance_m <= far_m,
  };
}

type LifeFigures = Pick<PointFilm, 'run_m' | 'peel_m' | 'blushMargin_K'>;

/** The worse of the two places, for each fault of the film's life. */
function lifeFigures(film: LivingFilm, { setUp }: PointConditions): LifeFigures {
  const drop_m3 = weightedDrop_m3(setUp.drops.meanDiameter_m, setUp.drops.spreadRatio);
  let [run_m, peel_m, blushMargin_K] = [0, 0, Infinity];
  film.inside.forEach((inside, cell) => {
    if (inside === 0) return;
    run_m = Math.max(run_m, film.run_m[cell] as number);
    peel_m = Math.max(peel_m, peelAmplitude_m(film.levelling_m4[cell] as number, film.landed_m[cell] as number, drop_m3, film.blown_m[cell] as number));
    blushMargin_K = Math.min(blushMargin_K, film.margin_K[cell] as number);
  });
  return { run_m, peel_m, blushMargin_K };
}

function slackOf(figures: LifeFigures & Pick<PointFilm, 'least_m' | 'most_m' | 'dryFraction'>, target: Target): Record<WindowFault, number> {
  return {
    'thin-lap': figures.least_m / limitOf('thin-lap', target) - 1,
    'heavy-spot': 1 - figures.most_m / limitOf('heavy-spot', target),
    run: 1 - figures.run_m / limitOf('run', target),
    'dry-spray': 1 - figures.dryFraction / limitOf('dry-spray', target),
    'orange-peel': 1 - figures.peel_m / limitOf('orange-peel', target),
    blush: (figures.blushMargin_K - limitOf('blush', target)) / BLUSH_SCALE_K,
  };
}
