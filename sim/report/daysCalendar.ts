import type { DayPlan } from '../scheme/dayPlan.ts';

/** What a calendar is made with beside the days. */
export interface CalendarOptions {
  /** Name of the job; in every event's id too. */
  readonly jobName: string;
  /** When the calendar is made: UTC, such as `2026-05-01T07:30:00Z`. */
  readonly stamp: string;
}

/** The days as iCalendar text (`calendarOf`); the library that writes it is fetched when it is first needed. */
export async function daysCalendar(plan: DayPlan, options: CalendarOptions): Promise<string> {
  const { calendarOf } = await import('./calendar.ts');
  return calendarOf(plan, options);
}
