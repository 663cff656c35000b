import { MINUTES_PER_DAY, weekdayOf } from '../base/localTime.ts';

/** When work is done: minutes of the day. */
export interface WorkingHours {
  readonly from_min: number;
  /** After `from_min`, on the same day. */
  readonly to_min: number;
  readonly weekends: boolean;
}

const SATURDAY = 5;

/** Work begins on whole steps of the clock, min. Fixed ones, so that a later ready time can never find an earlier start. */
export const START_STEP_min = 5;

/** The next whole step of the clock, not before a time. A millionth of a minute is rounding. */
export function onClock(minute: number): number {
  return Math.ceil((minute - 1e-6) / START_STEP_min) * START_STEP_min;
}

/** The midnight that a time's day begins with. */
export function dayOf(minute: number): number {
  return Math.floor(minute / MINUTES_PER_DAY) * MINUTES_PER_DAY;
}

/** Whether work of this length can begin at a time. What is longer than a working day begins with one, and runs on past its end. */
export function fitsHours({ from_min, to_min, weekends }: WorkingHours, minute: number, work_min: number): boolean {
  if (!weekends && weekdayOf(minute) >= SATURDAY) return false;
  const inDay = minute - dayOf(minute);
  return inDay >= from_min && inDay + Math.min(work_min, longestWork_min({ from_min, to_min })) <= to_min;
}

/** The longest work that a working day holds, begun on the clock's first step in it, min. */
export function longestWork_min({ from_min, to_min }: Pick<WorkingHours, 'from_min' | 'to_min'>): number {
  return Math.max(0, to_min - onClock(from_min));
}

/** The next opening of the shop, on the day of a time or later; weekends are not looked at. */
export function nextOpening({ from_min }: WorkingHours, minute: number): number {
  const today = dayOf(minute) + from_min;
  return today >= minute ? today : today + MINUTES_PER_DAY;
}
