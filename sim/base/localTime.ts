import { CrosscoatError, type Place } from './errors.ts';

/**
 * Minutes of the wall clock, counted without a calendar of the machine: local ISO texts such as
 * `2026-05-04T08:00` to whole minutes since 2000-01-01T00:00 and back, in the proleptic Gregorian
 * calendar. No time zone and no summer time: a shop's clock that is put back counts an hour twice,
 * which such texts cannot say.
 */
export const MINUTES_PER_DAY = 1440;

const TEXT = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)$/;
/** Days from 0000-03-01 to 2000-01-01. */
const EPOCH_DAYS = 730_425;
/** Days of 400 years. */
const ERA_DAYS = 146_097;
const LAST_YEAR = 9999;

/**
 * Minutes since 2000-01-01T00:00; below 0 before it.
 * @throws CrosscoatError `time` for a text that is no such time, or a day that the month has not.
 */
export function minutesOf(text: string, place: Place = {}): number {
  const parts = TEXT.exec(text);
  const [year, month, day, hour, minute] = (parts ?? []).slice(1).map(Number) as [number, number, number, number, number];
  if (parts === null || month < 1 || month > 12 || day < 1 || day > daysOfMonth(year, month) || hour > 23 || minute > 59) {
    throw new CrosscoatError('time', `"${text.slice(0, 40)}" is not a local date and time; give one such as 2026-05-04T08:00`, place);
  }
  return (daysSinceEpoch(year, month, day) * 24 + hour) * 60 + minute;
}

/** The text of so many minutes since 2000-01-01T00:00, rounded to whole ones. @throws CrosscoatError `time` outside the years 0 to 9999. */
export function localTimeOf(minutes: number): string {
  const whole = Math.round(minutes);
  const days = Math.floor(whole / MINUTES_PER_DAY);
  const inDay = whole - days * MINUTES_PER_DAY;
  const { year, month, day } = dateOf(days);
  if (!(year >= 0 && year <= LAST_YEAR)) throw new CrosscoatError('time', `${minutes} minutes from the year 2000 is outside the years 0 to ${LAST_YEAR}; give a time within them`);
  return `${digits(year, 4)}-${digits(month, 2)}-${digits(day, 2)}T${digits(Math.floor(inDay / 60), 2)}:${digits(inDay % 60, 2)}`;
}

/** Day of the week, 0 Monday to 6 Sunday. 2000-01-01 was a Saturday. */
export function weekdayOf(minutes: number): number {
  const days = Math.floor(minutes / MINUTES_PER_DAY);
  return (((days + 5) % 7) + 7) % 7;
}

/** The time of day of a local time: `08:00` of `2026-05-04T08:00`. */
export function clockOf(text: string): string {
  return text.slice(11, 16);
}

/** Counts from 1 March, so that the leap day is the last of its year; checked by round trip and against the machine’s own calendar. */
function daysSinceEpoch(year: number, month: number, day: number): number {
  const marchYear = month > 2 ? year : year - 1;
  const monthFromMarch = (month + 9) % 12;
  const leaps = Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400);
  return marchYear * 365 + leaps + Math.floor((153 * monthFromMarch + 2) / 5) + day - 1 - EPOCH_DAYS;
}

function dateOf(daysFromEpoch: number): { readonly year: number; readonly month: number; readonly day: number } {
  const days = daysFromEpoch + EPOCH_DAYS;
  const era = Math.floor(days / ERA_DAYS);
  const dayOfEra = days - era * ERA_DAYS;
  const yearOfEra = Math.floor((dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365);
  const dayOfYear = dayOfEra - (yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  return { year: era * 400 + yearOfEra + (month <= 2 ? 1 : 0), month, day: dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1 };
}

function daysOfMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

function digits(value: number, count: number): string {
  return String(value).padStart(count, '0');
}
