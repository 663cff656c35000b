import { describe, expect, it } from 'vitest';
import { describeWindow } from '../../../../sim/run/window/describeWindow.ts';
import { predictorFor } from '../../../../sim/run/window/predictPoints.ts';
import { WINDOW_AXES, withAxis, type WindowAxis } from '../../../../sim/run/window/sprayPoint.ts';
import { usualRange } from '../../../../sim/run/window/usualRange.ts';
import { sideValue } from '../../../../sim/run/window/sideValue.ts';
import { WINDOW_FAULTS, type WindowMap, type WindowSide } from '../../../../sim/verdict/workingWindow.ts';
import { mapWindow, windowStrips } from '../../../../sim/run/window/workingWindow.ts';
import { pointOf, wall } from '../../../helpers/walls.ts';

const setting = wall({ coat: { plan: { cross: true }, target: { thickness_um: 100 } } });
const predictor = predictorFor(setting);

function side(axis: WindowAxis, count: number, ends = usualRange(setting, axis)): WindowSide {
  return { axis, low: ends[0], high: ends[1], count };
}

describe('mapWindow', () => {
  const map = mapWindow(setting, { x: side('distance', 13, [0.08, 0.32]), y: side('speed', 9) });

  it('holds at each place what the point there is predicted to be', () => {
    for (const [column, row] of [[0, 0], [12, 0], [5, 4], [12, 8]] as const) {
      const point = pointOf(setting, { distance_m: sideValue(map.x, column), speed_m_s: sideValue(map.y, row) });
      const film = predictor([point])[0]!;
      const at = row * 13 + column;
      const worst = WINDOW_FAULTS.reduce((least, fault) => (film.slack[fault] < film.slack[least] ? fault : least));
      for (const fault of WINDOW_FAULTS) expect(map.slack[fault][at]).toBe(Math.fround(film.slack[fault]));
      expect(map.codes[at]).toBe(film.slack[worst] < 0 ? 1 + WINDOW_FAULTS.indexOf(worst) : 0);
      expect(map.inRange[at]).toBe(film.distanceInRange ? 1 : 0);
    }
  });

  it('has a window between thin and heavy, and marks the distances out of range', () => {
    expect(new Set(map.codes)).toEqual(new Set([0, 1, 2, 3]));
    expect(Array.from(map.inRange.subarray(0, 3))).toEqual([0, 1, 1]);
    expect(describeWindow(map).outOfRangeShare).toBeCloseTo(1 / 13, 12);
  });

  it('comes row by row, and stops when asked', () => {
    const strips = windowStrips(setting, { x: side('overlap', 4), y: side('fluid', 3) });
    expect([strips.next().value, strips.next().value, strips.next().value]).toEqual([1, 2, 3]);
    const last = strips.next();
    expect(last.done).toBe(true);
    expect((last.value as WindowMap).codes).toHaveLength(12);
    expect(() => mapWindow(setting, { x: side('overlap', 4), y: side('fluid', 3) }, { shouldStop: () => true })).toThrow(/stopped on request/);
  });

  it.each([
    ['thinner', 31, 3],
    ['temperature', 3, 31],
  ] as const)('interpolates along %s where every point needs a law, right to 0.02 of a limit', (_, thinners, temperatures) => {
    const plane = { x: side('thinner', thinners, [0.1, 0.8]), y: side('temperature', temperatures, [289.15, 303.15]) };
    const rough = mapWindow(setting, plane);
    expect(rough.interpolated).toBe(true);
    for (const place of [1, 2, 8, 11, 16, 23, 29]) {
      const [column, row] = thinners > temperatures ? [place, 1] : [1, place];
      const warmed = withAxis(pointOf(setting), 'temperature', sideValue(plane.y, row));
      const film = predictor([withAxis(warmed, 'thinner', sideValue(plane.x, column))])[0]!;
      for (const fault of WINDOW_FAULTS) expect(Math.abs(rough.slack[fault][row * thinners + column]! - film.slack[fault]), `${fault} at ${place}`).toBeLessThan(0.02);
    }
  });

  it('warms the room before it wets it, whichever side each is on', () => {
    const [t, h] = [side('temperature', 2, [290.15, 300.15]), side('humidity', 2, [0.3, 0.6])];
    const across = mapWindow(setting, { x: t, y: h });
    const along = mapWindow(setting, { x: h, y: t });
    expect([along.slack.blush[0], along.slack.blush[2], along.slack.blush[1], along.slack.blush[3]]).toEqual(Array.from(across.slack.blush));
    const direct = predictor([pointOf(setting, { temperature_K: 300.15, humidityFraction: 0.6 })])[0]!;
    expect(across.slack.blush[3]).toBe(Math.fround(direct.slack.blush));
  });

  it('refuses planes that are none', () => {
    expect(() => mapWindow(setting, { x: side('speed', 4), y: side('speed', 4) })).toThrow(/makes no plane/);
    expect(() => mapWindow(setting, { x: side('speed', 1), y: side('fluid', 4) })).toThrow(expect.objectContaining({ code: 'range' }) as Error);
    expect(() => mapWindow(setting, { x: side('speed', 4, [0.5, 0.3]), y: side('fluid', 4) })).toThrow(/above the low end/);
    expect(() => mapWindow(setting, { x: side('speed', 4, [NaN, 0.3]), y: side('fluid', 4) })).toThrow(expect.objectContaining({ code: 'range' }) as Error);
  });
});

describe('usualRange', () => {
  it.each(WINDOW_AXES)('%s holds the stated point, inside', (axis) => {
    const [low, high] = usualRange(setting, axis);
    const stated = { distance: 0.2, speed: 0.36, overlap: 0.5, fluid: 3e-6, thinner: 0.33, temperature: 294.15, humidity: 0.5 }[axis];
    expect(low).toBeLessThan(stated);
    expect(high).toBeGreaterThan(stated);
  });
  it('reaches as far as the set-up may be believed, and no farther', () => {
    expect(usualRange(setting, 'distance')).toEqual(setting.setUp.distanceRange_m);
  });
  it('is widened round a coat beside the usual', () => {
    const quick = wall({ coat: { plan: { speed_m_s: 1.1 } } });
    expect(usualRange(quick, 'speed')[1]).toBeGreaterThan(1.1);
  });
});
