import { DEMO_HAND_COAT, demoJob } from '../../sim/job/demo.ts';
import { settleCoat } from '../../sim/run/settle.ts';
import { planOf } from '../../sim/run/strokes.ts';
import { HAND_PRESETS, wander } from '../../sim/stroke/hand.ts';
import { writeRecording } from '../../sim/stroke/writeRecording.ts';
import { type HandFaults, makeSession } from './session.ts';

/** Where the session lies, from the top of the checkout. */
export const DEMO_SESSION_PATH = 'sim/job/demo-session.csv';

/** What a tracker of this kind can tell: 1 ms, 0.1 mm, 0.1°. */
const DIGITS = { time: 3, length: 1, angle: 1 };

/** What goes wrong in the demo's session, by stroke of the plan. */
export const DEMO_FAULTS: HandFaults = {
  stop: { stroke: 5, share: 0.55, duration_s: 0.7 },
  wideLap: { stroke: 8, shift_m: 0.045 },
  arc: { strokes: [3, 4], radius_m: 0.35, swing_rad: 0.38 },
  drift_m: 0.035,
  chatterStroke: 10,
  late: { strokes: [6], delay_s: 0.35 },
};

/** The demo's recorded session: a practised hand on the cross coat of the demo job, with the faults above, at 50 Hz. */
export function demoSessionText(): string {
  const setting = settleCoat(demoJob(), DEMO_HAND_COAT);
  const planned = planOf(setting, setting.plan);
  const hand = wander(planned, HAND_PRESETS.practised, setting.job.seed);
  const path = makeSession({ planned: hand, seed: setting.job.seed, rate_Hz: 50, noise_m: 0.001, faults: DEMO_FAULTS });
  return [...writeRecording(path, DIGITS)].join('');
}
