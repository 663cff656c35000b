import { batch, type Signal } from '@preact/signals';
import type { KeptJob } from '../storage/jobStore.ts';
import { jobsFrom } from './jobs/jobsPrefs.ts';
import { logFrom } from './log/logPrefs.ts';
import { prefsFrom } from './practicePrefs.ts';
import { problemOf } from './problem.ts';
import { schemeFrom } from './scheme/schemePrefs.ts';
import { setUpsFrom } from './setups/setUpsPrefs.ts';
import { STAGE_NAMES, state, TIME_SPEEDS, type Draft, type StateKey } from './state.ts';
import { keptIn } from './stateTable.ts';
import { surveyFrom } from './survey/surveyPrefs.ts';
import { todayFrom } from './today/todayPrefs.ts';

/** Keys whose kept value is taken as it is, with what it must look like; anything else is left at its default. */
const FITS: Readonly<Partial<Record<StateKey, (value: unknown) => boolean>>> = {
  coatId: isText,
  stage: oneOf(...STAGE_NAMES),
  field: oneOf('wet', 'dry', 'target', 'passes', 'solids', 'dry-share'),
  momentField: oneOf('wet-now', 'dry-now', 'viscosity', 'dew-margin', 'run', 'top-solids'),
  timeSpeed: (value) => TIME_SPEEDS.some((speed) => speed === value),
  drawnOver: (value) => isRecord(value) && typeof (value as { strokes?: unknown }).strokes === 'boolean' && typeof (value as { faults?: unknown }).faults === 'boolean',
  units: oneOf('metric', 'us'),
  theme: oneOf('system', 'light', 'dark'),
  sections: isRecord,
  foldedCautions: (value) => Array.isArray(value) && value.every(isText),
};

/**
 * Puts kept values and the job that was in hand back, each checked: a browser can hold what an older build wrote.
 * @returns whether a job was restored. One that does not parse is told, and stays kept as it is: the demo has an id of its own.
 */
export async function restore(kept: ReadonlyMap<string, unknown>, work: KeptJob | null): Promise<boolean> {
  const readJob = work === null ? null : (await import('./readJob.ts')).readJob;
  return batch(() => {
    for (const key of Object.keys(keptIn) as StateKey[]) {
      const fits = keptIn[key] === 'browser' ? FITS[key] : undefined;
      const value = kept.get(key);
      if (fits?.(value) === true) (state[key] as Signal<unknown>).value = value;
    }
    state.practice.value = prefsFrom(kept.get('practice'));
    state.setUps.value = setUpsFrom(kept.get('setUps'));
    state.scheme.value = schemeFrom(kept.get('scheme'));
    state.today.value = todayFrom(kept.get('today'));
    state.survey.value = surveyFrom(kept.get('survey'));
    state.log.value = logFrom(kept.get('log'));
    state.jobs.value = jobsFrom(kept.get('jobs'));
    if (work === null || readJob === null) return false;
    try {
      state.job.value = readJob(work.job).job;
      state.jobId.value = work.head.id;
      state.drafts.value = draftsFrom(work.drafts);
      return true;
    } catch (thrown) {
      state.notice.value = problemOf(`Your last work, "${work.head.name}", could not be read; it stays kept as it is, and the demo is shown`, thrown);
      return false;
    }
  });
}

/** Half-typed text as it was kept beside a job. */
export function draftsFrom(kept: unknown): Readonly<Record<string, Draft>> {
  return isRecord(kept) ? (kept as Record<string, Draft>) : {};
}

function isRecord(value: unknown): boolean {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isText(value: unknown): value is string {
  return typeof value === 'string';
}

function oneOf(...words: readonly string[]): (value: unknown) => boolean {
  return (value) => isText(value) && words.includes(value);
}
