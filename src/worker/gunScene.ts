import { gunAxes, poseAt, raySource, type Path, type Spray } from '../../sim/index.ts';
import type { GunScene } from '../canvas/scene.ts';

/** Points round the fan's rim. */
const RIM_POINTS = 48;

/**
 * The gun at one time of its path: the nozzle's foot and the rim of the fan on the panel. The rim
 * is the cone through the footprint's edge, cut by the panel's plane; rays that never reach the
 * panel (a gun tilted far over) are left out.
 */
export function gunScene(path: Path, spray: Spray, time_s: number): GunScene | null {
  if (path.count === 0) return null;
  const pose = poseAt(path, time_s);
  const { long, short, spray: axis } = gunAxes(pose.fan_rad, pose.pitch_rad, pose.yaw_rad);
  const { halfLength_m, halfDepth_m, distance_m, origin_m } = spray.footprint;
  const source = raySource(pose, origin_m);
  const stated_m = distance_m - origin_m;
  const rim: number[] = [];
  for (let i = 0; i < RIM_POINTS; i++) {
    const angle = (2 * Math.PI * i) / RIM_POINTS;
    const across = (Math.cos(angle) * halfLength_m) / stated_m;
    const along = (Math.sin(angle) * halfDepth_m) / stated_m;
    const fall = -(axis[2] + across * long[2] + along * short[2]);
    if (!(fall > 1e-3)) continue;
    const reach = source.z_m / fall;
    rim.push(source.x_m + reach * (axis[0] + across * long[0] + along * short[0]));
    rim.push(source.y_m + reach * (axis[1] + across * long[1] + along * short[1]));
  }
  return { x_m: pose.x_m, y_m: pose.y_m, rim: Float64Array.from(rim), spraying: pose.trigger > 0.5 };
}
