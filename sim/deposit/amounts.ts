import { interpolateEven } from '../base/interpolate.ts';
import type { Spray } from '../gun/spray.ts';

/** What becomes of 1 m³ of liquid sprayed at one distance. The first three are what a cell receives. */
export interface Amounts {
  /** Solids and the solvent kept in flight, that reach the panel's plane. */
  readonly wet: number;
  readonly solids: number;
  /** The part of `wet` in drops with more than half solids. */
  readonly arrivedDry: number;
  /** Liquid that never reaches the plane. */
  readonly fog: number;
  /** Solvent lost in the air by the drops that land. wet + fog + flight = 1. */
  readonly flight: number;
}

/** Shares of sprayed liquid, from the spray's arrival tables. @param ray_m from where the rays start, along the spray's axis. */
export function amountsAt(spray: Spray, ray_m: number): Amounts {
  const { arrival, footprint, volumeSolidsFraction } = spray;
  const slant_m = ray_m + footprint.origin_m;
  const { start_m, step_m } = arrival;
  const landing = interpolateEven(arrival.transferFraction, start_m, step_m, slant_m);
  const kept = interpolateEven(arrival.solventKeptFraction, start_m, step_m, slant_m);
  const dry = interpolateEven(arrival.dryFraction, start_m, step_m, slant_m);
  const solvent = 1 - volumeSolidsFraction;
  const wet = landing * (volumeSolidsFraction + solvent * kept);
  return {
    wet,
    solids: landing * volumeSolidsFraction,
    arrivedDry: wet * dry,
    fog: 1 - landing,
    flight: landing * solvent * (1 - kept),
  };
}
