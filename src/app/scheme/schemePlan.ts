import { batch, effect, signal } from '@preact/signals';
import type { Job, PlannedScheme } from '../../../sim/index.ts';
import { latestOnly } from '../latest.ts';
import type { Problem } from '../problem.ts';
import { stageWorker } from '../stageWorker.ts';
import { state } from '../state.ts';
import { whileWorking } from '../whileWorking.ts';
import { schemeStage, shownScheme } from './scheme.ts';

/** The shown scheme worked out; kept nowhere, since the job gives it again. */
export const schemePlan = {
  /** Of the job `madeOf`, which may be older than the one in hand; null before the first, and where the job has no scheme. */
  plan: signal<PlannedScheme | null>(null),
  madeOf: signal<Job | null>(null),
  problem: signal<Problem | null>(null),
  working: signal(false),
};

/** The worker of all sheets of the scheme. */
export const schemeWorker = stageWorker('scheme', schemeStage.problem);

/** Keeps the plan of the shown scheme in step with the job while the stage is open. @returns a way to stop, which ends the worker. */
export function followScheme(): () => void {
  const work = latestOnly(workOut);
  const stop = effect(() => {
    const [job, scheme] = [state.job.value, shownScheme.value];
    if (scheme === null) forget(job);
    else work({ job, scheme: scheme.id });
  });
  return () => {
    stop();
    schemeWorker.end();
  };
}

async function workOut(asked: { readonly job: Job; readonly scheme: string }): Promise<void> {
  await whileWorking(schemePlan, 'This scheme could not be worked out; the figures are of the last one that could', async () => {
    const { plan } = await schemeWorker.ask('planScheme', asked);
    batch(() => {
      schemePlan.plan.value = plan;
      schemePlan.madeOf.value = asked.job;
      schemePlan.problem.value = null;
    });
  });
}

function forget(job: Job): void {
  batch(() => {
    schemePlan.plan.value = null;
    schemePlan.madeOf.value = job;
    schemePlan.problem.value = null;
  });
}
