import { PathBuilder } from '../../stroke/pathBuilder.ts';
import { poseOfRow, type Path, type Pose } from '../../stroke/path.ts';
import type { Planned } from '../../stroke/plan.ts';

/** What a hand does on one stroke otherwise than planned. */
export interface StrokeHabit {
  /** The gun stands still with fluid on, at `share` of the stroke. */
  readonly stop?: { readonly share: number; readonly duration_s: number };
  /** Speed over that of the plan. */
  readonly pace?: number;
  readonly distance_m?: number;
  /** The wrist swings from minus to plus this angle along the stroke. */
  readonly swing_rad?: number;
  /** Fluid runs for so long before the gun moves and after it has stopped. */
  readonly held_s?: number;
}

/** Pieces in which a stroke is written where it is no straight line: less than 0.1 mm off between them. */
const PIECES = 40;
/** From the wrist's joint to the nozzle. Assumed: a gun held by its grip. */
const WRIST_TO_NOZZLE_M = 0.15;

/**
 * A plan's path with habits of the hand laid over some of its strokes. The rest is as planned, later by
 * what the habits took.
 * @param habitOf what the hand does on a stroke of the plan; null for nothing.
 */
export function pathWithHabits({ path, strokes }: Planned, triggerLag_s: number, habitOf: (stroke: number) => StrokeHabit | null): Path {
  const builder = new PathBuilder();
  const byFirstRow = new Map(strokes.map((stroke) => [stroke.firstRow, stroke]));
  let late_s = 0;
  for (let row = 0; row < path.count; row++) {
    const stroke = byFirstRow.get(row);
    const habit = stroke === undefined ? null : habitOf(stroke.index);
    const pose = poseOfRow(path, row);
    if (stroke === undefined || habit === null) {
      builder.add({ ...pose, t_s: pose.t_s + late_s });
      continue;
    }
    const end = poseOfRow(path, stroke.lastRow);
    const written_s = addStroke(builder, pose, end, habit, late_s, triggerLag_s);
    late_s += written_s - (end.t_s - pose.t_s);
    row = stroke.lastRow;
  }
  return builder.build();
}

/** Writes one stroke from its opening to its closing row. @returns how long it takes, s. */
function addStroke(builder: PathBuilder, from: Pose, to: Pose, habit: StrokeHabit, late_s: number, triggerLag_s: number): number {
  const start_s = from.t_s + late_s;
  if (habit.held_s !== undefined) return addHeld(builder, from, to, habit.held_s, start_s, triggerLag_s);
  const moving_s = (to.t_s - from.t_s) / (habit.pace ?? 1);
  const stopAt = habit.stop?.share ?? Infinity;
  let stopped_s = 0;
  for (let i = 0; i <= PIECES; i++) {
    const share = i / PIECES;
    const pose = habitPose(from, to, share, habit);
    const trigger = i < PIECES ? from.trigger : to.trigger;
    builder.add({ ...pose, t_s: start_s + share * moving_s + stopped_s, trigger });
    if (stopped_s > 0 || share < stopAt || !((habit.stop?.duration_s ?? 0) > 0)) continue;
    stopped_s = habit.stop?.duration_s ?? 0;
    builder.add({ ...pose, t_s: start_s + share * moving_s + stopped_s, trigger });
  }
  return moving_s + stopped_s;
}

/** The pose at a share of the stroke, time and trigger apart. */
function habitPose(from: Pose, to: Pose, share: number, { distance_m, swing_rad }: StrokeHabit): Pose {
  const planned = {
    ...from,
    x_m: from.x_m + share * (to.x_m - from.x_m),
    y_m: from.y_m + share * (to.y_m - from.y_m),
    z_m: distance_m ?? from.z_m,
  };
  return swing_rad === undefined || swing_rad === 0 ? planned : swung(planned, from, to, share, swing_rad);
}

/**
 * The wrist travels evenly and turns evenly, and the aim starts and ends where the plan's does:
 * nozzle = wrist + r (sin θ along the travel, cos θ toward the panel), aim = wrist + (r + z) tan θ. The aim so runs faster,
 * and the nozzle stands farther off, at the ends than in the middle.
 */
function swung(planned: Pose, from: Pose, to: Pose, share: number, swing_rad: number): Pose {
  const length_m = Math.hypot(to.x_m - from.x_m, to.y_m - from.y_m);
  const alongX = (to.x_m - from.x_m) / length_m;
  const alongY = (to.y_m - from.y_m) / length_m;
  const side = 2 * share - 1;
  const reach_m = WRIST_TO_NOZZLE_M + planned.z_m;
  const wrist_m = side * (length_m / 2 - reach_m * Math.tan(swing_rad));
  const angle_rad = side * swing_rad;
  const foot_m = length_m / 2 + wrist_m + WRIST_TO_NOZZLE_M * Math.sin(angle_rad);
  // The fan's short axis lies along the travel or against it; pitch is positive toward it.
  const onward = -Math.sin(planned.fan_rad) * alongX + Math.cos(planned.fan_rad) * alongY;
  return {
    ...planned,
    x_m: from.x_m + foot_m * alongX,
    y_m: from.y_m + foot_m * alongY,
    z_m: planned.z_m + WRIST_TO_NOZZLE_M * (1 - Math.cos(angle_rad)),
    pitch_rad: Math.sign(onward) * angle_rad,
  };
}

/**
 * Fluid is on before the gun moves and after it has stopped: the gun waits where the plan opens the
 * fluid, and again where it closes it. The finger is a trigger lag ahead of the fluid.
 */
function addHeld(builder: PathBuilder, from: Pose, to: Pose, held_s: number, start_s: number, triggerLag_s: number): number {
  const moving_s = to.t_s - from.t_s;
  const at = (t_s: number, moved_s: number, trigger: number): void => builder.add({ ...habitPose(from, to, moved_s / moving_s, {}), t_s, trigger });
  const moves_s = start_s + triggerLag_s + held_s;
  const stops_s = moves_s + moving_s;
  const letsGo_s = stops_s + held_s - triggerLag_s;
  at(start_s, 0, from.trigger);
  if (held_s > 0) at(moves_s - held_s, triggerLag_s, from.trigger);
  if (triggerLag_s > 0) at(moves_s, triggerLag_s, from.trigger);
  if (letsGo_s < stops_s) at(letsGo_s, triggerLag_s + letsGo_s - moves_s, to.trigger);
  at(stops_s, triggerLag_s + moving_s, letsGo_s <= stops_s ? to.trigger : from.trigger);
  if (letsGo_s > stops_s) at(letsGo_s, triggerLag_s + moving_s, to.trigger);
  if (held_s > 0 && triggerLag_s > 0) at(stops_s + held_s, triggerLag_s + moving_s, to.trigger);
  return moving_s + 2 * held_s;
}

/** Air alone, blown over a line again and again. */
export interface AirPasses {
  readonly from_m: readonly [number, number];
  readonly to_m: readonly [number, number];
  readonly distance_m: number;
  readonly speed_m_s: number;
  readonly count: number;
}

/** To turn the gun and lift it to the line, s. Assumed. */
const TURN_S = 1;
/** The trigger half pulled: air and no fluid. */
const AIR_ONLY = 0.5;

/** A path that goes on, after its last row, with the trigger half pulled: air alone, forth and back, the fan square to the line. */
export function withAirPasses(path: Path, { from_m, to_m, distance_m, speed_m_s, count }: AirPasses): Path {
  const builder = new PathBuilder(path.count + 2 * count);
  for (let row = 0; row < path.count; row++) builder.add(poseOfRow(path, row));
  const last = poseOfRow(path, path.count - 1);
  const fan_rad = Math.atan2(to_m[1] - from_m[1], to_m[0] - from_m[0]) + Math.PI / 2;
  const pass_s = Math.hypot(to_m[0] - from_m[0], to_m[1] - from_m[1]) / speed_m_s;
  for (let end = 0; end <= count; end++) {
    const [x_m, y_m] = end % 2 === 0 ? from_m : to_m;
    builder.add({ ...last, t_s: last.t_s + TURN_S + end * pass_s, x_m, y_m, z_m: distance_m, fan_rad, pitch_rad: 0, trigger: end < count ? AIR_ONLY : 0 });
  }
  return builder.build();
}
