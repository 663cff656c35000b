import { batch, effect, signal } from '@preact/signals';
import { withOffer, type Job, type PlanComparison, type SetUpOffer } from '../../../sim/index.ts';
import type { TruthFields } from '../../worker/surveyMessages.ts';
import { changeJob, closeStep } from '../document.ts';
import { dropDraft } from '../fieldText.ts';
import { latestOnly } from '../latest.ts';
import { pointerOf, withValueAt } from '../path.ts';
import type { Problem } from '../problem.ts';
import { state } from '../state.ts';
import { whileWorking } from '../whileWorking.ts';
import { shownSurvey } from './survey.ts';
import { surveyWorker } from './surveyWorker.ts';

/** The shown survey beside its plan; kept nowhere, since the job gives it again. */
export const truthSheet = {
  comparison: signal<PlanComparison | null>(null),
  fields: signal<TruthFields | null>(null),
  /** The job that was compared, which may be older than the one in hand. */
  madeOf: signal<Job | null>(null),
  problem: signal<Problem | null>(null),
  working: signal(false),
};

/** Keeps the comparison in step with the job while the sheet is open. @returns a way to stop, which ends the worker. */
export function followTruth(): () => void {
  const work = latestOnly(compare);
  const stop = effect(() => {
    const [job, survey] = [state.job.value, shownSurvey.value];
    const { noise_um } = state.survey.value.truth;
    if (survey === null) forget();
    else work({ job, survey: survey.id, gaugeNoise_m: noise_um === null ? null : noise_um * 1e-6 });
  });
  return () => {
    stop();
    surveyWorker.end();
  };
}

async function compare(asked: { readonly job: Job; readonly survey: string; readonly gaugeNoise_m: number | null }): Promise<void> {
  if (truthSheet.comparison.peek()?.survey !== asked.survey) forget();
  truthSheet.problem.value = null;
  await whileWorking(truthSheet, 'The survey could not be compared with its plan', async () => {
    const { comparison, fields } = await surveyWorker.ask('surveyTruth', asked);
    batch(() => {
      truthSheet.comparison.value = comparison;
      truthSheet.fields.value = fields;
      truthSheet.madeOf.value = asked.job;
    });
  });
  if (truthSheet.problem.peek() !== null) forget();
}

function forget(): void {
  batch(() => {
    truthSheet.comparison.value = null;
    truthSheet.fields.value = null;
    truthSheet.madeOf.value = null;
  });
}

/**
 * Takes an offer for its set-up, as one step of undo. A set-up that was changed since the comparison is left as it is. Text
 * that waits in a box of the set-up would hide the new number and is let go.
 */
export function takeOffer(offer: SetUpOffer): void {
  const job = state.job.peek();
  const index = job.setUps.findIndex(({ id }) => id === offer.setUp);
  const setUp = job.setUps[index];
  if (setUp === undefined || !truthSheet.madeOf.peek()?.setUps.includes(setUp)) return;
  const path = ['setUps', index] as const;
  const own = `${pointerOf(path)}/`;
  for (const pointer of Object.keys(state.drafts.peek())) if (pointer.startsWith(own)) dropDraft(pointer);
  closeStep();
  changeJob('Use the survey for this set-up', withValueAt(job, path, withOffer(setUp, offer)));
}
