import { CrosscoatError } from './errors.ts';
import { localTimeOf, minutesOf } from './localTime.ts';

/** Local date and time, seconds, offset. */
const TEXT = /^(\d{4}-\d\d-\d\dT\d\d:\d\d)(?::(\d\d))?(Z|[+-]\d\d:\d\d)$/;

/**
 * Seconds from 2000-01-01T00:00Z to a moment of RFC 3339 with its offset, such as `2026-05-04T08:10+02:00`; below 0 before it. Null
 * for a text that is no such moment, or a day that the month has not. Leap seconds are not told.
 */
export function secondsOfMoment(text: string): number | null {
  const parts = TEXT.exec(text);
  if (parts === null) return null;
  const [, local = '', seconds = '0', zone = 'Z'] = parts;
  try {
    return (minutesOf(local) - offsetMinutes(zone)) * 60 + Number(seconds);
  } catch (thrown) {
    if (thrown instanceof CrosscoatError) return null;
    throw thrown;
  }
}

/** Minutes that the clock of a moment's place is ahead of UTC. */
export function offsetOfMoment(text: string): number {
  return offsetMinutes(TEXT.exec(text)?.[3] ?? 'Z');
}

/** The moment of so many seconds since 2000-01-01T00:00Z on a clock that is so many minutes ahead of UTC, whole minutes: `2026-05-04T08:10+02:00`. */
export function momentOf(seconds: number, offset_min: number): string {
  const ahead = Math.abs(offset_min);
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${localTimeOf(Math.floor(seconds / 60) + offset_min)}${offset_min < 0 ? '-' : '+'}${two(Math.floor(ahead / 60))}:${two(ahead % 60)}`;
}

function offsetMinutes(zone: string): number {
  if (zone === 'Z') return 0;
  const minutes = Number(zone.slice(1, 3)) * 60 + Number(zone.slice(4, 6));
  return zone.startsWith('-') ? -minutes : minutes;
}
