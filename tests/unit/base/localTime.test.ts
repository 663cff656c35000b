import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockOf, localTimeOf, minutesOf, weekdayOf } from '../../../sim/base/localTime.ts';

/** The machine's calendar in universal time, which has no summer time either. */
function machine(minutes: number): string {
  return new Date(Date.UTC(2000, 0, 1) + minutes * 60_000).toISOString().slice(0, 16);
}

describe('local time', () => {
  it.each([
    ['2000-01-01T00:00', 0], ['2000-01-01T00:01', 1], ['1999-12-31T23:59', -1], ['2000-02-29T00:00', 59 * 1440], ['2026-05-04T08:00', 13_853_280],
  ])('counts %s as %i minutes', (text, minutes) => {
    expect(minutesOf(text)).toBe(minutes);
    expect(localTimeOf(minutes)).toBe(text);
  });

  it('agrees with the machine’s calendar, both ways, through the centuries', () => {
    fc.assert(fc.property(fc.integer({ min: -1_000_000_000, max: 4_000_000_000 }), (minutes) => {
      const text = localTimeOf(minutes);
      expect(text).toBe(machine(minutes));
      expect(minutesOf(text)).toBe(minutes);
      expect(weekdayOf(minutes)).toBe((new Date(Date.UTC(2000, 0, 1) + minutes * 60_000).getUTCDay() + 6) % 7);
    }), { numRuns: 500 });
  });

  it('knows a Monday and a clock', () => {
    expect(weekdayOf(minutesOf('2026-05-04T08:00'))).toBe(0);
    expect(clockOf('2026-05-04T08:05')).toBe('08:05');
  });

  it('rounds parts of a minute', () => {
    expect(localTimeOf(59.6)).toBe('2000-01-01T01:00');
  });

  it.each(['2026-02-29T08:00', '2100-02-29T00:00', '2026-04-31T00:00', '2026-13-01T00:00', '2026-00-01T00:00', '2026-01-01T24:00', '2026-01-01T08:60', '2026-01-01', '2026-01-01T08:00:00', 'soon', ''])('refuses %s', (text) => {
    expect(() => minutesOf(text)).toThrow(/is not a local date and time; give one such as/);
  });

  it('refuses minutes beyond the calendar', () => {
    expect(() => localTimeOf(1e13)).toThrow(/outside the years/);
    expect(() => localTimeOf(NaN)).toThrow(/outside the years/);
  });
});
