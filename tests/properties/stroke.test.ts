import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HAND_PRESETS, wander } from '../../sim/stroke/hand.ts';
import { measureStrokes } from '../../sim/stroke/measure.ts';
import { poseAt } from '../../sim/stroke/path.ts';
import type { StrokePlan } from '../../sim/stroke/plan.ts';
import { planStrokes } from '../../sim/stroke/planStrokes.ts';
import { segmentPath } from '../../sim/stroke/segment.ts';
import { makeSession } from '../helpers/session.ts';
import { panelOf, rectangle } from '../unit/stroke/panels.ts';

const FAN_M = 0.25;
const LAG_S = 0.05;

const plans: fc.Arbitrary<StrokePlan> = fc.record({
  overlapFraction: fc.double({ min: 0.2, max: 0.75, noNaN: true }),
  speed_m_s: fc.double({ min: 0.15, max: 0.6, noNaN: true }),
  distance_m: fc.double({ min: 0.12, max: 0.3, noNaN: true }),
  direction_rad: fc.double({ min: -3, max: 3, noNaN: true }),
  order: fc.constantFrom('serpentine' as const, 'one-way' as const),
  lead_m: fc.double({ min: 0.02, max: 0.1, noNaN: true }),
  lag_m: fc.double({ min: 0.02, max: 0.1, noNaN: true }),
  firstStroke_m: fc.double({ min: 0, max: 0.1, noNaN: true }),
  cross: fc.boolean(),
});

describe('a recorded plan under sensor noise', () => {
  it('is found again stroke by stroke, speed, distance and overlap within 2 %', () => {
    fc.assert(
      fc.property(plans, fc.integer({ min: 0, max: 1e6 }), fc.constantFrom(50, 100, 500), (plan, seed, rate_Hz) => {
        const panel = rectangle(0.9, 0.7);
        const width_m = FAN_M * (plan.distance_m / 0.2);
        const planned = planStrokes(panel, plan, width_m, LAG_S);
        const path = makeSession({ planned, seed, rate_Hz, noise_m: 0.001 });
        const { strokes } = segmentPath(path);
        const long = planned.strokes.filter(({ meant }) => Math.hypot(meant.end_m[0] - meant.start_m[0], meant.end_m[1] - meant.start_m[1]) > 0.3);
        fc.pre(long.length === planned.strokes.length);
        expect(strokes.length).toBe(planned.strokes.length);
        expect(strokes.map(({ pass }) => pass)).toEqual(planned.strokes.map(({ pass }) => pass));
        const measures = measureStrokes({ path, strokes, panel, fanWidthPerDistance: FAN_M / 0.2, triggerLag_s: LAG_S });
        const truth = measureStrokes({ path: planned.path, strokes: planned.strokes, panel, fanWidthPerDistance: FAN_M / 0.2, triggerLag_s: LAG_S });
        measures.forEach((measure, i) => {
          const { length_m, overlap } = truth[i]!;
          expect(Math.abs(measure.speed.mean_m_s / plan.speed_m_s - 1)).toBeLessThan(0.02);
          expect(Math.abs(measure.distance.mean_m / plan.distance_m - 1)).toBeLessThan(0.02);
          // The trigger is seen one sample late at each end.
          expect(Math.abs(measure.length_m - length_m)).toBeLessThan(0.02 * length_m + plan.speed_m_s / rate_Hz);
          if (overlap === null) return;
          expect(measure.overlap!.neighbour).toBe(overlap.neighbour);
          expect(Math.abs(measure.overlap!.meanFraction - overlap.meanFraction)).toBeLessThan(0.02);
        });
      }),
      { numRuns: 40 },
    );
  });
});

describe('planStrokes', () => {
  const corner = fc.tuple(fc.double({ min: 0.2, max: 1, noNaN: true }), fc.double({ min: 0.2, max: 1, noNaN: true }));

  it('passes the whole fan over every place of the panel: some stroke comes within half a pitch, fluid on', () => {
    fc.assert(
      fc.property(plans, corner, fc.double({ min: 0.05, max: 0.95, noNaN: true }), fc.double({ min: 0.05, max: 0.95, noNaN: true }), (plan, [width, height], u, v) => {
        const flat = { ...plan, firstStroke_m: Math.min(plan.firstStroke_m, ((1 - plan.overlapFraction) * FAN_M) / 2) };
        const panel = panelOf([[0, 0], [width, 0], [width * 0.8, height], [width * 0.1, height * 0.9]]);
        // A place inside by bilinear mixing of the corners.
        const x = (1 - v) * u * width + v * ((1 - u) * width * 0.1 + u * width * 0.8);
        const y = v * ((1 - u) * height * 0.9 + u * height);
        const { strokes } = planStrokes(panel, flat, FAN_M, LAG_S);
        const pitch_m = (1 - plan.overlapFraction) * FAN_M;
        const nearest = Math.min(...strokes.map(({ meant: { start_m, end_m } }) => {
          const length = Math.hypot(end_m[0] - start_m[0], end_m[1] - start_m[1]);
          const dx = (end_m[0] - start_m[0]) / length;
          const dy = (end_m[1] - start_m[1]) / length;
          const along = (x - start_m[0]) * dx + (y - start_m[1]) * dy;
          return along < 0 || along > length ? Infinity : Math.abs((y - start_m[1]) * dx - (x - start_m[0]) * dy);
        }));
        expect(nearest).toBeLessThanOrEqual(pitch_m / 2 + 1e-9);
      }),
    );
  });

  it('gives a turned plan on a turned panel', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const panel = panelOf([[0, 0], [1, 0.1], [0.8, 0.6], [0.1, 0.5]]);
        const turned = panelOf([[0, 0], [-0.1, 1], [-0.6, 0.8], [-0.5, 0.1]]);
        const a = planStrokes(panel, plan, FAN_M, LAG_S);
        const b = planStrokes(turned, { ...plan, direction_rad: plan.direction_rad + Math.PI / 2 }, FAN_M, LAG_S);
        expect(b.path.count).toBe(a.path.count);
        for (let i = 0; i < a.path.count; i++) {
          expect(b.path.x_m[i]).toBeCloseTo(-a.path.y_m[i]!, 9);
          expect(b.path.y_m[i]).toBeCloseTo(a.path.x_m[i]!, 9);
          expect(b.path.t_s[i]).toBeCloseTo(a.path.t_s[i]!, 9);
        }
      }),
    );
  });
});

describe('wander', () => {
  const planned = planStrokes(rectangle(1, 0.5), { overlapFraction: 0.5, speed_m_s: 0.3, distance_m: 0.2, direction_rad: 0, order: 'serpentine', lead_m: 0.05, lag_m: 0.05, firstStroke_m: 0, cross: true }, FAN_M, LAG_S);

  it('keeps the strokes and stays within the hand\'s amounts', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4294967295 }), fc.constantFrom('practised' as const, 'beginner' as const), (seed, kind) => {
        const hand = HAND_PRESETS[kind];
        const wandered = wander(planned, hand, seed);
        expect(wandered.strokes.length).toBe(planned.strokes.length);
        const { path } = wandered;
        for (let i = 0; i < path.count; i++) {
          if (i > 0) expect(path.t_s[i]!).toBeGreaterThan(path.t_s[i - 1]!);
          expect(Math.abs(path.z_m[i]! - 0.2)).toBeLessThanOrEqual(hand.distance_m);
          expect(Math.abs(path.pitch_rad[i]!)).toBeLessThanOrEqual(hand.pitch_rad);
        }
        for (const { firstRow, lastRow } of wandered.strokes) {
          expect(path.trigger[firstRow]).toBe(1);
          expect(path.trigger[lastRow]).toBe(0);
          expect(path.trigger.subarray(firstRow, lastRow).every((trigger) => trigger === 1)).toBe(true);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('is the same for the same seed and another for another; a steady hand lays the plan', () => {
    const once = wander(planned, HAND_PRESETS.practised, 4);
    expect(wander(planned, HAND_PRESETS.practised, 4)).toEqual(once);
    expect(wander(planned, HAND_PRESETS.practised, 5).path.z_m).not.toEqual(once.path.z_m);
    expect(wander(planned, HAND_PRESETS.steady, 4)).toBe(planned);
    expect(poseAt(once.path, 3).z_m).not.toBe(0.2);
  });
});
