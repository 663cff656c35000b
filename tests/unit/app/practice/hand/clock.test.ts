import { describe, expect, it } from 'vitest';
import { RisingClock } from '../../../../../src/app/practice/hand/clock.ts';

describe('RisingClock', () => {
  it('counts seconds from the first sample, to the microsecond', () => {
    const clock = new RisingClock();
    expect([1000, 1001.0004, 1002.125].map((time_ms) => clock.read(time_ms, 'event'))).toEqual([0, 0.001, 0.002125]);
  });

  it('puts equal and late samples just after the last', () => {
    const clock = new RisingClock();
    expect([500, 510, 510, 503, 512].map((time_ms) => clock.read(time_ms, 'event'))).toEqual([0, 0.01, 0.010001, 0.010002, 0.012]);
  });

  it('goes on with true distances where the clock was set back', () => {
    const clock = new RisingClock();
    expect([90_000, 90_100, 4000, 4010, 4030].map((time_ms) => clock.read(time_ms, 'event'))).toEqual([0, 0.1, 0.100001, 0.110001, 0.130001]);
  });

  it('keeps the frame’s clock and the events’ apart once they have parted', () => {
    const clock = new RisingClock();
    clock.read(0, 'event');
    clock.read(10_000, 'event');
    expect(clock.read(20, 'frame')).toBe(10.000001);
    expect(clock.read(10_010, 'event')).toBe(10.01);
    expect(clock.read(40, 'frame')).toBe(10.020001);
    expect(clock.passed_ms(60, 'frame')).toBeCloseTo(20, 9);
  });
});
