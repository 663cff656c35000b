import { fanScale } from '../base/raySource.ts';
import type { SetUp } from '../gun/setUp.ts';

/** Full fan width on a square panel at a distance from the nozzle. */
export function fanWidth_m({ fan }: SetUp, distance_m: number): number {
  return fan.width_m * fanScale(distance_m, fan.atDistance_m, fan.origin_m);
}

/** Full fan depth there. */
export function fanDepth_m({ fan }: SetUp, distance_m: number): number {
  return fan.depth_m * fanScale(distance_m, fan.atDistance_m, fan.origin_m);
}

/**
 * Full fan width per m of gun distance near a distance, as strokes are measured by it. Exact there, and
 * everywhere for a fan that opens from the nozzle; a fan whose rays start 30 mm off it is 2 % of its
 * width out at 25 mm from there.
 */
export function fanWidthRatio(setUp: SetUp, near_m: number): number {
  return fanWidth_m(setUp, near_m) / near_m;
}
