import type { Job } from '../../job/schema.ts';
import { smallJob, type SmallCoatParts, type SmallJobParts } from '../smallJob.ts';

/** Id of the coat that is sprayed, in the job of every drill. */
export const DRILL_COAT = 'drill';

/** Lying level: nothing runs, so the hand can be learnt before the film is. */
const LEVEL_DEG = 0;

/** What a drill's job has that the usual small job has not. */
export interface DrillParts extends Partial<Pick<SmallJobParts, 'panel_mm' | 'holes' | 'tilt_deg' | 'air' | 'mix' | 'gun'>>, Pick<SmallCoatParts, 'plan' | 'target'> {
  readonly title: string;
}

/** A board that fits a screen near its true size. */
const PANEL_MM: readonly [number, number] = [600, 400];

/** The job of a drill: one coat on one level practice board of cloth, `parts` apart. */
export function drillJob({ title, panel_mm = PANEL_MM, tilt_deg = LEVEL_DEG, plan = {}, target = {}, ...rest }: DrillParts): Job {
  return smallJob({
    ...rest,
    panel_mm,
    tilt_deg,
    name: `Practice: ${title}`,
    note: 'An invented job to practise on. Its plan says what is meant.',
    part: 'Practice board',
    coat: { id: DRILL_COAT, name: title, plan, target },
  });
}
