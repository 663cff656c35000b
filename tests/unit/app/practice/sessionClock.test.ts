import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SessionClock } from '../../../../src/app/practice/sessionClock.ts';

describe('SessionClock', () => {
  it('goes with the hand, and lets a sleep count for no more than a gap', () => {
    const clock = new SessionClock(1.5);
    expect([5, 5.25, 6, 100, 100.5].map((time_s) => clock.read(time_s))).toEqual([5, 5.25, 6, 7.5, 8]);
  });

  it('goes on after time that was let pass', () => {
    const clock = new SessionClock(1.5);
    clock.read(2);
    clock.goOnFrom(62, 2.3);
    expect(clock.read(2.31)).toBe(62.01);
  });

  it('gives times that a recording tells apart, whatever the hand and the shifts', () => {
    const step = fc.oneof(fc.constant(1e-6), fc.double({ min: 1e-6, max: 40, noNaN: true }));
    fc.assert(
      fc.property(fc.array(fc.record({ step, wait: fc.option(fc.double({ min: 0, max: 900, noNaN: true }), { freq: 5 }) }), { maxLength: 60 }), (rows) => {
        const clock = new SessionClock(1.5);
        let hand_s = 0.1234567;
        const written = rows.map(({ step: step_s, wait }) => {
          hand_s = Math.round((hand_s + step_s) * 1e6) / 1e6;
          const at_s = clock.read(hand_s);
          if (wait !== null) clock.goOnFrom(at_s + wait, hand_s);
          return at_s.toFixed(6);
        });
        written.forEach((text, i) => {
          if (i > 0) expect(Number(text)).toBeGreaterThan(Number(written[i - 1]));
        });
      }),
    );
  });
});
