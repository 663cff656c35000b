import { MEASURE_SIZE, USUAL_RUBRIC, type CoatSetting, type HandNow, type RubricSpec } from '../../../sim/index.ts';

/** One gauge: what the hand does, and the band that it should stay in. SI. */
export interface Gauge {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Ends of the scale. */
  readonly from: number;
  readonly to: number;
}

/** What is read off the hand while it sprays. */
export interface Gauges {
  readonly distance: Gauge;
  readonly speed: Gauge;
  readonly angle: Gauge;
  readonly overlap: Gauge;
}

/** A rubric's distance is a root mean square; the band shown is two of them either way. */
const SPREADS = 2;
const DEGREE = Math.PI / 180;

/** The gauges of a hand at one moment, their bands from the plan and the rubric. */
export function gaugesOf(now: HandNow, { plan }: CoatSetting, rubric: RubricSpec): Gauges {
  const limit = (measure: keyof Gauges): number => (limitIn(rubric, measure) ?? limitIn(USUAL_RUBRIC, measure) ?? 0) * MEASURE_SIZE[measure];
  const distance_m = SPREADS * limit('distance');
  const speed = limit('speed');
  const overlap = limit('overlap');
  return {
    distance: { value: now.distance_m, low: plan.distance_m - distance_m, high: plan.distance_m + distance_m, from: 0, to: 2 * plan.distance_m },
    speed: { value: now.speed_m_s, low: plan.speed_m_s * (1 - speed), high: plan.speed_m_s * (1 + speed), from: 0, to: 2 * plan.speed_m_s },
    angle: { value: now.tilt_rad, low: 0, high: limit('angle'), from: 0, to: 40 * DEGREE },
    overlap: { value: now.overlapFraction, low: plan.overlapFraction - overlap, high: plan.overlapFraction + overlap, from: -0.25, to: 1 },
  };
}

/** A measure's limit in a rubric's own unit. */
function limitIn({ rows }: RubricSpec, measure: keyof Gauges): number | undefined {
  return rows.find((row) => row.measure === measure)?.limit;
}
