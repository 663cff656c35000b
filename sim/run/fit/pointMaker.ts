import type { CoatSetting } from '../result.ts';
import { lapRipple, strokeShape, type LapRipple } from '../window/lapRipple.ts';
import { conditionsFor } from '../window/pointConditions.ts';
import { pointLanding } from '../window/pointLanding.ts';
import { statedPoint, type SprayPoint } from '../window/sprayPoint.ts';
import type { FitPlace } from './fitAxes.ts';

/** A point at a place, with the speed that lays the target. */
export type PointMaker = (place: FitPlace) => SprayPoint;

/**
 * Makes points of one coat whose mean film is the target's. The film of endless strokes falls as one over
 * the speed, so the speed follows in closed form: that of 1 m/s, over the target. It may be one that no hand has.
 */
export function pointMaker(setting: CoatSetting): PointMaker {
  const { target, plan } = setting;
  const shape = strokeShape(setting.setUp.fan);
  const conditionsAt = conditionsFor(setting);
  const ripples = new Map<number, LapRipple>();
  const stated = statedPoint(setting);
  const passes = plan.cross ? 2 : 1;
  return ({ distance, overlap, fluid, thinner }) => {
    const ripple = ripples.get(overlap) ?? lapRipple(shape, overlap);
    ripples.set(overlap, ripple);
    const point = { ...stated, distance_m: distance, overlapFraction: overlap, fluidRate_m3_s: fluid, thinnerRatio: thinner, speed_m_s: 1 };
    const { pass_m, wet, solids } = pointLanding(conditionsAt(point), point, shape, ripple);
    const film_m = passes * pass_m * (target.film === 'wet' ? 1 : solids / wet);
    return { ...point, speed_m_s: film_m / target.thickness_m };
  };
}
