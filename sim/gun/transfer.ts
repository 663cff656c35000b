import { dryDropShare, solventKept } from './drops.ts';
import type { SetUp } from './setUp.ts';
import type { Arrival } from './spray.ts';

/** Distances of the arrival tables: 20 mm to 1.2 m, every millimetre. */
const START_M = 0.02;
const STEP_M = 0.001;
const NODES = 1181;

/**
 * Transfer efficiency (solids that land over solids that leave the gun) at a distance:
 * `η0 exp(-(D - D0)/ℓ)`, at most 1. The exponential is a model choice: that efficiency falls with
 * distance is established (K.C. Kennedy, EPA-600/2-85/107, 1985), no curve for dope is.
 */
export function transferEfficiency(transfer: SetUp['transfer'], distance_m: number): number {
  const { efficiencyFraction, atDistance_m, decayLength_m } = transfer;
  return Math.min(1, efficiencyFraction * Math.exp(-(distance_m - atDistance_m) / decayLength_m));
}

/** What arrives against distance: efficiency, solvent kept by the mean drop, share arriving dry. */
export function arrivalTable(setUp: SetUp): Arrival {
  const transferFraction = new Float64Array(NODES);
  const solventKeptFraction = new Float64Array(NODES);
  const dryFraction = new Float64Array(NODES);
  const { meanDiameter_m, solventSpeedRatio } = setUp.drops;
  for (let i = 0; i < NODES; i++) {
    const distance_m = START_M + i * STEP_M;
    transferFraction[i] = transferEfficiency(setUp.transfer, distance_m);
    solventKeptFraction[i] = solventKept(distance_m, meanDiameter_m, solventSpeedRatio);
    dryFraction[i] = dryDropShare(setUp, distance_m);
  }
  return { start_m: START_M, step_m: STEP_M, transferFraction, solventKeptFraction, dryFraction };
}
