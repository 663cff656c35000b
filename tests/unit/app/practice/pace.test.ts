import { describe, expect, it } from 'vitest';
import { Pace, TICK_M } from '../../../../src/app/practice/pace.ts';

/** Two lines of 0.45 and 0.3 m, the second with a corner. */
const LINES = [Float64Array.of(0, 0, 0.45, 0), Float64Array.of(0.45, 0.1, 0.35, 0.1, 0.35, 0.3)];
const SPEED_M_S = 0.3;
const FIRST_S = 1.5;
const REST_S = 1;
const SECOND_S = 1;
const ROUND_S = FIRST_S + SECOND_S + 2 * REST_S;

const pace = new Pace(LINES, SPEED_M_S);

function placeAt(time_s: number): readonly number[] {
  return pace.at(time_s)!.at_m;
}

describe('the pace', () => {
  it.each([
    [0, 0, 0],
    [0.5, 0.15, 0],
    [FIRST_S, 0.45, 0],
    [FIRST_S + 0.9 * REST_S, 0.45, 0],
    [FIRST_S + REST_S, 0.45, 0.1],
    [FIRST_S + REST_S + 0.2, 0.39, 0.1],
    [FIRST_S + REST_S + 0.5, 0.35, 0.15],
    [FIRST_S + REST_S + SECOND_S, 0.35, 0.3],
    [FIRST_S + REST_S + SECOND_S + 0.9 * REST_S, 0.35, 0.3],
    [ROUND_S + 0.5, 0.15, 0],
    [7 * ROUND_S + FIRST_S + REST_S + 0.5, 0.35, 0.15],
  ])('after %f s is at x = %f, y = %f m', (time_s, x_m, y_m) => {
    const [x, y] = placeAt(time_s);
    expect([x, y]).toEqual([expect.closeTo(x_m, 9), expect.closeTo(y_m, 9)]);
  });

  it('travels at the speed that is meant, and never jumps along a line', () => {
    for (let t_s = 0.01; t_s < FIRST_S; t_s += 0.01) {
      const [from, to] = [placeAt(t_s - 0.01), placeAt(t_s)];
      expect(Math.hypot(to[0]! - from[0]!, to[1]! - from[1]!)).toBeCloseTo(SPEED_M_S * 0.01, 9);
    }
  });

  it('ticks once each 0.1 m of travel, none in the rests, and never fewer than before', () => {
    expect(TICK_M).toBe(0.1);
    // Beside the very moment of a tick, which is a matter of rounding.
    expect([0, 0.33, 0.34, 1.32, 1.34, 1.5, 2.4].map((t_s) => pace.at(t_s)!.ticks)).toEqual([0, 0, 1, 3, 4, 4, 4]);
    expect([2.51, 2.84, 3.49].map((t_s) => pace.at(t_s)!.ticks)).toEqual([4, 5, 6]);
    expect(pace.at(10 * ROUND_S + 0.34)!.ticks - pace.at(9 * ROUND_S + 0.34)!.ticks).toBe(pace.at(ROUND_S + 0.34)!.ticks - 1);
    let before = 0;
    for (let t_s = 0; t_s < 3 * ROUND_S; t_s += 1 / 120) {
      const { ticks } = pace.at(t_s)!;
      expect(ticks - before, `at ${t_s} s`).toBeGreaterThanOrEqual(0);
      expect(ticks - before, `at ${t_s} s`).toBeLessThanOrEqual(1);
      before = ticks;
    }
  });

  it('rests for as long as it is told', () => {
    const [x] = new Pace(LINES, SPEED_M_S, 0.25).at(FIRST_S + 0.25 + 0.2)!.at_m;
    expect(x).toBeCloseTo(0.39, 9);
  });

  it('has nothing to follow without a line; a point is none', () => {
    expect(new Pace([], SPEED_M_S).at(1)).toBeNull();
    expect(new Pace([Float64Array.of(0.1, 0.2)], SPEED_M_S).at(1)).toBeNull();
    expect(new Pace([Float64Array.of(0.1, 0.2), LINES[0]!], SPEED_M_S).at(0.5)!.at_m[0]).toBeCloseTo(0.15, 9);
  });

  it('stands on a line without length for its rest', () => {
    expect(new Pace([Float64Array.of(0.1, 0.2, 0.1, 0.2)], SPEED_M_S).at(5.3)).toEqual({ at_m: [0.1, 0.2], ticks: 0 });
  });
});
