import { defaultSetUp } from '../../job/defaults.ts';
import { withRecording } from '../../job/demo.ts';
import type { Job, SetUpSpec } from '../../job/schema.ts';
import { writeRecording } from '../../stroke/writeRecording.ts';
import { pathWithHabits } from '../demonstrations/handPaths.ts';
import { settleCoat } from '../settle.ts';
import { smallCoat, smallJob } from '../smallJob.ts';
import { planOf } from '../strokes.ts';
import { DRILL_COAT } from './drillJob.ts';

const HEAVY_COAT = 'heavy';
const AIR_SET_UP = 'air';
const PANEL_MM: readonly [number, number] = [400, 400];

/** The stroke through the middle of the board, and how long the gun stood still there: it will run, and air can still save it. */
const MIDDLE_STROKE = 2;
const STOP_S = 0.115;

/**
 * A wet coat in which the gun stood still for a moment, and over it, without any wait, a coat of
 * hardly more than air: its strokes sweep the middle of the board. A stated coat lays fluid, so the
 * needle leaks a trace (a film of a few micrometres).
 */
export function airOnlyJob(title: string): Job {
  const heavy = heavyJob(title);
  const air = smallCoat({
    id: DRILL_COAT,
    name: title,
    setUp: AIR_SET_UP,
    plan: { overlap_percent: 94, speed_m_s: 0.2, distance_mm: 120, lead_mm: 0, lag_mm: 0, firstStroke_mm: 175 },
    target: { thickness_um: 50, min_percent: 1, max_percent: 1000, holiday_percent: 0, dry_percent: 100 },
  });
  const { id, name, panel, setUp, mix, ...rest } = air;
  const over = { coat: HEAVY_COAT, wait_min: 0 };
  return {
    ...heavy,
    setUps: [...heavy.setUps, airSetUp()],
    coats: [...heavy.coats, { id, name, panel, setUp, ...(mix === undefined ? {} : { mix }), over, ...rest }],
  };
}

function heavyJob(title: string): Job {
  const job = smallJob({
    name: `Practice: ${title}`,
    note: 'An invented job to practise on. The coat beneath was laid with a stop in the middle of the board.',
    part: 'Practice board',
    panel_mm: PANEL_MM,
    coat: { id: HEAVY_COAT, name: 'Wet coat with a heavy place' },
  });
  const setting = settleCoat(job, HEAVY_COAT);
  const path = pathWithHabits(planOf(setting, setting.plan), setting.setUp.triggerLag_s, (stroke) =>
    stroke === MIDDLE_STROKE ? { stop: { share: 0.5, duration_s: STOP_S } } : null);
  return withRecording(job, HEAVY_COAT, { id: 'stopped', name: 'Hand that stopped', text: [...writeRecording(path)].join('') });
}

/** The fan closed to a round jet: more of the time is spent on the place than with a flat one. */
function airSetUp(): SetUpSpec {
  const setUp = defaultSetUp('low-pressure', AIR_SET_UP, 'Low-pressure gun, needle shut, round jet');
  return { ...setUp, fan: { ...setUp.fan, depth_mm: setUp.fan.width_mm }, fluidRate_mL_min: 0.5 };
}
