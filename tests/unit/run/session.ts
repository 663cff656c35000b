import { planStrokes } from '../../../sim/stroke/planStrokes.ts';
import type { Path } from '../../../sim/stroke/path.ts';
import type { CoatSetting } from '../../../sim/run/result.ts';

/** What the hand does in one stroke, `s` from 0 (fluid opens) to 1 (fluid closes). */
export interface HandEdit {
  readonly speedFactor?: (s: number) => number;
  readonly stop?: { readonly at: number; readonly duration_s: number };
  readonly distance_m?: (s: number) => number;
  /** Swings about a wrist this far behind the nozzle, square in the middle, the aim as planned. */
  readonly arcRadius_m?: number;
  /** Left of the travel of a stroke along +x (so always +y for strokes along x). */
  readonly shift_m?: number | ((s: number) => number);
  /** Fluid opens (closes) this much later (earlier) than planned, m of travel. */
  readonly opensLate_m?: number;
  readonly closesEarly_m?: number;
}

const STEP_s = 0.01;
const TURN_s = 1;

/** The planned strokes as a recording at 100 Hz, with edits to single strokes. */
export function session(setting: CoatSetting, edits: Readonly<Record<number, HandEdit>>): Path {
  const fan_m = (setting.setUp.fan.width_m * setting.plan.distance_m) / setting.setUp.fan.atDistance_m;
  const { strokes } = planStrokes(setting.panel, setting.plan, fan_m, 0);
  const rows: number[][] = [];
  let t = 0;
  strokes.forEach((stroke, index) => {
    const edit = edits[index] ?? {};
    const { start_m: a, end_m: b } = stroke.meant;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const direction = Math.atan2(b[1] - a[1], b[0] - a[0]);
    const fan = fanAngle(direction);
    const runUp = 0.05 / length;
    let waited = false;
    for (let s = -runUp; s <= 1 + runUp; ) {
      const on = s >= (edit.opensLate_m ?? 0) / length && s < 1 - (edit.closesEarly_m ?? 0) / length;
      rows.push(pose(setting, edit, a, b, s, fan, t, on));
      if (edit.stop !== undefined && !waited && s >= edit.stop.at) {
        for (let i = 1; i * STEP_s < edit.stop.duration_s; i++) {
          rows.push(pose(setting, edit, a, b, s, fan, t + i * STEP_s, on));
        }
        t += edit.stop.duration_s;
        waited = true;
      } else t += STEP_s;
      s += (STEP_s * setting.plan.speed_m_s * (edit.speedFactor?.(Math.min(1, Math.max(0, s))) ?? 1)) / length;
    }
    t += TURN_s;
  });
  return pathOf(rows);
}

/** The fan's long axis is an axis, not a direction: kept within half a turn so that turns do not spin it. */
function fanAngle(direction: number): number {
  const angle = direction + Math.PI / 2;
  return angle >= Math.PI ? angle - Math.PI : angle;
}

function pose(
  setting: CoatSetting,
  edit: HandEdit,
  a: readonly [number, number],
  b: readonly [number, number],
  s: number,
  fan: number,
  t: number,
  on: boolean,
): number[] {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const unit = [(b[0] - a[0]) / length, (b[1] - a[1]) / length] as const;
  const distance = edit.distance_m?.(Math.min(1, Math.max(0, s))) ?? setting.plan.distance_m;
  let along = s * length;
  let height = distance;
  let pitch = 0;
  if (edit.arcRadius_m !== undefined) {
    // Wrist at R + D over the stroke's middle; the aim point runs as planned, the gun points along the arm.
    const reach = edit.arcRadius_m + distance;
    const off = (s - 0.5) * length;
    const swing = Math.atan2(off, reach);
    along = length / 2 + edit.arcRadius_m * Math.sin(swing);
    height = reach - edit.arcRadius_m * Math.cos(swing);
    // Positive pitch swings the aim toward S = (-sin f, cos f).
    const towardS = -Math.sin(fan) * unit[0] + Math.cos(fan) * unit[1];
    pitch = swing * Math.sign(towardS);
  }
  const shift = typeof edit.shift_m === 'function' ? edit.shift_m(s) : (edit.shift_m ?? 0);
  return [t, a[0] + unit[0] * along, a[1] + unit[1] * along + shift, height, fan, pitch, 0, on ? 1 : 0];
}

function pathOf(rows: readonly number[][]): Path {
  const column = (i: number) => Float64Array.from(rows, (row) => row[i] as number);
  return {
    count: rows.length,
    t_s: column(0),
    x_m: column(1),
    y_m: column(2),
    z_m: column(3),
    fan_rad: column(4),
    pitch_rad: column(5),
    yaw_rad: column(6),
    trigger: Float32Array.from(rows, (row) => row[7] as number),
  };
}
