import type { Pose } from '../../../../sim/index.ts';

const DEGREE = Math.PI / 180;

/**
 * A pose as a recording holds it: 1 µs, 1 µm, 0.001°, trigger 0.001. The last product is the one
 * that the recording's reader takes (mm and degrees to SI), so that a written and read pose has
 * the same bits; a film laid live and one laid from the file then agree.
 */
export function roundedPose(pose: Readonly<Pose>): Pose {
  return {
    t_s: Math.round(pose.t_s * 1e6) / 1e6,
    x_m: length(pose.x_m),
    y_m: length(pose.y_m),
    z_m: length(pose.z_m),
    fan_rad: angle(pose.fan_rad),
    pitch_rad: angle(pose.pitch_rad),
    yaw_rad: angle(pose.yaw_rad),
    trigger: Math.round(pose.trigger * 1000) / 1000,
  };
}

function length(value_m: number): number {
  return (wholeNumber(value_m * 1e6) / 1000) * 0.001;
}

function angle(value_rad: number): number {
  return (wholeNumber((value_rad / DEGREE) * 1000) / 1000) * DEGREE;
}

/** Without the minus that Math.round leaves before a zero. */
function wholeNumber(value: number): number {
  return Math.round(value) + 0;
}
