import type { PlannedCoat, PlannedScheme, PlannedStep } from './planned.ts';

/** One step of a scheme as a task of the days: what is worked without a break, and what has to be waited for after it. */
export interface DayTask {
  /** `scheme/step`; one of a kind in the job, and the same as long as the ids are. */
  readonly id: string;
  readonly planned: PlannedStep;
  readonly schemeId: string;
  readonly isCoat: boolean;
  /**
   * The coat whose wet mix meets the air while the step is worked: its own; for tapes, patches and rings, which are set in wet dope,
   * that of the coat before them, or after them where none is before. Null for dry work, which no air stops.
   */
  readonly wet: PlannedCoat | null;
  /** Time at work, whole minutes. */
  readonly work_min: number;
  /** Least wait after it as stated for 70 °F, min. */
  readonly wait_min: number;
  /** Latest start of the next step as stated for 70 °F, min after it; null where none is stated. */
  readonly latest_min: number | null;
  /**
   * What the model asks for after a coat, in the air that the coat was worked out in, min: until dry to touch where masks come off
   * next, else until the next coat can go on. Null after other steps, and where the model did not see the film get there.
   */
  readonly modelWait_min: number | null;
}

/** The steps of one scheme in order: each begins when the wait of the one before it is over. */
export interface DayChain {
  readonly schemeId: string;
  readonly schemeName: string;
  /** Ids of its panels. */
  readonly panels: readonly string[];
  readonly tasks: readonly DayTask[];
}

const SECONDS_PER_MINUTE = 60;

/** A scheme as a chain of tasks. All its panels are worked together, step by step. */
export function dayChain({ scheme, steps }: PlannedScheme): DayChain {
  return {
    schemeId: scheme.id,
    schemeName: scheme.name,
    panels: scheme.panels,
    tasks: steps.map((step, k) => dayTask(scheme.id, step, wetOf(steps, k), steps[k + 1])),
  };
}

function wetOf(steps: readonly PlannedStep[], k: number): PlannedCoat | null {
  const step = steps[k];
  if (step?.spec.kind !== 'fix') return step?.coat ?? null;
  const coatOf = ({ coat }: PlannedStep): boolean => coat !== null;
  return (steps.slice(0, k).findLast(coatOf) ?? steps.slice(k + 1).find(coatOf))?.coat ?? null;
}

function dayTask(schemeId: string, step: PlannedStep, wet: PlannedCoat | null, next: PlannedStep | undefined): DayTask {
  const model_s = next?.spec.kind === 'unmask' ? step.coat?.touchDry_s : step.coat?.recoat_s;
  return {
    id: `${schemeId}/${step.spec.id}`,
    planned: step,
    schemeId,
    isCoat: step.coat !== null,
    wet,
    // A time at work comes from films and areas, whose last digits are not meant: a billionth above a minute is that minute.
    work_min: Math.ceil(step.work_s / SECONDS_PER_MINUTE - 1e-9),
    wait_min: step.wait_s / SECONDS_PER_MINUTE,
    latest_min: step.latest_s === null ? null : step.latest_s / SECONDS_PER_MINUTE,
    modelWait_min: model_s === null || model_s === undefined ? null : model_s / SECONDS_PER_MINUTE,
  };
}
