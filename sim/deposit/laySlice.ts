import { CrosscoatError } from '../base/errors.ts';
import type { Amounts } from './amounts.ts';
import type { Band } from './bands.ts';
import type { Deposit } from './deposit.ts';
import { isStraight, type FluidSlice, type GunPose } from './fluidSlices.ts';
import { laySteps } from './laySteps.ts';
import { laySweep } from './laySweep.ts';
import type { Reach } from './passes.ts';
import { liquidOf, stampsOf, sweepOf, type Layer } from './pieces.ts';
import { layStamp, type Stamp } from './stamp.ts';

/** Pieces laid between two questions whether to stop. */
const PIECES_A_QUESTION = 4096;

/** Travel between poses noted for the count of passes, as a share of the half depth. */
const PASS_STEP_SHARE = 1 / 4;

/** A laying under way: what it lays on, what it keeps for the end (bands, reaches), and where the liquid went. */
export interface Run {
  readonly layer: Layer;
  readonly deposit: Deposit;
  readonly row: Float32Array;
  readonly bands: Band[];
  readonly reaches: Reach[];
  pieces: number;
  sprayed_m3: number;
  fog_m3: number;
  flight_m3: number;
}

/** A run that has laid nothing yet. */
export function startRun(layer: Layer, deposit: Deposit): Run {
  return { layer, deposit, row: new Float32Array(deposit.grid.columns), bands: [], reaches: [], pieces: 0, sprayed_m3: 0, fog_m3: 0, flight_m3: 0 };
}

/**
 * Lays one slice, by closed form where one holds and pays. Straight sweeps leave their insides in
 * `run.bands`, which `layBands` adds at the end. @throws CrosscoatError `cancelled`.
 */
export function laySlice(run: Run, slice: FluidSlice, shouldStop: (() => boolean) | undefined): void {
  const { layer, deposit } = run;
  run.sprayed_m3 += liquidOf(layer, slice);
  const straight = isStraight(slice);
  if (straight) run.reaches.push(slice);
  const sweep = sweepOf(layer, slice);
  if (sweep !== null) {
    laySweep(deposit, sweep, run.bands, run.row);
    noteLost(run, sweep.liquid_m3, sweep.amounts);
    askToStop(run, shouldStop);
    return;
  }
  const steps = laySteps(deposit, layer, slice);
  if (steps !== null) {
    noteLost(run, liquidOf(layer, slice), steps);
    askToStop(run, shouldStop);
    return;
  }
  for (const stamp of stampsOf(layer, slice)) {
    layStamp(deposit, layer.tables, stamp, run.row);
    noteLost(run, stamp.liquid_m3, stamp.amounts);
    if (!straight) noteReach(run, stamp);
    askToStop(run, shouldStop);
  }
}

/**
 * Notes a stamp for the count of passes once the gun has moved a quarter of the half depth since
 * the last one noted: every cell but those on the fan's outermost 2 % is seen by the next.
 */
function noteReach(run: Run, stamp: Stamp): void {
  const { pose, stroke } = stamp;
  const last = run.reaches[run.reaches.length - 1];
  if (last !== undefined && last.stroke === stroke && moved_m(last.end, pose, run.layer) < (PASS_STEP_SHARE * run.layer.tables.nominalHalfDepth_m * pose.z_m) / run.layer.tables.distance_m) return;
  run.reaches.push({ start: pose, end: pose, stroke });
}

/** How far any part of the fan can have moved on the panel between two poses, about. */
function moved_m(from: GunPose, to: GunPose, layer: Layer): number {
  const swing = Math.abs(to.pitch_rad - from.pitch_rad) + Math.abs(to.yaw_rad - from.yaw_rad);
  return Math.hypot(to.x_m - from.x_m, to.y_m - from.y_m) + to.z_m * swing + layer.tables.nominalHalfWidth_m * Math.abs(to.fan_rad - from.fan_rad);
}

function noteLost(run: Run, liquid_m3: number, amounts: Amounts): void {
  run.fog_m3 += liquid_m3 * amounts.fog;
  run.flight_m3 += liquid_m3 * amounts.flight;
}

function askToStop(run: Run, shouldStop: (() => boolean) | undefined): void {
  run.pieces++;
  if (shouldStop === undefined || run.pieces % PIECES_A_QUESTION !== 0) return;
  if (shouldStop()) throw new CrosscoatError('cancelled', 'layPath: stopped on request; the deposit is half laid, throw it away');
}
