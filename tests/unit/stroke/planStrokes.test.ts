import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../../sim/base/errors.ts';
import { fluidShare } from '../../../sim/base/trigger.ts';
import { poseAt } from '../../../sim/stroke/path.ts';
import type { Planned, StrokePlan } from '../../../sim/stroke/plan.ts';
import { planStrokes } from '../../../sim/stroke/planStrokes.ts';
import { panelOf, rectangle } from './panels.ts';

const plan: StrokePlan = {
  overlapFraction: 0.5,
  speed_m_s: 0.4,
  distance_m: 0.2,
  direction_rad: 0,
  order: 'serpentine',
  lead_m: 0.05,
  lag_m: 0.06,
  firstStroke_m: 0,
  cross: false,
};
const FAN_M = 0.25;
const LAG_S = 0.08;

/** Where fluid opens and closes as the path and the lag say, not as `meant` says. */
function fluidEnds(planned: Planned, stroke: number, lag_s: number): [number, number, number, number] {
  const { firstRow, lastRow } = planned.strokes[stroke]!;
  const open = poseAt(planned.path, planned.path.t_s[firstRow]! + lag_s);
  const close = poseAt(planned.path, planned.path.t_s[lastRow]! + lag_s);
  return [open.x_m, open.y_m, close.x_m, close.y_m];
}

describe('planStrokes on a rectangle', () => {
  const planned = planStrokes(rectangle(1, 0.5), plan, FAN_M, LAG_S);

  it('lays lines at the pitch, from the bottom edge to the top edge', () => {
    expect(planned.strokes.length).toBe(5);
    planned.strokes.forEach((stroke, i) => {
      expect(stroke.meant.start_m[1]).toBeCloseTo(i * 0.125, 12);
      expect(stroke.meant.end_m[1]).toBeCloseTo(i * 0.125, 12);
    });
  });

  it('opens the fluid by the lead outside the edge and closes it by the lag, both ways', () => {
    planned.strokes.forEach((stroke, i) => {
      const [openX, , closeX] = fluidEnds(planned, i, LAG_S);
      expect(openX).toBeCloseTo(i % 2 === 0 ? -0.05 : 1.05, 12);
      expect(closeX).toBeCloseTo(i % 2 === 0 ? 1.06 : -0.06, 12);
      expect(stroke.meant.start_m[0]).toBeCloseTo(openX, 12);
      expect(stroke.meant.end_m[0]).toBeCloseTo(closeX, 12);
    });
  });

  it('pulls the trigger earlier by the lag times the speed, with the gun already moving', () => {
    const { firstRow } = planned.strokes[0]!;
    expect(planned.path.x_m[firstRow]!).toBeCloseTo(-0.05 - 0.4 * LAG_S, 12);
    expect(planned.path.x_m[firstRow - 1]!).toBeLessThan(planned.path.x_m[firstRow]! - 0.03);
    expect(planned.path.trigger[firstRow - 1]!).toBe(0);
  });

  it('moves at the plan speed throughout, fluid only between first and last row', () => {
    const { path } = planned;
    const spraying = new Set(planned.strokes.map((stroke) => stroke.firstRow));
    for (let i = 0; i + 1 < path.count; i++) {
      const length = Math.hypot(path.x_m[i + 1]! - path.x_m[i]!, path.y_m[i + 1]! - path.y_m[i]!);
      expect(length / (path.t_s[i + 1]! - path.t_s[i]!)).toBeCloseTo(0.4, 9);
      expect(fluidShare(path.trigger[i]!)).toBe(spraying.has(i) ? 1 : 0);
    }
    for (const stroke of planned.strokes) expect(stroke.lastRow).toBe(stroke.firstRow + 1);
  });

  it('says which overlap each stroke was meant to have', () => {
    expect(planned.strokes[0]!.meant.overlapFraction).toBeNaN();
    for (const stroke of planned.strokes.slice(1)) expect(stroke.meant.overlapFraction).toBe(0.5);
  });

  it('runs every stroke the same way when told one-way', () => {
    const oneWay = planStrokes(rectangle(1, 0.5), { ...plan, order: 'one-way' }, FAN_M, LAG_S);
    for (const { meant } of oneWay.strokes) expect(meant.end_m[0]).toBeGreaterThan(meant.start_m[0]);
  });

  it('keeps the pitch and passes the far edge when the panel is no whole number of pitches', () => {
    const odd = planStrokes(rectangle(1, 0.55), { ...plan, firstStroke_m: 0.02 }, FAN_M, 0);
    const ys = odd.strokes.map((stroke) => stroke.meant.start_m[1]);
    expect(ys.at(-1)!).toBeGreaterThanOrEqual(0.55 - 0.02);
    expect(ys.at(-2)!).toBeLessThan(0.55 - 0.02);
    ys.slice(1).forEach((y, i) => { expect(y - ys[i]!).toBeCloseTo(0.125, 12); });
  });
});

describe('planStrokes in other directions', () => {
  it('turns a square plan with the square', () => {
    const along = planStrokes(rectangle(0.5, 0.5), plan, FAN_M, LAG_S);
    const up = planStrokes(rectangle(0.5, 0.5), { ...plan, direction_rad: Math.PI / 2 }, FAN_M, LAG_S);
    expect(up.strokes.length).toBe(along.strokes.length);
    along.strokes.forEach(({ meant }, i) => {
      const turned = up.strokes[i]!.meant;
      expect(turned.start_m[0]).toBeCloseTo(0.5 - meant.start_m[1], 12);
      expect(turned.start_m[1]).toBeCloseTo(meant.start_m[0], 12);
    });
    expect(up.path.fan_rad[0]).toBeCloseTo(Math.PI, 12);
  });

  it('adds a cross pass at right angles with the fan square to it', () => {
    const crossed = planStrokes(rectangle(1, 0.5), { ...plan, cross: true }, FAN_M, LAG_S);
    const second = crossed.strokes.filter((stroke) => stroke.pass === 1);
    expect(second.length).toBe(9);
    for (const { meant, firstRow } of second) {
      expect(meant.start_m[0]).toBeCloseTo(meant.end_m[0], 12);
      expect(crossed.path.fan_rad[firstRow]).toBeCloseTo(Math.PI, 12);
    }
    expect(second[0]!.meant.overlapFraction).toBeNaN();
    expect(crossed.strokes.map((stroke) => stroke.index)).toEqual(crossed.strokes.map((_, i) => i));
  });

  it('reaches into the corners of a slanted panel with the whole fan', () => {
    const triangle = panelOf([[0, 0], [1, 0], [0, 1]]);
    const planned = planStrokes(triangle, plan, FAN_M, 0);
    for (const { meant } of planned.strokes) {
      const y = meant.start_m[1];
      const right = Math.max(meant.start_m[0], meant.end_m[0]);
      const widest = 1 - Math.max(0, y - FAN_M / 2);
      expect(right).toBeGreaterThanOrEqual(widest - 1e-9);
    }
  });
});

describe('planStrokes over gaps', () => {
  const plain = { ...plan, lead_m: 0.03, lag_m: 0.03 };
  /** 2 (0.03 + 0.03) + 0.25 + 0.25 · 0.4 = 0.47 m is the longest gap that is sprayed over. */
  const notched = (gap: number) => {
    const left = 1 - gap / 2;
    const right = 1 + gap / 2;
    return panelOf([[0, 0], [2, 0], [2, 1], [right, 1], [right, 0.4], [left, 0.4], [left, 1], [0, 1]]);
  };

  it('splits at a notch longer than a hand would spray over, not at a shorter one', () => {
    const pieces = (gap: number) => planStrokes(notched(gap), plain, FAN_M, LAG_S).strokes.filter(({ meant }) => meant.start_m[1] > 0.53).length;
    expect(pieces(0.46)).toBe(4);
    expect(pieces(0.48)).toBe(8);
  });

  it('lays the pieces of a split line in the order of travel, lead and lag at the notch', () => {
    const planned = planStrokes(notched(0.6), plain, FAN_M, LAG_S);
    const line = planned.strokes.filter(({ meant }) => Math.abs(meant.start_m[1] - 0.625) < 1e-9);
    expect(line.map(({ meant }) => [meant.start_m[0], meant.end_m[0]])).toEqual([
      [expect.closeTo(2.03, 9), expect.closeTo(1.27, 9)],
      [expect.closeTo(0.73, 9), expect.closeTo(-0.03, 9)],
    ]);
  });

  it('sprays over a small hole and skips one wider than the fan and longer than the rule', () => {
    const hole = (size: number): [number, number][] => [[1 - size, 1 - size], [1 - size, 1 + size], [1 + size, 1 + size], [1 + size, 1 - size]];
    const count = (size: number) => planStrokes(rectangle(2, 2, [hole(size)]), plain, FAN_M, 0).strokes.length;
    expect(count(0.05)).toBe(17);
    expect(count(0.45)).toBeGreaterThan(17);
  });
});

describe('planStrokes refuses', () => {
  const cases: [string, Partial<StrokePlan>][] = [
    ['overlap', { overlapFraction: 1 }],
    ['overlap', { overlapFraction: NaN }],
    ['speed', { speed_m_s: 0 }],
    ['distance', { distance_m: 0 }],
    ['lead', { lead_m: -0.01 }],
    ['first stroke', { firstStroke_m: 0.6 }],
  ];
  for (const [name, change] of cases) {
    it(`${name} ${JSON.stringify(Object.values(change)[0])}`, () => {
      expect(() => planStrokes(rectangle(1, 0.5), { ...plan, ...change }, FAN_M, LAG_S)).toThrow(CrosscoatError);
      expect(() => planStrokes(rectangle(1, 0.5), { ...plan, ...change }, FAN_M, LAG_S)).toThrow(`planStrokes: ${name}`);
    });
  }

  it('a pitch that would need an absurd number of lines', () => {
    expect(() => planStrokes(rectangle(1, 50), { ...plan, overlapFraction: 0.95 }, 0.002, 0)).toThrow('more than 20000');
  });

  it('warns where the fan is wider than the panel, and still lays a stroke', () => {
    const planned = planStrokes(rectangle(1, 0.1), { ...plan, firstStroke_m: 0.05 }, FAN_M, LAG_S);
    expect(planned.strokes.length).toBe(1);
    expect(planned.warnings.map((warning) => warning.code)).toEqual(['fan-wider-than-panel']);
  });
});
