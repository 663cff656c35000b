import type { Job } from '../../sim/index.ts';

/** The coat asked for; without one, all of the job's coats or its first. An unknown id is found out by the run. */
export function chosenCoats(job: Job, asked: string | undefined, otherwise: 'all' | 'first'): string[] {
  if (asked !== undefined) return [asked];
  const ids = job.coats.map(({ id }) => id);
  return otherwise === 'all' ? ids : ids.slice(0, 1);
}
