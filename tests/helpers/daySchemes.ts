import { minutesOf } from '../../sim/base/localTime.ts';
import type { StepSpec } from '../../sim/job/schema.ts';
import { dayChain, type DayChain } from '../../sim/scheme/dayTask.ts';
import { paceOf } from '../../sim/scheme/pace.ts';
import type { PlannedCoat, PlannedScheme, PlannedStep } from '../../sim/scheme/planned.ts';
import type { TimelineSetting } from '../../sim/scheme/timeline.ts';

/** A step in a few words; a coat where it has a layer. */
export interface ShortStep {
  readonly id?: string;
  readonly kind?: StepSpec['kind'];
  readonly name?: string;
  readonly work_min: number;
  readonly wait_h: number;
  readonly latest_h?: number;
  /** The model's times after a coat, min. */
  readonly touch_min?: number;
  readonly recoat_min?: number | null;
}

/** A record as `planScheme` gives it, with what the days read and nothing worked out. */
export function plannedOf(id: string, steps: readonly ShortStep[], panels: readonly string[] = [id]): PlannedScheme {
  return {
    scheme: { id, name: `Scheme ${id}`, panels: [...panels] },
    steps: steps.map((step, k) => plannedStep(step, k)),
    warnings: [],
  } as unknown as PlannedScheme;
}

function plannedStep(short: ShortStep, k: number): PlannedStep {
  const { work_min, wait_h, latest_h, kind = 'spray', touch_min = 0, recoat_min } = short;
  const isCoat = kind === 'spray' || kind === 'brush';
  const coat = { touchDry_s: touch_min * 60, recoat_s: recoat_min === null ? null : (recoat_min ?? 0) * 60 } as PlannedCoat;
  return {
    spec: { id: short.id ?? `s${k}`, kind, name: short.name ?? `Step ${k}`, wait_h } as StepSpec,
    pointer: `/schemes/0/steps/${k}`,
    coat: isCoat ? coat : null,
    work_s: work_min * 60,
    workOrigin: { kind: 'typed', words: 'as stated' },
    wait_s: wait_h * 3600,
    latest_s: latest_h === undefined ? null : latest_h * 3600,
  } as PlannedStep;
}

export function chainsOf(...schemes: (readonly ShortStep[])[]): DayChain[] {
  return schemes.map((steps, i) => dayChain(plannedOf(`p${i}`, steps)));
}

/** Air that never changes: waits as stated. */
export const STEADY = paceOf([0], [1]);
/** A Monday. */
export const MONDAY_8 = minutesOf('2026-05-04T08:00');

/** Days of 08:00 to 18:00 at 70 °F with nothing in the way. */
export function plainSetting(changed: Partial<TimelineSetting> = {}): TimelineSetting {
  return {
    start: MONDAY_8,
    working: { from_min: 480, to_min: 1080, weekends: true },
    mayBegin: () => true,
    rulePace: STEADY,
    modelPace: () => STEADY,
    ...changed,
  };
}
