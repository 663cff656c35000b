import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { KeyRamp } from '../../../../../src/app/practice/hand/keyRamp.ts';

const FULL_M_S = 0.4;
const RAMP_S = 0.15;

/** Way to the right of a key held for `held_s` and let go, told in steps of `step_s`. */
function wayOf(held_s: number, step_s: number, up = 0): [right_m: number, up_m: number] {
  const ramp = new KeyRamp();
  let right_m = 0;
  let up_m = 0;
  const go = (span_s: number, share: number): void => {
    for (let t_s = 0; t_s < span_s - 1e-12; t_s += step_s) {
      ramp.advance(Math.min(step_s, span_s - t_s), share * (up > 0 ? Math.SQRT1_2 : 1), share * up * Math.SQRT1_2, FULL_M_S);
      right_m += ramp.right_m;
      up_m += ramp.up_m;
    }
  };
  go(held_s, 1);
  go(1, 0);
  return [right_m, up_m];
}

describe('KeyRamp', () => {
  it('gains behind what it lost before: a key held for T goes full speed times T', () => {
    for (const step_s of [1, 0.25, 0.0166, 0.004]) expect(wayOf(0.8, step_s)[0]).toBeCloseTo(FULL_M_S * 0.8, 12);
  });

  it('makes a short tap a short way, v T²/ramp', () => {
    for (const step_s of [1, 0.0166]) expect(wayOf(0.06, step_s)[0]).toBeCloseTo((FULL_M_S * 0.06 ** 2) / RAMP_S, 12);
  });

  it('keeps the speed on a diagonal', () => {
    const [right_m, up_m] = wayOf(0.8, 0.0166, 1);
    expect(Math.hypot(right_m, up_m)).toBeCloseTo(FULL_M_S * 0.8, 12);
    expect(right_m).toBeCloseTo(up_m, 12);
  });

  it('goes the same way at every frame rate, also when the direction is changed in mid-ramp', () => {
    const path = (cuts: readonly number[]): [number, number] => {
      const ramp = new KeyRamp();
      let right_m = 0;
      let up_m = 0;
      const turns = [0.1, 0.25, 0.6];
      const times = [...new Set([0, ...turns, ...cuts, 1])].sort((a, b) => a - b);
      for (let i = 1; i < times.length; i++) {
        const from_s = times[i - 1]!;
        const [right, up] = from_s < 0.1 ? [1, 0] : from_s < 0.25 ? [-1, 0] : from_s < 0.6 ? [0, 1] : [0, 0];
        ramp.advance(times[i]! - from_s, right, up, FULL_M_S);
        right_m += ramp.right_m;
        up_m += ramp.up_m;
      }
      return [right_m, up_m];
    };
    const whole = path([]);
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0.001, max: 0.999, noNaN: true }), { maxLength: 30 }), (cuts) => {
        path(cuts).forEach((way_m, i) => expect(way_m).toBeCloseTo(whole[i]!, 12));
      }),
    );
  });
});
