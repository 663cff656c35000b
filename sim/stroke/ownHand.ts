import { checkRange } from '../base/check.ts';
import type { OwnHandSpec } from '../job/schema.ts';
import { FORGOTTEN_SHARE, HAND_PRESETS, LARGEST_DEVIATIONS, type HandWander } from './hand.ts';
import type { HandSample, Wander } from './handStatistics.ts';

/** The limits of a job file's own hand. */
const MOST: HandWander = { distance_m: 0.5, across_m: 0.5, speedFraction: 0.89, pitch_rad: Math.PI / 3, yaw_rad: Math.PI / 3, trigger_s: 1, correlation_s: 60 };
const LEAST_CORRELATION_S = 0.1;
/** Time that a sample of a trace stands for. */
const TRACE_STEP_S = 0.01;
/** Where a line takes more than this of the variance, what it leaves says too little of the whole: the stroke is shorter than three correlation times. */
const LEAST_LEFT = 0.2;
const LINE_STEPS = 64;

/**
 * A measured hand as one that `wander` can lay.
 *
 * Spread: `wander` takes the largest error, which is `LARGEST_DEVIATIONS` standard deviations of
 * its noise. A lasting habit (the mean of distance or speed) is not in it: the errors of `wander`
 * have none. Tilt has no sign, so that its mean square is shared evenly by pitch and yaw, habit
 * included. The aim is off each stroke's own line, which takes a slow drift with it; what a line
 * over a stroke takes of errors as lasting as the distance's is given back, at most √5 of what was left (the
 * strokes' length from samples and overlaps; good to 5 % for strokes of three correlation times or
 * more).
 *
 * Correlation: `wander` counts in the noise's unit, of which `FORGOTTEN_SHARE` brings the
 * autocorrelation to 1/e. Taken from distance and speed, by their samples; where the record is too
 * short for both, a practised hand's. Every amount is held within what a job file may say.
 * @param trigger early or late on the trigger (`triggerWander`); without it the trigger is exact.
 * @throws CrosscoatError `range` for a sample of nothing.
 */
export function ownHand(sample: HandSample, trigger?: Wander): HandWander {
  checkRange({ name: 'ownHand: samples of the hand', value: sample.distance_m.count, low: 1, high: Number.MAX_SAFE_INTEGER, why: 'nothing was sprayed', advice: 'give a session with a stroke' });
  const forgotten_s = forgottenIn_s(sample);
  const tilt_rad = Math.sqrt((sample.tilt_rad.mean ** 2 + sample.tilt_rad.deviation ** 2) / 2);
  const left = leftByLine(strokeTime_s(sample) / forgotten_s);
  return {
    distance_m: largest(sample.distance_m.deviation, MOST.distance_m),
    across_m: largest(sample.across_m.deviation / Math.sqrt(left), MOST.across_m),
    speedFraction: largest(sample.speed.deviation, MOST.speedFraction),
    pitch_rad: largest(tilt_rad, MOST.pitch_rad),
    yaw_rad: largest(tilt_rad, MOST.yaw_rad),
    trigger_s: trigger === undefined || trigger.count === 0 ? 0 : largest(trigger.deviation, MOST.trigger_s),
    correlation_s: Math.min(MOST.correlation_s, Math.max(LEAST_CORRELATION_S, forgotten_s / FORGOTTEN_SHARE)),
  };
}

/** A hand for a coat of the job file, in its units and to the digits that a form shows. */
export function ownHandSpec(name: string, hand: HandWander): OwnHandSpec {
  return {
    kind: 'own',
    name,
    distance_mm: rounded(hand.distance_m * 1000, 1),
    across_mm: rounded(hand.across_m * 1000, 1),
    speed_percent: rounded(hand.speedFraction * 100, 1),
    pitch_deg: rounded((hand.pitch_rad * 180) / Math.PI, 1),
    yaw_deg: rounded((hand.yaw_rad * 180) / Math.PI, 1),
    trigger_ms: rounded(hand.trigger_s * 1000, 0),
    correlation_s: rounded(hand.correlation_s, 2),
  };
}

function largest(deviation: number, most: number): number {
  return Math.min(most, deviation * LARGEST_DEVIATIONS);
}

/** The hand's 1/e time, from what tells it plainly. */
function forgottenIn_s({ distance_m, speed }: HandSample): number {
  const known = [distance_m, speed].filter(({ correlation_s }) => Number.isFinite(correlation_s));
  if (known.length === 0) return HAND_PRESETS.practised.correlation_s * FORGOTTEN_SHARE;
  const count = known.reduce((sum, each) => sum + each.count, 0);
  return known.reduce((sum, each) => sum + each.correlation_s * each.count, 0) / count;
}

/** Mean time of a stroke. The first stroke of a pass has no overlap; counting one pass makes the strokes of more a little too long. */
function strokeTime_s({ across_m, overlap }: HandSample): number {
  return (across_m.count * TRACE_STEP_S) / (overlap.count + 1);
}

/**
 * Share of the variance of an error that a straight line, fitted by least squares over `length`
 * correlation times, leaves: 1 - ∬ ρ (1 + 12 u v) over u, v in [-½, ½], with a Gaussian
 * autocorrelation ρ. (The two functions that the line takes are 1 and √12 u.)
 */
function leftByLine(length: number): number {
  let taken = 0;
  for (let i = 0; i < LINE_STEPS; i++) {
    const u = (i + 0.5) / LINE_STEPS - 0.5;
    for (let j = 0; j < LINE_STEPS; j++) {
      const v = (j + 0.5) / LINE_STEPS - 0.5;
      taken += Math.exp(-((length * (u - v)) ** 2)) * (1 + 12 * u * v);
    }
  }
  return Math.max(LEAST_LEFT, 1 - taken / LINE_STEPS ** 2);
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
