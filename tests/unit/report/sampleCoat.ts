import { parseJob } from '../../../sim/job/parse.ts';
import { demoJob } from '../../../sim/job/demo.ts';
import type { ReportedCoat } from '../../../sim/report/reported.ts';
import { runJob } from '../../../sim/run/runJob.ts';
import type { Target } from '../../../sim/verdict/target.ts';
import type { Cause, Cure, Fault, Zone } from '../../../sim/verdict/verdict.ts';
import { LIFE_LIMITS } from '../../helpers/lifeLimits.ts';

export const TARGET: Target = {
  film: 'wet',
  thickness_m: 50e-6,
  minFraction: 0.8,
  maxFraction: 1.2,
  holidayFraction: 0.25,
  dryFraction: 0.1,
  life: LIFE_LIMITS,
};

export const ZONE: Zone = {
  kind: 'heavy-spot',
  area_m2: 12.4e-4,
  at_m: [0.41, 0.62],
  box_m: [0.4, 0.6, 0.42, 0.64],
  worst: 88e-6,
  limit: 60e-6,
  margin: 28e-6,
  cells: Uint32Array.of(1, 2),
};

export const CAUSE: Cause = { kind: 'stop', strokes: [4], found: 0.7, meant: 0, unit: 's', explains: 1 };

export const CURE: Cure = {
  change: { kind: 'no-stops', strokes: [4] },
  worst: 46e-6,
  areaBefore_m2: 12.4e-4,
  areaAfter_m2: 0,
  inTargetBefore: 0.9,
  inTargetAfter: 0.95,
  worsens: [],
};

export const FAULT: Fault = { kind: 'heavy-spot', zones: [ZONE], area_m2: ZONE.area_m2, cause: CAUSE, cure: CURE };

/** A small rectangle laid with too little overlap: a real run with real faults. */
export function sampleCoats(): ReportedCoat[] {
  const demo = demoJob();
  const job = {
    ...demo,
    cell_mm: 4,
    part: { name: 'Board', panels: [{ id: 'board', name: 'Board, "front"', outline: { rectangle_mm: [400, 300] } }] },
    schemes: [],
    coats: demo.coats.filter(({ id }) => id === 'thin-laps').map((coat) => ({ ...coat, panel: 'board' })),
  };
  return runJob(parseJob(job).job);
}
