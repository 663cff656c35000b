import { batch, effect, signal } from '@preact/signals';
import { placesCsv, type Job, type SamplingPlan } from '../../../sim/index.ts';
import { download } from '../../storage/download.ts';
import { latestOnly } from '../latest.ts';
import type { Problem } from '../problem.ts';
import { state } from '../state.ts';
import { whileWorking } from '../whileWorking.ts';
import type { ReadingMark } from './readingMarks.ts';
import { shownSurvey } from './survey.ts';
import { surveyWorker } from './surveyWorker.ts';

/** Where to read the shown survey's panel; kept nowhere, since the job gives it again. */
export const whereSheet = {
  plan: signal<SamplingPlan | null>(null),
  problem: signal<Problem | null>(null),
  working: signal(false),
};

/** Keeps the places in step with the job while the sheet is open. @returns a way to stop, which ends the worker. */
export function followWhere(): () => void {
  const work = latestOnly(plan);
  const stop = effect(() => {
    const [job, survey] = [state.job.value, shownSurvey.value];
    if (survey === null) whereSheet.plan.value = null;
    else work({ job, survey: survey.id });
  });
  return () => {
    stop();
    surveyWorker.end();
  };
}

async function plan(asked: { readonly job: Job; readonly survey: string }): Promise<void> {
  await whileWorking(whereSheet, 'No places could be worked out', async () => {
    const reply = await surveyWorker.ask('surveyWhere', asked);
    batch(() => {
      whereSheet.plan.value = reply.plan;
      whereSheet.problem.value = null;
    });
  });
  if (whereSheet.problem.peek() !== null) whereSheet.plan.value = null;
}

/** The places as marks on the panel's drawing; those that the model chose stand out. */
export function placeMarks({ places }: SamplingPlan): ReadingMark[] {
  return places.map(({ number, kind, at_m }) => ({ at_m, label: String(number), standsOut: kind !== 'spread' }));
}

/** Saves the places as CSV with an empty column for the film, which the sheet Readings opens when it is filled in. */
export function savePlaces(): void {
  const [found, survey] = [whereSheet.plan.peek(), shownSurvey.peek()];
  if (found === null || survey === null) return;
  download(new Blob([placesCsv(found, state.units.peek())], { type: 'text/csv' }), `${survey.id}-places.csv`);
}
