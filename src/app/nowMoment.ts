import { momentOf, secondsOfMoment } from '../../sim/index.ts';

/** This minute on the reader's own clock, with its offset from UTC, as the records of the job have it. */
export function nowMoment(now: Date = new Date()): string {
  return momentOf((secondsOfMoment('1970-01-01T00:00Z') ?? 0) + Math.floor(now.getTime() / 1000), -now.getTimezoneOffset());
}

/** Another minute on the clock of the place where a moment was noted: `2026-05-04T08:10` with the offset of the moment before. */
export function withMinute(moment: string, minute: string): string {
  return `${minute.slice(0, 16)}${moment.endsWith('Z') ? 'Z' : moment.slice(-6)}`;
}
