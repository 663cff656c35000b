import { batch, effect, signal } from '@preact/signals';
import type { Job, PlannedScheme } from '../../../sim/index.ts';
import { startClient, type WorkerClient } from '../../worker/client.ts';
import type { MessageName, Messages } from '../../worker/protocol.ts';
import { latestOnly } from '../latest.ts';
import type { Problem } from '../problem.ts';
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

let client: WorkerClient | null = null;

/** Asks the scheme's worker, which is started when it is first needed. Rejects with `Stale` when the stage was closed. */
export function askScheme<Name extends MessageName>(name: Name, request: Messages[Name]['request']): Promise<Messages[Name]['reply']> {
  client ??= startClient(
    () => new Worker(new URL('../../worker/worker.ts', import.meta.url), { type: 'module', name: 'crosscoat-scheme' }),
    (why) => {
      schemeStage.problem.value = { title: 'The simulation stopped and was started again', text: `What you entered is as you left it. Reason: ${why}.`, place: {} };
    },
  );
  return client.ask(name, request);
}

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
    client?.end();
    client = null;
  };
}

async function workOut(asked: { readonly job: Job; readonly scheme: string }): Promise<void> {
  await whileWorking(schemePlan, 'This scheme could not be worked out; the figures are of the last one that could', async () => {
    const { plan } = await askScheme('planScheme', asked);
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
