import type { Path } from '../stroke/path.ts';
import { poseIn, type GunPose } from './fluidSlices.ts';

/** A piece of travel with air on, with or without fluid. */
export interface AirSlice {
  readonly start: GunPose;
  readonly end: GunPose;
  readonly start_s: number;
  readonly duration_s: number;
}

/** Every row of a path whose trigger is pulled at all: air comes at once, without the fluid's lag. */
export function airSlices(path: Path): AirSlice[] {
  const slices: AirSlice[] = [];
  for (let row = 0; row + 1 < path.count; row++) {
    const start_s = path.t_s[row] as number;
    const end_s = path.t_s[row + 1] as number;
    if (!((path.trigger[row] as number) > 0) || !(end_s > start_s)) continue;
    slices.push({ start: poseIn(path, row, start_s), end: poseIn(path, row, end_s), start_s, duration_s: end_s - start_s });
  }
  return slices;
}
