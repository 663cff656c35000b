import { describe, expect, it } from 'vitest';
import { makeTimeScale, timeStep_s } from '../../../src/app/timeScale.ts';

describe('the scale of the time slider', () => {
  const scale = makeTimeScale(70, 3700);

  it('goes there and back, rising, from trigger on to the end', () => {
    expect([scale.placeOf(0), scale.placeOf(3700), scale.timeAt(0), scale.timeAt(1)]).toEqual([0, 1, 0, expect.closeTo(3700, 6) as number]);
    let last = -1;
    for (const time_s of [0, 10, 69.9, 70, 70.1, 90, 300, 1500, 3699]) {
      const place = scale.placeOf(time_s);
      expect(place).toBeGreaterThan(last);
      expect(scale.timeAt(place)).toBeCloseTo(time_s, 6);
      last = place;
    }
  });

  it('has ticks at whole times that do not print into each other', () => {
    const { ticks } = scale;
    expect(ticks.length).toBeGreaterThan(4);
    ticks.slice(1).forEach(({ place }, i) => expect(place - ticks[i]!.place).toBeGreaterThan(0.15));
    for (const { place, text } of ticks) {
      const [number, unit] = text.split(' ');
      expect(place).toBeCloseTo(scale.placeOf(Number(number) * (unit === 's' ? 1 : unit === 'min' ? 60 : 3600)), 9);
    }
  });

  it('stands a coat without strokes and one without an end', () => {
    expect(makeTimeScale(0, 100).placeOf(0)).toBe(0);
    expect(makeTimeScale(0, 100).timeAt(1)).toBeCloseTo(100, 9);
    expect(makeTimeScale(70, 70).timeAt(1)).toBe(70);
    expect(makeTimeScale(70, 70).placeOf(70)).toBe(1);
    expect(makeTimeScale(0, 0).placeOf(0)).toBe(0);
  });

  it('steps a second while spraying, then longer and longer', () => {
    expect([timeStep_s(30, 70), timeStep_s(70, 70), timeStep_s(700, 70), timeStep_s(3570, 70)]).toEqual([1, 5, 15, 70]);
  });
});
