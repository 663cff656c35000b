/** A direction in panel coordinates. */
export type Vector = readonly [x: number, y: number, z: number];

/** The gun's own axes in panel coordinates, unit vectors, right-handed: long × short = -spray. */
export interface GunAxes {
  /** Along the fan's long axis. */
  readonly long: Vector;
  /** Along the fan's short axis. */
  readonly short: Vector;
  /** From the nozzle along the spray. */
  readonly spray: Vector;
}

/**
 * The gun's axes at a pose. Untilted, L = (cos f, sin f, 0), S = (-sin f, cos f, 0) and the spray
 * runs along (0, 0, -1). Pitch turns about L, positive swings the aim toward +S; then yaw turns
 * about that same S (fixed in the panel's plane, not carried along by the pitch), positive swings
 * the aim toward +L. Written out, with N = (0, 0, 1):
 *
 *     long  =  cos y L + sin y N
 *     short =  cos p S - sin p sin y L + sin p cos y N
 *     spray =  sin p S + cos p sin y L - cos p cos y N
 *
 * The other way, for |p| and |y| below π/2: y = asin(long_z), f = atan2(long_y, long_x),
 * p = atan2(short_z, -spray_z). The spray stands acos(cos p cos y) off square, and meets the panel
 * at the nozzle's foot plus z (tan y L + (tan p / cos y) S).
 */
export function gunAxes(fan_rad: number, pitch_rad: number, yaw_rad: number): GunAxes {
  const cosFan = Math.cos(fan_rad);
  const sinFan = Math.sin(fan_rad);
  const cosPitch = Math.cos(pitch_rad);
  const sinPitch = Math.sin(pitch_rad);
  const cosYaw = Math.cos(yaw_rad);
  const sinYaw = Math.sin(yaw_rad);
  return {
    long: [cosYaw * cosFan, cosYaw * sinFan, sinYaw],
    short: onPanel(-sinPitch * sinYaw, cosPitch, sinPitch * cosYaw, cosFan, sinFan),
    spray: onPanel(cosPitch * sinYaw, sinPitch, -cosPitch * cosYaw, cosFan, sinFan),
  };
}

/** A direction given along L, S and the normal, in panel coordinates. Called for every stamp. */
function onPanel(alongL: number, alongS: number, alongNormal: number, cosFan: number, sinFan: number): Vector {
  return [alongL * cosFan - alongS * sinFan, alongL * sinFan + alongS * cosFan, alongNormal];
}
