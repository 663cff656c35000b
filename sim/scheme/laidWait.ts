import type { DayTask } from './dayTask.ts';
import { driedAt, type Pace } from './pace.ts';

/** A wait in its place: minutes of the wall clock, to the fraction. */
export interface LaidWait {
  readonly from: number;
  /** The later of the two below. */
  readonly until: number;
  /** Which of the two made it. */
  readonly rule: 'stated' | 'model';
  /** When the stated wait is over by the trade's rule, in the air of the days; `from` where none is stated. */
  readonly statedUntil: number;
  /** When the model's film is ready; null where the model says nothing of it. */
  readonly modelUntil: number | null;
  /** Latest start of the next step; null where none is stated. */
  readonly latest: number | null;
}

/**
 * What is to be waited for after a task that ends at `end`. A stated wait is over when the integral of dt/factor has come to it,
 * the factor being the trade's rule at the air's temperature; the model's own time likewise with the model's own factor. A latest
 * start is moved by the same rule: the window closes because the film goes on drying, at the pace that opened it.
 */
export function laidWait(task: DayTask, end: number, rulePace: Pace, modelPace: Pace): LaidWait | null {
  const { wait_min, latest_min, modelWait_min } = task;
  if (wait_min === 0 && latest_min === null && modelWait_min === null) return null;
  const statedUntil = driedAt(rulePace, end, wait_min);
  const modelUntil = modelWait_min === null ? null : driedAt(modelPace, end, modelWait_min);
  const isModel = modelUntil !== null && modelUntil > statedUntil;
  return {
    from: end,
    until: isModel ? modelUntil : statedUntil,
    rule: isModel ? 'model' : 'stated',
    statedUntil,
    modelUntil,
    latest: latest_min === null ? null : driedAt(rulePace, end, latest_min),
  };
}
