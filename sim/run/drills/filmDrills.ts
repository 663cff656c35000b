import { genericMixSpec } from '../../mix/changedMixSpec.ts';
import { RUN_CAUTION } from '../demonstrations/strokeLessons.ts';
import { airOnlyJob } from './airOnlyJob.ts';
import { criterionOf } from './criteria.ts';
import type { Drill } from './drill.ts';
import { DRILL_COAT, drillJob } from './drillJob.ts';

/** A board that stands upright. */
const UPRIGHT_DEG = 90;
/** Full on for a hand-held gun (common practice: 100 to 250 mL/min): 90 µm wet at 0.28 m/s. */
const FULL_FLUID = { fluidRate_mL_min: 250 } as const;

const cross: Drill = {
  id: 'cross-coat',
  title: 'The cross coat',
  task: 'Spray one pass along the board and a second at right angles to it, at the same pace. Turn the gun’s cap so that the fan stays square to its travel.',
  criterion: criterionOf('With two passes of 50 µm (2 mil) wet', ['overlap', 'coverage', 'evenness']),
  evidence: 'Overlap within each pass, and the wet film of both passes together.',
  source: 'A double coat at right angles before the first flashes off: FAA AC 43.13-1B, 2-20 and 2-21. The limits: common practice.',
  caution: 'A cross coat evens out chance, not habit; the film it leaves is twice as heavy and takes longer to dry.',
  job: () => drillJob({ title: cross.title, panel_mm: [500, 400], plan: { cross: true }, target: { thickness_um: 100 } }),
  coat: DRILL_COAT,
  counts: ['overlap', 'coverage', 'evenness'],
  watch_s: 120,
  wait_s: 0,
  guides: false,
};

/** A fan turned down, so that a stroke fits within the opening. */
const NARROW_FAN = { width_mm: 120, depth_mm: 24, atDistance_mm: 200, profile: { family: 'double-beta' as const, beta1: 3, beta2: 3 } };

const hole: Drill = {
  id: 'around-a-hole',
  title: 'Around a hole',
  task: 'Keep the strokes straight and at one pace, as if there were no opening. Let go over the opening and pull again before its far edge, without stopping.',
  criterion: criterionOf('With a fan of 120 mm (4 3/4 in) around an opening of 320 by 240 mm', ['trigger', 'coverage', 'evenness']),
  evidence: 'Film along the rim of the opening, and where fluid went off and came on over it.',
  source: 'Common practice; no published figure was found. The limits of the film: common practice; of the trigger: Assumed.',
  caution: 'Mask what lies behind an opening: spray goes through and settles inside the part.',
  job: () => drillJob({
    title: hole.title,
    panel_mm: [700, 480],
    holes: [{ points_mm: [[190, 120], [510, 120], [510, 360], [190, 360]] }],
    // The same film from a narrower fan: 180 mL/min for 200 mm.
    gun: { name: 'Low-pressure gun, 120 mm fan', fan: NARROW_FAN, fluidRate_mL_min: 108 },
    plan: { lead_mm: 20, lag_mm: 20 },
  }),
  coat: DRILL_COAT,
  counts: ['trigger', 'coverage', 'evenness'],
  watch_s: 0,
  wait_s: 0,
  guides: true,
};

const upright: Drill = {
  id: 'upright',
  title: 'Upright without a run',
  task: 'The board stands upright and the coat is a full one. Keep up 0.28 m/s (11 in/s) to the end of every stroke. A short stop, or one stroke at half the speed, will run.',
  criterion: criterionOf('With 90 µm (3.5 mil) wet on an upright board', ['runs', 'coverage', 'evenness']),
  evidence: 'The film for four minutes after the gun is put away, and where a run began.',
  source: 'Level and upright panels both: a published skill standard for wood finishing, 12.1. No run: common practice. How far a film may slide before it is a run: Assumed.',
  caution: RUN_CAUTION,
  job: () => drillJob({ title: upright.title, panel_mm: [500, 600], tilt_deg: UPRIGHT_DEG, gun: FULL_FLUID, plan: { speed_m_s: 0.28 }, target: { thickness_um: 90 } }),
  coat: DRILL_COAT,
  counts: ['runs', 'coverage', 'evenness'],
  watch_s: 240,
  wait_s: 0,
  guides: false,
};

const dryDay: Drill = {
  id: 'keep-it-wet',
  title: 'A warm, dry day without a dry lap',
  task: 'Spray a cross coat in warm, dry air with a fast thinner. Go from stroke to stroke without a pause, so that each lands on film that is still wet.',
  criterion: criterionOf('At 28 °C (82 °F) and 25 % humidity, with fast thinner one to one', ['dry-laps', 'coverage', 'evenness']),
  evidence: 'Where fresh film landed on film that had set, and how long each stroke waited for the next.',
  source: 'Keeping a wet edge: common practice. What share of a film makes a lap that shows: Assumed.',
  caution: 'Drying times come from a model. On a real warm day change the thinner by the data sheet before you hurry the hand.',
  job: () => drillJob({
    title: dryDay.title,
    air: { temperature_C: 28, humidity_percent: 25, speed_m_s: 0.5 },
    mix: { name: 'Clear dope, fast thinner', thinner: genericMixSpec('clear-dope', 'fast', 1).thinner, thinnerPerFinish: 1 },
    gun: { fluidRate_mL_min: 140 },
    plan: { cross: true },
    // Much of a fast thinner is gone before it lands.
    target: { thickness_um: 54 },
  }),
  coat: DRILL_COAT,
  counts: ['dry-laps', 'coverage', 'evenness'],
  watch_s: 240,
  wait_s: 0,
  guides: false,
};

const cure: Drill = {
  id: 'air-on-a-run',
  title: 'A run, found and stilled with air',
  task: 'Someone stopped in the middle of this wet coat, and it is about to run. The needle is shut and the fan is round: sweep air alone over the place, half trigger, from 120 mm (5 in). Start at once and keep sweeping.',
  criterion: criterionOf('With air alone, begun at once', ['runs']),
  evidence: 'The film for four minutes after the air, where it was heavy.',
  source: 'Assumed. No published figure was found; the model lets soft air set a film that is about to run, and hard air drive it on.',
  caution: 'How hard air drags a film is a rough choice of the model: learn the direction only. Air stills a slight run, never a heavy one; on real work, wipe it or leave it.',
  job: () => airOnlyJob(cure.title),
  coat: DRILL_COAT,
  counts: ['runs'],
  watch_s: 240,
  wait_s: 0,
  guides: true,
};

const two: Drill = {
  id: 'two-coats',
  title: 'Two coats and the wait between',
  task: 'Spray a full coat along the upright board, wait four minutes, and spray a second across it. Too soon and both run together; too late and the second lies on film that has set.',
  criterion: criterionOf('With two coats of 90 µm (3.5 mil) wet and a wait of 4 min', ['runs', 'dry-laps', 'coverage', 'evenness', 'time']),
  evidence: 'The film of both coats for four minutes after the second, and the time from first to last trigger.',
  source: 'Assumed: four minutes is where the model’s film no longer runs and has not set. The limits of the film: common practice.',
  caution: 'This wait is a flash-off within one job. Between full coats it is that of the data sheet: for dope FAA AC 43.13-1B asks an hour or more.',
  job: () => drillJob({ title: two.title, panel_mm: [500, 400], tilt_deg: UPRIGHT_DEG, gun: FULL_FLUID, plan: { speed_m_s: 0.28, cross: true }, target: { thickness_um: 180 } }),
  coat: DRILL_COAT,
  counts: ['runs', 'dry-laps', 'coverage', 'evenness', 'time'],
  watch_s: 240,
  wait_s: 240,
  guides: false,
};

/** What the film asks of the hand, in rising order. */
export const FILM_DRILLS: readonly Drill[] = [cross, hole, upright, dryDay, cure, two];
