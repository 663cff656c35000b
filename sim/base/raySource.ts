import { gunAxes } from './gunAxes.ts';

/** A nozzle's place and lean; z is its square height over the panel. */
interface Lean {
  readonly x_m: number;
  readonly y_m: number;
  readonly z_m: number;
  readonly fan_rad: number;
  readonly pitch_rad: number;
  readonly yaw_rad: number;
}

/** A fan's source stays this high over the panel, m, however near the gun: nearer, no test card says what the fan is. */
const LEAST_HEIGHT_M = 0.005;

/**
 * The pose whose place is where the fan's rays seem to start: `origin_m` in front of the nozzle along the
 * spray's axis (behind it if negative). Straight rays from there open as the fan's widths at two distances do.
 */
export function raySource<Pose extends Lean>(pose: Pose, origin_m: number): Pose {
  if (origin_m === 0) return pose;
  const { spray } = gunAxes(pose.fan_rad, pose.pitch_rad, pose.yaw_rad);
  const forward_m = -spray[2] * origin_m > pose.z_m - LEAST_HEIGHT_M ? Math.max(0, pose.z_m - LEAST_HEIGHT_M) / -spray[2] : origin_m;
  return {
    ...pose,
    x_m: pose.x_m + forward_m * spray[0],
    y_m: pose.y_m + forward_m * spray[1],
    z_m: pose.z_m + forward_m * spray[2],
  };
}

/** By how much a fan stated at `stated_m` is larger at `distance_m` along the spray's axis; both from the nozzle. */
export function fanScale(distance_m: number, stated_m: number, origin_m: number): number {
  return Math.max(LEAST_HEIGHT_M, distance_m - origin_m) / (stated_m - origin_m);
}
