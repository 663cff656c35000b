import { clockOf, localTimeOf, weekdayOf } from '../base/localTime.ts';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

/** A day in words: `Monday 4 May 2026`. @param minutes of the wall clock. */
export function dayWords(minutes: number): string {
  const text = localTimeOf(minutes);
  return `${WEEKDAYS[weekdayOf(minutes)] ?? ''} ${Number(text.slice(8, 10))} ${MONTHS[Number(text.slice(5, 7)) - 1] ?? ''} ${text.slice(0, 4)}`;
}

/** Time of day: `08:05`. */
export function clockWords(minutes: number): string {
  return clockOf(localTimeOf(minutes));
}

/** Time of day, with the day where it is another than `from`'s: `Tue 5 May 09:30`. */
export function whenWords(minutes: number, from: number): string {
  const clock = clockWords(minutes);
  if (localTimeOf(minutes).slice(0, 10) === localTimeOf(from).slice(0, 10)) return clock;
  const [weekday = '', day = '', month = ''] = dayWords(minutes).split(' ');
  return `${weekday.slice(0, 3)} ${day} ${month.slice(0, 3)} ${clock}`;
}

/** A span of minutes: `25 min`, `3 h`, `2 h 40 min`, `51 h`. */
export function spanWords(minutes: number): string {
  const whole = Math.round(minutes);
  if (whole < 60) return `${whole} min`;
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  return rest === 0 || hours >= 24 ? `${Math.round(whole / 60)} h` : `${hours} h ${rest} min`;
}
