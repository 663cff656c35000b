import type { TargetSpec } from '../job/schema.ts';
import type { LifeLimits, Target } from './target.ts';

const M_PER_UM = 1e-6;

/** A target in SI from its words in a job. Limits were checked when the job was read. */
export function targetFromSpec(spec: TargetSpec, life: LifeLimits): Target {
  return {
    film: spec.film,
    thickness_m: spec.thickness_um * M_PER_UM,
    minFraction: spec.min_percent / 100,
    maxFraction: spec.max_percent / 100,
    holidayFraction: spec.holiday_percent / 100,
    dryFraction: spec.dry_percent / 100,
    life,
  };
}
