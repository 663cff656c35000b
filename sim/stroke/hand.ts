import { wanderNoise } from '../base/noise.ts';
import type { HandSpec } from '../job/schema.ts';
import { aimOf, poseAt } from './path.ts';
import { PathBuilder } from './pathBuilder.ts';
import type { Planned } from './plan.ts';

/** By how much a hand strays from a plan: the largest error, about 2.3 standard deviations (see `LARGEST_DEVIATIONS`). */
export interface HandWander {
  /** Nozzle to panel. */
  readonly distance_m: number;
  /** Aim point, square to the travel. */
  readonly across_m: number;
  /** Share of the plan's speed, below 0.9. */
  readonly speedFraction: number;
  readonly pitch_rad: number;
  readonly yaw_rad: number;
  /** Early or late on the trigger. */
  readonly trigger_s: number;
  /** How long an error lasts before another takes its place: the noise's unit of place (see `FORGOTTEN_SHARE`). */
  readonly correlation_s: number;
}

const DEGREE = Math.PI / 180;

/** Assumed: no published spread of a hand's errors was found; these are sized so that a practised hand stays within the bands that training rubrics ask for (±25 mm, 10°, speed within 15 %) and a beginner does not. */
export const HAND_PRESETS: Record<'steady' | 'practised' | 'beginner', HandWander> = {
  steady: { distance_m: 0, across_m: 0, speedFraction: 0, pitch_rad: 0, yaw_rad: 0, trigger_s: 0, correlation_s: 1 },
  practised: { distance_m: 0.012, across_m: 0.01, speedFraction: 0.08, pitch_rad: 3 * DEGREE, yaw_rad: 3 * DEGREE, trigger_s: 0.04, correlation_s: 1.5 },
  beginner: { distance_m: 0.045, across_m: 0.035, speedFraction: 0.3, pitch_rad: 12 * DEGREE, yaw_rad: 10 * DEGREE, trigger_s: 0.15, correlation_s: 1 },
};

/**
 * Largest value over standard deviation of `wanderNoise`, which reaches 1. Measured: 2.27 ± 0.02
 * over 60 seeds, 400 units each, channels 0 to 4.
 */
export const LARGEST_DEVIATIONS = 2.27;
/**
 * Share of a unit of place over which the autocorrelation of `wanderNoise` falls to 1/e. Measured:
 * 0.272 ± 0.001 over the same. It passes zero at 0.4 units, is least (-0.16) at 0.6, and over
 * after 0.9.
 */
export const FORGOTTEN_SHARE = 0.272;

const STEP_S = 0.02;
/** Between two openings of the trigger at least this stays. */
const LEAST_APART_S = 0.01;
/** Channels of the noise. */
const DISTANCE = 0;
const ACROSS = 1;
const SPEED = 2;
const PITCH = 3;
const YAW = 4;
const TRIGGER = 5;

/** A coat's hand in SI: one of the usual ones, or the measured one as stated. */
export function handOf(spec: HandSpec): HandWander {
  if (spec.kind !== 'own') return HAND_PRESETS[spec.kind];
  return {
    distance_m: spec.distance_mm / 1000,
    across_m: spec.across_mm / 1000,
    speedFraction: spec.speed_percent / 100,
    pitch_rad: spec.pitch_deg * DEGREE,
    yaw_rad: spec.yaw_deg * DEGREE,
    trigger_s: spec.trigger_ms / 1000,
    correlation_s: spec.correlation_s,
  };
}

/** When a stroke's trigger opens and closes, on the plan's clock. */
interface Hold {
  readonly open_s: number;
  readonly close_s: number;
}

/**
 * A plan as a hand would lay it: at 50 Hz, with smooth errors of distance, aim, speed, tilt and
 * trigger timing. Tilt errors turn the gun about its aim point. What was meant stays the plan's.
 * A hand without any error gives the plan itself.
 * @param seed 0 to 2^32 - 1; the same seed gives the same hand.
 */
export function wander(planned: Planned, hand: HandWander, seed: number): Planned {
  const { path, strokes } = planned;
  const isSteady = [hand.distance_m, hand.across_m, hand.speedFraction, hand.pitch_rad, hand.yaw_rad, hand.trigger_s].every((amount) => amount === 0);
  if (isSteady || path.count < 2) return planned;
  const noise = wanderNoise(seed);
  const holds = holdsOf(planned, hand, noise);
  const builder = new PathBuilder(1024);
  const rowOfTime = new Map<number, number>();
  let t_s = path.t_s[0] as number;
  let before_s = t_s;
  let hold = 0;
  for (const plan_s of clockOf(planned, holds)) {
    const place = plan_s / hand.correlation_s;
    t_s += (plan_s - before_s) / (1 + hand.speedFraction * noise(place, SPEED));
    before_s = plan_s;
    while (hold < holds.length && plan_s >= (holds[hold] as Hold).close_s) hold++;
    const isOpen = hold < holds.length && plan_s >= (holds[hold] as Hold).open_s;
    rowOfTime.set(plan_s, builder.count);
    const meant = poseAt(path, plan_s);
    const aim = aimOf(meant);
    const across_m = hand.across_m * noise(place, ACROSS);
    const strayed = {
      ...meant,
      x_m: 0,
      y_m: 0,
      z_m: Math.max(0.01, meant.z_m + hand.distance_m * noise(place, DISTANCE)),
      pitch_rad: meant.pitch_rad + hand.pitch_rad * noise(place, PITCH),
      yaw_rad: meant.yaw_rad + hand.yaw_rad * noise(place, YAW),
    };
    const reach = aimOf(strayed);
    builder.add({
      ...strayed,
      t_s,
      x_m: aim.x_m + across_m * Math.cos(meant.fan_rad) - reach.x_m,
      y_m: aim.y_m + across_m * Math.sin(meant.fan_rad) - reach.y_m,
      trigger: isOpen ? 1 : 0,
    });
  }
  const row = (time_s: number) => rowOfTime.get(time_s) as number;
  return {
    ...planned,
    path: builder.build(),
    strokes: strokes.map((stroke, i) => {
      const { open_s, close_s } = holds[i] as Hold;
      return { ...stroke, firstRow: row(open_s), lastRow: row(close_s) };
    }),
  };
}

/** The strokes' trigger times, each a little early or late, in order and apart. */
function holdsOf(planned: Planned, hand: HandWander, noise: (place: number, channel: number) => number): Hold[] {
  const { path, strokes } = planned;
  const end_s = path.t_s[path.count - 1] as number;
  let free_s = path.t_s[0] as number;
  return strokes.map((stroke) => {
    const error_s = (which: number) => hand.trigger_s * noise((2 * stroke.index + which) * 1.7 + 0.37, TRIGGER);
    const open_s = Math.max(free_s, (path.t_s[stroke.firstRow] as number) + error_s(0));
    const close_s = Math.min(end_s, Math.max(open_s + LEAST_APART_S, (path.t_s[stroke.lastRow] as number) + error_s(1)));
    free_s = close_s + LEAST_APART_S;
    return { open_s, close_s };
  });
}

/** The plan's clock at 50 Hz, and every trigger time. */
function clockOf(planned: Planned, holds: readonly Hold[]): Float64Array {
  const { t_s, count } = planned.path;
  const start_s = t_s[0] as number;
  const end_s = t_s[count - 1] as number;
  const times = new Set<number>();
  for (let i = 0; start_s + i * STEP_S < end_s; i++) times.add(start_s + i * STEP_S);
  times.add(end_s);
  for (const { open_s, close_s } of holds) times.add(open_s).add(close_s);
  return Float64Array.from(times).sort();
}
