import type { DayPlan } from '../scheme/dayPlan.ts';
import type { CalendarOptions } from './calendarText.ts';

/** The days as iCalendar text (`calendarOf`); the library that writes it is fetched when it is first needed. */
export async function daysCalendar(plan: DayPlan, options: CalendarOptions): Promise<string> {
  const { calendarOf } = await import('./calendar.ts');
  return calendarOf(plan, options);
}
