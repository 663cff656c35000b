import type { CoatSetting, HandNow, RubricSpec } from '../../../sim/index.ts';

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

/** Bands where a rubric leaves a measure out. Common practice: ± 25 mm, ± 15 %, 10°, ± 10 %. */
const USUAL = { distance: 12.5, speed: 15, angle: 10, overlap: 10 } as const;
/** A rubric's distance is a root mean square; the band shown is two of them either way. */
const SPREADS = 2;
const MM = 1e-3;
const PERCENT = 0.01;
const DEGREE = Math.PI / 180;

/** The gauges of a hand at one moment, their bands from the plan and the rubric. */
export function gaugesOf(now: HandNow, { plan }: CoatSetting, rubric: RubricSpec): Gauges {
  const limit = (measure: keyof typeof USUAL): number => rubric.rows.find((row) => row.measure === measure)?.limit ?? USUAL[measure];
  const distance_m = SPREADS * limit('distance') * MM;
  const speed = limit('speed') * PERCENT;
  const overlap = limit('overlap') * PERCENT;
  return {
    distance: { value: now.distance_m, low: plan.distance_m - distance_m, high: plan.distance_m + distance_m, from: 0, to: 2 * plan.distance_m },
    speed: { value: now.speed_m_s, low: plan.speed_m_s * (1 - speed), high: plan.speed_m_s * (1 + speed), from: 0, to: 2 * plan.speed_m_s },
    angle: { value: now.tilt_rad, low: 0, high: limit('angle') * DEGREE, from: 0, to: 40 * DEGREE },
    overlap: { value: now.overlapFraction, low: plan.overlapFraction - overlap, high: plan.overlapFraction + overlap, from: -0.25, to: 1 },
  };
}
