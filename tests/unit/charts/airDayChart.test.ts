import { describe, expect, it } from 'vitest';
import { dayDomain, dayPath, drawnStretch, hourTicks } from '../../../src/charts/airDayChart.ts';

describe('the day as a picture', () => {
  it('holds all lines, with room, and is never empty', () => {
    const [low, high] = dayDomain([{ name: 'air', kind: 'air', values: [10, 20] }, { name: 'film', kind: 'film', values: [4, NaN] }]);
    expect(low).toBeLessThan(4);
    expect(high).toBeGreaterThan(20);
    expect(dayDomain([])).toEqual([0, 1]);
  });

  it('draws a path', () => {
    expect(dayPath([0, 60], [1, 2], (minute) => minute, (value) => -value)).toBe('M0.0,-1.0L60.0,-2.0');
  });

  it('writes no more clocks than fit', () => {
    expect(hourTicks(470, 1085, 640, 64)).toEqual([480, 600, 720, 840, 960, 1080]);
    expect(hourTicks(0, 1440, 250, 64)).toEqual([0, 720, 1440]);
  });

  it('gives one hour alone a width within the day', () => {
    expect(drawnStretch({ from_min: 60, to_min: 60 }, [60, 120])).toEqual({ from_min: 60, to_min: 75 });
    expect(drawnStretch({ from_min: 60, to_min: 180 }, [0, 240])).toEqual({ from_min: 60, to_min: 180 });
  });
});
