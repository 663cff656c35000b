import { withRecording } from '../../job/demo.ts';
import type { AirSpec, CoatSpec, HandSpec, Job, MixSpec, PlanSpec, SetUpSpec, TargetSpec } from '../../job/schema.ts';
import type { Path } from '../../stroke/path.ts';
import type { Planned } from '../../stroke/plan.ts';
import { writeRecording } from '../../stroke/writeRecording.ts';
import { settleCoat } from '../settle.ts';
import { smallCoat, smallJob, type SmallCoatParts } from '../smallJob.ts';
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
  readonly hand?: Exclude<HandSpec['kind'], 'own'>;
  readonly seed?: number;
}

/** A small panel fits a class's screen twice, and its film is worked out while the knob is turned. */
const PANEL_MM: readonly [number, number] = [300, 400];

/** A job of one coat on a small upright panel of cloth: clear dope, the usual low-pressure gun, `parts` apart. */
export function lessonJob(parts: LessonParts): Job {
  return smallJob({
    ...parts,
    name: `Demonstration: ${parts.title}`,
    note: 'An invented job that shows one fault. Change it, and watch what the film does.',
    part: 'Demonstration panel',
    panel_mm: PANEL_MM,
    coat: coatParts(SHOWN_COAT, parts),
  });
}

/** A coat of a lesson's job. */
export function lessonCoat(id: string, parts: LessonParts): CoatSpec {
  return smallCoat(coatParts(id, parts));
}

function coatParts(id: string, parts: LessonParts): SmallCoatParts {
  return { ...parts, id, name: parts.title };
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
