import type { PointFilm, Sensitivities, SprayPoint, WindowAxis } from '../../verdict/workingWindow.ts';
import type { CoatSetting } from '../result.ts';
import { predictorFor, type PredictOptions } from './predictPoints.ts';
import { axisValue, statedPoint, WINDOW_AXES, withAxis } from './sprayPoint.ts';
import { axisStep } from './windowSteps.ts';

/** Values beyond which an axis has no step. */
const LIMITS: Readonly<Record<WindowAxis, readonly [least: number, most: number]>> = {
  distance: [0.02, 1],
  speed: [0.01, 5],
  overlap: [0, 0.95],
  fluid: [1e-9, 1e-3],
  thinner: [0, 10],
  temperature: [253.15, 333.15],
  humidity: [0, 1],
};

/**
 * One step of every axis both ways from a point (`axisStep`), everything else held; a warmer room keeps its
 * water. A step that leads where nothing can be sprayed is left out, as are steps of a thinner of which
 * there is none. Where a step leaves the set-up's distances, `after.distanceInRange` says so.
 * @param options.point the coat as stated where not given.
 */
export function sensitivities(setting: CoatSetting, options: PredictOptions & { readonly point?: SprayPoint } = {}): Sensitivities {
  const point = options.point ?? statedPoint(setting);
  const predictor = predictorFor(setting);
  const moves = WINDOW_AXES.flatMap((axis) => {
    const step = axisStep(point, axis);
    return [-step, step].map((by) => ({ axis, by, value: axisValue(point, axis) + by }));
  }).filter(({ axis, by, value }) => by !== 0 && value >= LIMITS[axis][0] && value <= LIMITS[axis][1]);
  const films = predictor([point, ...moves.map(({ axis, value }) => withAxis(point, axis, value))], options);
  const before = films[0] as PointFilm;
  return {
    point,
    before,
    steps: moves.map((move, i) => {
      const after = films[i + 1] as PointFilm;
      return { ...move, after, filmRatio: after.wetMean_m / before.wetMean_m };
    }),
  };
}
