import type { PlanSpec } from '../job/schema.ts';
import type { StrokePlan } from './plan.ts';

const RAD_PER_DEG = Math.PI / 180;
const M_PER_MM = 1e-3;

/** A stroke plan in SI from its words in a job. Limits were checked when the job was read. */
export function planFromSpec(spec: PlanSpec): StrokePlan {
  return {
    overlapFraction: spec.overlap_percent / 100,
    speed_m_s: spec.speed_m_s,
    distance_m: spec.distance_mm * M_PER_MM,
    direction_rad: spec.direction_deg * RAD_PER_DEG,
    order: spec.order,
    lead_m: spec.lead_mm * M_PER_MM,
    lag_m: spec.lag_mm * M_PER_MM,
    firstStroke_m: spec.firstStroke_mm * M_PER_MM,
    cross: spec.cross,
  };
}
