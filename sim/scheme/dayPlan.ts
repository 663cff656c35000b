import type { DayFinding } from './dayFindings.ts';
import type { Shift } from './lateTimeline.ts';
import type { Timeline } from './timeline.ts';
import type { WorkingHours } from './workingHours.ts';

/**
 * Where the air of the days comes from: `typed` for all of them; `repeated` where the days after the typed ones go as the last of
 * these; `held` where the first or last typed air stays; `steady` where no hours are typed, and the job's one air is always there.
 */
export type DaysAir = 'typed' | 'repeated' | 'held' | 'steady';

/** One hour of the shop for one scheme: whether its next coat, or tape set in wet dope, could go on. */
export interface DayHour {
  /** Its beginning, minutes of the wall clock. */
  readonly minute: number;
  readonly verdict: 'go' | 'care' | 'wait';
  /** Why it is not a go; empty where it is. */
  readonly words: string;
}

/** What the days come to. */
export interface DayTotals {
  readonly coats: number;
  readonly work_min: number;
  /** Of all schemes together, day and night. */
  readonly wait_min: number;
  readonly unplaced: number;
}

/** All schemes laid through the days. */
export interface DayPlan {
  readonly working: WorkingHours;
  /** As planned. */
  readonly base: Timeline;
  /** With what begins late; the same as `base` where nothing does. */
  readonly timeline: Timeline;
  /** Minutes late by task. */
  readonly late: ReadonlyMap<string, number>;
  readonly shifts: readonly Shift[];
  /** Of `timeline`, in the order of the schemes and their steps. */
  readonly findings: readonly DayFinding[];
  readonly air: DaysAir;
  /** Temperature of the air at a time. */
  readonly temperature_K: (minute: number) => number;
  /** How much longer a stated wait is at a time than at 70 °F, by the trade's rule. */
  readonly factorAt: (minute: number) => number;
  /** Working hours of each scheme from the start until its last coat has begun. */
  readonly hours: readonly (readonly DayHour[])[];
  readonly totals: DayTotals;
}

/** Sums of a timeline. */
export function dayTotals({ chains }: Timeline): DayTotals {
  const laid = chains.flatMap((chain) => chain.laid);
  return {
    coats: laid.filter(({ task }) => task.isCoat).length,
    work_min: laid.reduce((sum, { task }) => sum + task.work_min, 0),
    wait_min: laid.reduce((sum, { wait }) => sum + (wait === null ? 0 : wait.until - wait.from), 0),
    unplaced: chains.reduce((sum, { unplaced }) => sum + unplaced.length, 0),
  };
}
