import { wander, type HandWander } from '../../../sim/stroke/hand.ts';
import { handSample, triggerWander, type HandSample, type Wander } from '../../../sim/stroke/handStatistics.ts';
import { measureStrokes, type MeasuredSession } from '../../../sim/stroke/measure.ts';
import { planStrokes } from '../../../sim/stroke/planStrokes.ts';
import type { Stroke } from '../../../sim/stroke/stroke.ts';
import { strokeTraces, type StrokeTrace } from '../../../sim/stroke/traces.ts';
import { rectangle } from './panels.ts';

export const MEANT = { source: 'plan', distance_m: 0.2, speed_m_s: 0.3, overlapFraction: 0.5, start_m: [0, 0], end_m: [1, 0] } as const;

/** A trace along x whose distance errs as given, all else as meant. */
export function distanceTrace(stroke: number, errors_m: readonly number[], step_s = 0.01): StrokeTrace {
  const even = (of: (i: number) => number): Float64Array => Float64Array.from(errors_m, (_, i) => of(i));
  return {
    stroke,
    pass: 0,
    step_s,
    t_s: even((i) => i * step_s),
    x_m: even((i) => i * step_s * MEANT.speed_m_s),
    y_m: even(() => 0),
    speed_m_s: even(() => MEANT.speed_m_s),
    distance_m: even((i) => MEANT.distance_m + (errors_m[i] as number)),
    tilt_rad: even(() => 0),
    overlapFraction: even(() => NaN),
  };
}

/** Strokes that were meant alike. */
export function strokesLike(count: number): Stroke[] {
  return Array.from({ length: count }, (_, index) => ({ index, pass: 0, firstRow: 0, lastRow: 1, meant: MEANT }));
}

/** The sample of distance errors alone, a list a stroke. */
export function distanceWander(errors_m: readonly (readonly number[])[], step_s = 0.01): Wander {
  return handSample(errors_m.map((errors, stroke) => distanceTrace(stroke, errors, step_s)), strokesLike(errors_m.length), []).distance_m;
}

const FAN_M = 0.25;
const LAG_S = 0.05;

/** A plan of half overlap at 0.3 m/s and 0.2 m over a rectangle, laid by a hand, or exactly. */
export function laidPlan(width_m: number, height_m: number, hand: HandWander | null, seed: number): MeasuredSession {
  const panel = rectangle(width_m, height_m);
  const plan = { overlapFraction: 0.5, speed_m_s: 0.3, distance_m: 0.2, direction_rad: 0, order: 'serpentine', lead_m: 0.05, lag_m: 0.05, firstStroke_m: 0, cross: false } as const;
  const planned = planStrokes(panel, plan, FAN_M, LAG_S);
  const { path, strokes } = hand === null ? planned : wander(planned, hand, seed);
  return { path, strokes, panel, fanWidthPerDistance: FAN_M / plan.distance_m, triggerLag_s: LAG_S };
}

/** What a session shows of its hand. */
export function sampleOf(session: MeasuredSession): { readonly sample: HandSample; readonly trigger: Wander } {
  const measures = measureStrokes(session);
  return { sample: handSample(strokeTraces(session), session.strokes, measures), trigger: triggerWander(session.strokes, measures) };
}
