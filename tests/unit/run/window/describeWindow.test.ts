import { describe, expect, it } from 'vitest';
import { describeWindow } from '../../../../sim/run/window/describeWindow.ts';
import { sideValue } from '../../../../sim/run/window/sideValue.ts';
import { WINDOW_FAULTS, type WindowFault, type WindowMap, type WindowPlane } from '../../../../sim/verdict/workingWindow.ts';
import { pointOf, wall } from '../../../helpers/walls.ts';

const through = pointOf(wall());
/** Distance 0.1 to 0.3 m (through 0.2) against speed 0.2 to 0.6 m/s (through 0.36): a step is 25 mm and 0.036 m/s. */
const PLANE: WindowPlane = { x: { axis: 'distance', low: 0.1, high: 0.3, count: 101 }, y: { axis: 'speed', low: 0.2, high: 0.6, count: 101 } };

/** A made-up map: the slack of some faults as a function of place, all others wide open. */
function mapOf(slackAt: Partial<Record<WindowFault, (x: number, y: number) => number>>, inRange: (x: number) => boolean = () => true): WindowMap {
  const points = PLANE.x.count * PLANE.y.count;
  const slack = Object.fromEntries(WINDOW_FAULTS.map((fault) => [fault, new Float32Array(points).fill(1)])) as Record<WindowFault, Float32Array>;
  const map = { ...PLANE, through, faults: WINDOW_FAULTS, codes: new Uint8Array(points), slack, inRange: new Uint8Array(points).fill(1), interpolated: false };
  for (let at = 0; at < points; at++) {
    const [x, y] = [sideValue(PLANE.x, at % PLANE.x.count), sideValue(PLANE.y, Math.floor(at / PLANE.x.count))];
    let least = 0;
    WINDOW_FAULTS.forEach((fault, i) => {
      const value = slackAt[fault]?.(x, y) ?? 1;
      slack[fault][at] = value;
      if (value < least) [least, map.codes[at]] = [value, i + 1];
    });
    map.inRange[at] = inRange(x) ? 1 : 0;
  }
  return map;
}

/** Inside 0.15 < x < 0.25, 0.3 < y < 0.5: heavy near and slow, thin far and fast. */
const box = () => mapOf({ 'heavy-spot': (x, y) => Math.min(x / 0.15, y / 0.3) - 1, 'thin-lap': (x, y) => Math.min(0.25 / x, 0.5 / y) - 1 });
/** Half a point of either side. */
const POINT = { x: 0.001, y: 0.002 };

describe('describeWindow', () => {
  it('measures a box: share, ends, best place, margins and what lies there', () => {
    const found = describeWindow(box());
    expect(found.share).toBeCloseTo(0.25, 1);
    expect(found.window!.holdsStated).toBe(true);
    expect(Math.abs(found.window!.x[0] - 0.15)).toBeLessThanOrEqual(2 * POINT.x);
    expect(Math.abs(found.window!.y[1] - 0.5)).toBeLessThanOrEqual(2 * POINT.y);
    // 100 mm are four steps of 25 mm, 0.2 m/s more than five of 0.036: distance bounds the clearance, and any speed in between will do.
    expect(Math.abs(found.window!.best.x - 0.2)).toBeLessThanOrEqual(2 * POINT.x);
    expect(found.window!.bestClearance_steps).toBeCloseTo(2, 0);
    const { x, y } = found.statedMargins;
    expect(x!.less.by).toBeCloseTo(0.05, 5);
    expect(x!.more.by).toBeCloseTo(0.05, 3);
    expect(y!.less.by).toBeCloseTo(0.06, 5);
    expect(y!.more.by).toBeCloseTo(0.14, 3);
    expect([x!.less.limit, x!.more.limit, y!.less.limit, y!.more.limit]).toEqual(['heavy-spot', 'thin-lap', 'heavy-spot', 'thin-lap']);
    expect(found.statedFault).toBeNull();
  });

  it('takes an ellipse for centred in its middle, in steps of each axis', () => {
    const round = mapOf({ run: (x, y) => 1 - Math.hypot((x - 0.18) / 0.05, (y - 0.42) / 0.072) });
    const { best, bestClearance_steps } = describeWindow(round).window!;
    expect(Math.abs(best.x - 0.18)).toBeLessThanOrEqual(2 * POINT.x);
    expect(Math.abs(best.y - 0.42)).toBeLessThanOrEqual(2 * POINT.y);
    // Both half axes are two steps; rim points lie up to one spacing outside.
    expect(bestClearance_steps).toBeGreaterThanOrEqual(2);
    expect(bestClearance_steps).toBeLessThan(2.15);
  });

  it('chooses the window that holds the stated point, else the nearest', () => {
    const two = (gap: number) => mapOf({ run: (x, y) => Math.max(0.03 - Math.abs(x - 0.14), 0.02 - Math.abs(x - 0.2 - gap), -0.01 - 0 * y) });
    expect(describeWindow(two(0)).window!.holdsStated).toBe(true);
    const beside = describeWindow(two(0.04)).window!;
    expect(beside.holdsStated).toBe(false);
    expect(beside.x[0]).toBeGreaterThan(0.2);
  });

  it('does not take distances out of range into the window', () => {
    const narrow = mapOf({}, (x) => x > 0.17 && x < 0.24);
    const found = describeWindow(narrow);
    expect(found.window!.x[0]).toBeGreaterThan(0.17);
    expect(found.statedMargins.x!.less.limit).toBe('distance-range');
    expect(found.statedMargins.y!.more).toEqual({ by: expect.closeTo(0.24, 12) as number, limit: 'plane' });
    expect(found.outOfRangeShare).toBeGreaterThan(0.6);
  });

  it('says what stands in the way where there is no window', () => {
    const none = describeWindow(mapOf({ 'thin-lap': (x) => -0.1 - Math.abs(x - 0.26), blush: () => -0.05 }));
    expect(none.window).toBeNull();
    expect(none.share).toBe(0);
    expect(none.nearest.x).toBeCloseTo(0.26, 6);
    expect(none.nearestFaults.map(({ fault }) => fault)).toEqual(['thin-lap', 'blush']);
    expect(none.nearestFaults[0]!.slack).toBeCloseTo(-0.1, 6);
    expect(none.statedFault).toBe('thin-lap');
    expect(none.statedMargins).toEqual({ x: null, y: null });
  });
});
