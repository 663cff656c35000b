import type { Pose } from '../../../../sim/index.ts';

/** A pose while it is being put together. */
export type DraftPose = { -readonly [Key in keyof Pose]: Pose[Key] };

/** An arm that swings the gun. */
interface Arm {
  readonly pivotX_m: number;
  /** From the pivot to the nozzle. */
  readonly armLength_m: number;
}

/** Assumed: no arm swings farther; the aim runs away as the tangent. */
const MOST_SWING_RAD = (75 * Math.PI) / 180;

/** The arm's angle from square that puts the hand `x_m` along its arc. */
function swingOf(x_m: number, distance_m: number, arm: Arm): number {
  const swing_rad = (x_m - arm.pivotX_m) / (arm.armLength_m + distance_m);
  return Math.max(-MOST_SWING_RAD, Math.min(MOST_SWING_RAD, swing_rad));
}

/**
 * Swings the gun of `draft` with the arm. Before: the gun as the wrist holds it on a square arm, at
 * `x_m` the place of the pointer and `z_m` the distance. After: where the arm carries it.
 *
 * With R = arm + distance the swing is φ = (x - pivot) / R, the nozzle stands at pivot + arm sin φ,
 * R - arm cos φ, and the whole gun is turned about the upright by φ, so that a gun held square to
 * its arm stays radial: it aims at pivot + R tan φ over a slant of R / cos φ - arm. The turned axes
 * (x' = x cos φ - z sin φ, z' = x sin φ + z cos φ of the axes in sim's `gunAxes`) are read back
 * into fan, pitch and yaw as told there; written out, because this runs for every sample.
 */
export function swingWithArm(draft: DraftPose, arm: Arm): void {
  const swing_rad = swingOf(draft.x_m, draft.z_m, arm);
  const cosSwing = Math.cos(swing_rad);
  const sinSwing = Math.sin(swing_rad);
  draft.x_m = arm.pivotX_m + arm.armLength_m * sinSwing;
  draft.z_m = arm.armLength_m + draft.z_m - arm.armLength_m * cosSwing;
  turnGun(draft, cosSwing, sinSwing);
}

function turnGun(draft: DraftPose, cosSwing: number, sinSwing: number): void {
  const cosFan = Math.cos(draft.fan_rad);
  const sinFan = Math.sin(draft.fan_rad);
  const cosPitch = Math.cos(draft.pitch_rad);
  const sinPitch = Math.sin(draft.pitch_rad);
  const cosYaw = Math.cos(draft.yaw_rad);
  const sinYaw = Math.sin(draft.yaw_rad);
  const longX = cosYaw * cosFan;
  const shortX = -sinPitch * sinYaw * cosFan - cosPitch * sinFan;
  const sprayX = cosPitch * sinYaw * cosFan - sinPitch * sinFan;
  const longZ = longX * sinSwing + sinYaw * cosSwing;
  const shortZ = shortX * sinSwing + sinPitch * cosYaw * cosSwing;
  const sprayZ = sprayX * sinSwing - cosPitch * cosYaw * cosSwing;
  draft.fan_rad = Math.atan2(cosYaw * sinFan, longX * cosSwing - sinYaw * sinSwing);
  draft.pitch_rad = Math.atan2(shortZ, -sprayZ);
  draft.yaw_rad = Math.asin(Math.max(-1, Math.min(1, longZ)));
}
