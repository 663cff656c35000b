import { DISTANCE_MM, USUAL_AIR, USUAL_BACKING, defaultMix, defaultSetUp } from '../../job/defaults.ts';
import { withRecording } from '../../job/demo.ts';
import { SCHEMA_VERSION, type AirSpec, type CoatSpec, type Job, type MixSpec, type PlanSpec, type SetUpSpec, type TargetSpec } from '../../job/schema.ts';
import type { Path } from '../../stroke/path.ts';
import type { Planned } from '../../stroke/plan.ts';
import { writeRecording } from '../../stroke/writeRecording.ts';
import { settleCoat } from '../settle.ts';
import { planOf } from '../strokes.ts';
import { SHOWN_COAT } from './demonstration.ts';

/** What a lesson's job has that the usual one has not. */
export interface LessonParts {
  readonly title: string;
  readonly tilt_deg?: number;
  readonly air?: Partial<AirSpec>;
  readonly mix?: Partial<MixSpec>;
  readonly gun?: Partial<SetUpSpec>;
  readonly plan?: Partial<PlanSpec>;
  readonly target?: Partial<TargetSpec>;
  readonly hand?: CoatSpec['hand']['kind'];
  readonly seed?: number;
}

/** A small panel fits a class's screen twice, and its film is worked out while the knob is turned. */
const PANEL_MM: readonly [number, number] = [300, 400];
/** Coarse for a job, fine for a picture: a stroke is 50 cells wide. */
const CELL_MM = 4;

/** Half overlap at arm's pace, one pass: 50 µm wet with the usual gun and mix. */
const PLAN: PlanSpec = {
  overlap_percent: 50,
  speed_m_s: 0.36,
  distance_mm: DISTANCE_MM,
  direction_deg: 0,
  order: 'serpentine',
  lead_mm: 60,
  lag_mm: 60,
  firstStroke_mm: 0,
  cross: false,
};

const TARGET: TargetSpec = { film: 'wet', thickness_um: 50, min_percent: 80, max_percent: 120, holiday_percent: 25, dry_percent: 10 };

/** A job of one coat on a small upright panel of cloth: clear dope, the usual low-pressure gun, `parts` apart. */
export function lessonJob(parts: LessonParts): Job {
  return {
    schemaVersion: SCHEMA_VERSION,
    name: `Demonstration: ${parts.title}`,
    note: 'An invented job that shows one fault. Change it, and watch what the film does.',
    seed: parts.seed ?? 1,
    cell_mm: CELL_MM,
    part: { name: 'Demonstration panel', panels: [panel(parts.tilt_deg ?? 90)] },
    air: { ...USUAL_AIR, ...parts.air },
    mixes: [{ ...defaultMix('mix', 'Clear dope, general thinner'), ...parts.mix }],
    setUps: [{ ...defaultSetUp('low-pressure', 'gun', 'Low-pressure gun, 200 mm fan'), ...parts.gun }],
    coats: [lessonCoat(SHOWN_COAT, parts)],
    recordings: [],
  };
}

function panel(tilt_deg: number): Job['part']['panels'][number] {
  return {
    id: 'panel',
    name: 'Panel',
    outline: { rectangle_mm: [...PANEL_MM] },
    holes: [],
    attitude: { tilt_deg, down_deg: -90 },
    backing: USUAL_BACKING,
  };
}

/** A coat of a lesson's job. */
export function lessonCoat(id: string, parts: LessonParts): CoatSpec {
  return {
    id,
    name: parts.title,
    panel: 'panel',
    setUp: 'gun',
    mix: 'mix',
    target: { ...TARGET, ...parts.target },
    plan: { ...PLAN, ...parts.plan },
    hand: { kind: parts.hand ?? 'steady' },
  };
}

/**
 * The same job with its shown coat laid by a recorded hand, made from the plan: what no plan can state
 * (a stop, a swung wrist, a trigger pulled too early).
 */
export function laidByHand(job: Job, handOf: (planned: Planned, triggerLag_s: number) => Path): Job {
  const setting = settleCoat(job, SHOWN_COAT);
  const path = handOf(planOf(setting, setting.plan), setting.setUp.triggerLag_s);
  return withRecording(job, SHOWN_COAT, { id: 'hand', name: 'Hand of the demonstration', text: [...writeRecording(path)].join('') });
}
