import { CrosscoatError, LONGEST_HOURS, localTimeOf, minutesOf, readHours, type HourSpec, type HoursRead } from '../../sim/index.ts';
import type { Io } from './io.ts';
import { readText } from './readText.ts';

const HOURS = { what: 'hours file', mostBytes: 4 * LONGEST_HOURS, advice: 'cut it to the days of the job' };

/** The hours of `--hours`; none where it is not given. */
export async function hoursOf(io: Io, path: string | undefined): Promise<HoursRead> {
  return path === undefined ? { hours: [], warnings: [] } : readHours(await readText(io, path, HOURS), path);
}

/**
 * The minute that `--at` means: a whole local time, or a clock on the first day that has it among
 * the rows' span. @throws `time` for a text that is neither, `columns` without hours.
 */
export function minuteAt(text: string, hours: readonly HourSpec[]): number {
  const [first, last] = [hours[0], hours.at(-1)];
  if (first === undefined || last === undefined) throw new CrosscoatError('columns', '--at asks for a time of a day; give the day with --hours FILE.csv');
  if (!/^\d{1,2}:\d\d$/.test(text)) return minutesOf(text);
  const day = first.at.slice(0, 10);
  try {
    const minute = minutesOf(`${day}T${text.padStart(5, '0')}`);
    const next = minute + 1440;
    return minute < minutesOf(first.at) && next <= minutesOf(last.at) ? next : minute;
  } catch {
    throw new CrosscoatError('time', `--at = "${text}" is not a time of day; give one such as 14:00, or ${localTimeOf(minutesOf(first.at))}`);
  }
}
