import type { SetUp } from '../gun/setUp.ts';

/** Full fan width per m of distance: straight rays, so the fan opens in proportion. */
export function fanWidthRatio(setUp: SetUp): number {
  return setUp.fan.width_m / setUp.fan.atDistance_m;
}

/** Full fan width on a square panel at a distance. */
export function fanWidth_m(setUp: SetUp, distance_m: number): number {
  return fanWidthRatio(setUp) * distance_m;
}
