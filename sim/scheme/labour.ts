import type { StepSpec } from '../job/schema.ts';
import type { PlannedScheme } from './planned.ts';

/** Time at work of one kind. */
export interface KindOfWork {
  readonly kind: StepSpec['kind'];
  readonly steps: number;
  readonly work_s: number;
  /** How many of its steps have a stated time; the others are worked out from assumed rates. */
  readonly stated: number;
}

/** Time at work and waits of a scheme. */
export interface Labour {
  readonly kinds: readonly KindOfWork[];
  readonly work_s: number;
  /** Least waits as stated for 70 °F, one after another, s; no time at work. */
  readonly wait_s: number;
}

/** Time at work by kind, in order of first use, and in all; waits apart. Left out: breaks, and what goes on while something dries. */
export function labourOf({ steps }: PlannedScheme): Labour {
  const kinds = new Map<StepSpec['kind'], KindOfWork>();
  for (const { spec, work_s, workOrigin } of steps) {
    const before = kinds.get(spec.kind) ?? { kind: spec.kind, steps: 0, work_s: 0, stated: 0 };
    kinds.set(spec.kind, { ...before, steps: before.steps + 1, work_s: before.work_s + work_s, stated: before.stated + (workOrigin.kind === 'typed' ? 1 : 0) });
  }
  const sum = (of: (step: (typeof steps)[number]) => number) => steps.reduce((total, step) => total + of(step), 0);
  return { kinds: [...kinds.values()], work_s: sum(({ work_s }) => work_s), wait_s: sum(({ wait_s }) => wait_s) };
}
