import type { StepSpec } from '../job/schema.ts';
import type { Origin } from './planned.ts';

/** Time at work on a step, and where it comes from. */
export interface WorkTime {
  readonly work_s: number;
  readonly workOrigin: Origin;
}

/** Assumed, common practice of a small shop: mixing, straining and cleaning for a sprayed and for a brushed coat; then a square metre of each work, s. */
const SPRAY_SET_UP_S = 20 * 60;
const BRUSH_SET_UP_S = 10 * 60;
const BRUSH_S_M2 = 8 * 60;
const SAND_S_M2 = 20 * 60;
const FIX_S_M = 60;
const FIX_S_EACH = 3 * 60;
const MASK_S_M = 4 * 60;
const MASK_LEAST_S = 20 * 60;
const UNMASK_S = 15 * 60;

/**
 * How long a step keeps a person: as stated, else by the rates above.
 * @param area_m2 that the step works on. @param spray_s time of the strokes of a sprayed coat.
 */
export function workTime(step: StepSpec, area_m2: number, spray_s: number): WorkTime {
  if (step.work_min !== undefined) return { work_s: step.work_min * 60, workOrigin: { kind: 'typed', words: 'as stated' } };
  const assumed = (work_s: number, words: string): WorkTime => ({ work_s, workOrigin: { kind: 'preset', words: `Assumed, common practice: ${words}; state your own` } });
  switch (step.kind) {
    case 'spray':
      return assumed(SPRAY_SET_UP_S + spray_s, '20 min for mixing, straining and cleaning, and the strokes as the model lays them');
    case 'brush':
      return assumed(BRUSH_SET_UP_S + BRUSH_S_M2 * area_m2, '10 min, and 8 min to a square metre');
    case 'sand':
      return assumed(SAND_S_M2 * area_m2, '20 min to a square metre');
    case 'fix':
      return assumed((FIX_S_M * (step.length_mm ?? 0)) / 1000 + FIX_S_EACH * (step.count ?? 0), '1 min to a metre of tape, 3 min to a patch, ring or grommet');
    case 'mask':
      return assumed(Math.max(MASK_LEAST_S, (MASK_S_M * (step.edge_mm ?? 0)) / 1000), '4 min to a metre of edge, 20 min at least');
    case 'unmask':
      return assumed(UNMASK_S, '15 min');
  }
}
