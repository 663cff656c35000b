import { seededRandom } from '../../sim/base/noise.ts';
import { aimOf, type Path, pathFrom, type Pose, poseAt } from '../../sim/stroke/path.ts';
import type { Planned } from '../../sim/stroke/plan.ts';

/** What a hand does wrong in a recorded session; strokes by their index in the plan. */
export interface HandFaults {
  /** The gun stands still on a stroke, `share` of its length from the opening, with fluid on. */
  readonly stop?: { readonly stroke: number; readonly share: number; readonly duration_s: number };
  /** One stroke laid to the side of its line, to the left of the pass's direction. */
  readonly wideLap?: { readonly stroke: number; readonly shift_m: number };
  /** The wrist swings by ± `swing_rad` over the stroke about a pivot `radius_m` behind the nozzle; the aim keeps the plan's pace. */
  readonly arc?: { readonly strokes: readonly number[]; readonly radius_m: number; readonly swing_rad: number };
  /** Distance grows evenly over the session by this much. */
  readonly drift_m?: number;
  /** The trigger opens for 20 ms in the middle of a stroke. */
  readonly chatterStroke?: number;
  /** The trigger is pulled late. */
  readonly late?: { readonly strokes: readonly number[]; readonly delay_s: number };
}

export interface SessionOptions {
  readonly planned: Planned;
  readonly seed: number;
  readonly rate_Hz?: number;
  /** Standard deviation of the sensor's places. */
  readonly noise_m?: number;
  /** Standard deviation of its angles. */
  readonly noise_rad?: number;
  readonly faults?: HandFaults;
}

/** A recording of a hand that lays a plan with the given faults. The same seed gives the same session. */
export function makeSession(options: SessionOptions): Path {
  const { planned, seed, rate_Hz = 50, noise_m = 0.001, noise_rad = 0.005, faults = {} } = options;
  const normal = normalNoise(seed);
  const { path } = planned;
  const start_s = path.t_s[0]!;
  const end_s = path.t_s[path.count - 1]!;
  const stop = stopTimes(planned, faults);
  const rows: Pose[] = [];
  for (let i = 0; start_s + i / rate_Hz <= end_s + stop.duration_s; i++) {
    const t_s = i / rate_Hz;
    const now_s = start_s + t_s;
    const plan_s = now_s <= stop.at_s ? now_s : Math.max(stop.at_s, now_s - stop.duration_s);
    const faulty = withFaults(planned, poseAt(path, Math.min(plan_s, end_s)), plan_s, faults);
    rows.push({
      ...faulty,
      t_s,
      x_m: faulty.x_m + noise_m * normal(),
      y_m: faulty.y_m + noise_m * normal(),
      z_m: faulty.z_m + noise_m * normal(),
      pitch_rad: faulty.pitch_rad + noise_rad * normal(),
      yaw_rad: faulty.yaw_rad + noise_rad * normal(),
    });
  }
  return pathFrom(rows);
}

/** Normal deviates by Box and Muller's method (1958, "A note on the generation of random normal deviates"). */
export function normalNoise(seed: number): () => number {
  const random = seededRandom(seed);
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

function stopTimes(planned: Planned, faults: HandFaults): { at_s: number; duration_s: number } {
  const { stop } = faults;
  if (stop === undefined) return { at_s: Infinity, duration_s: 0 };
  const { firstRow, lastRow } = planned.strokes[stop.stroke]!;
  const open_s = planned.path.t_s[firstRow]!;
  return { at_s: open_s + stop.share * (planned.path.t_s[lastRow]! - open_s), duration_s: stop.duration_s };
}

function withFaults(planned: Planned, pose: Pose, plan_s: number, faults: HandFaults): Pose {
  let changed = pose;
  const { path, strokes } = planned;
  const share = (plan_s - path.t_s[0]!) / (path.t_s[path.count - 1]! - path.t_s[0]!);
  if (faults.drift_m !== undefined) changed = { ...changed, z_m: changed.z_m + faults.drift_m * share };
  for (const stroke of strokes) {
    const open_s = path.t_s[stroke.firstRow]!;
    const close_s = path.t_s[stroke.lastRow]!;
    // The turns before and after carry the hand over to the fault and back.
    const nearness = Math.min(1, 1 + (plan_s - open_s) / 0.25, 1 + (close_s - plan_s) / 0.25);
    if (nearness <= 0) continue;
    const along = (2 * (plan_s - open_s)) / (close_s - open_s) - 1;
    if (faults.wideLap?.stroke === stroke.index) changed = shifted(changed, nearness * faults.wideLap.shift_m);
    if (faults.arc?.strokes.includes(stroke.index) === true) changed = swung(changed, stroke.meant, nearness * faults.arc.swing_rad * along, faults.arc.radius_m);
    if (faults.chatterStroke === stroke.index && Math.abs(plan_s - (open_s + close_s) / 2) < 0.01) changed = { ...changed, trigger: 0 };
    if (faults.late?.strokes.includes(stroke.index) === true && plan_s >= open_s && plan_s < open_s + faults.late.delay_s) changed = { ...changed, trigger: 0 };
  }
  return changed;
}

/** The fan's long axis points left of the pass's direction. */
function shifted(pose: Pose, shift_m: number): Pose {
  return { ...pose, x_m: pose.x_m + shift_m * Math.cos(pose.fan_rad), y_m: pose.y_m + shift_m * Math.sin(pose.fan_rad) };
}

/** Turns the gun toward the travel by `swing_rad` about its aim point, the nozzle on a circle about the wrist. */
function swung(pose: Pose, meant: { start_m: readonly [number, number]; end_m: readonly [number, number] }, swing_rad: number, radius_m: number): Pose {
  const alongShort = (meant.end_m[0] - meant.start_m[0]) * -Math.sin(pose.fan_rad) + (meant.end_m[1] - meant.start_m[1]) * Math.cos(pose.fan_rad);
  const aim = aimOf(pose);
  const turned = {
    ...pose,
    x_m: 0,
    y_m: 0,
    z_m: pose.z_m + radius_m * (1 - Math.cos(swing_rad)),
    pitch_rad: pose.pitch_rad + Math.sign(alongShort) * swing_rad,
  };
  const reach = aimOf(turned);
  return { ...turned, x_m: aim.x_m - reach.x_m, y_m: aim.y_m - reach.y_m };
}
