import { demoJob, parseJob, serialiseJob, type Job } from '../../../sim/index.ts';
import { packWorkshop, type PackedJob, type PackedSession, type WorkshopContent } from '../../../src/workshop/packWorkshop.ts';
import { smallJob } from '../../../sim/run/smallJob.ts';
import { keptSession } from '../app/practice/samples.ts';

export const MADE = new Date('2026-05-04T10:00:00Z');

/** A job that differs from its neighbours. */
export function numberedJob(number: number): Job {
  return parseJob({ ...demoJob(), name: `Rudder ${number}, été`, seed: number }).job;
}

export function packedJob(number: number, over: Partial<PackedJob> = {}): PackedJob {
  const job = numberedJob(number);
  return { id: `job-${number}`, name: job.name, text: serialiseJob(job), changedAt: '2026-05-01T08:00:00.000Z', archived: number % 5 === 4, earlier: [], ...over };
}

/** A short job, where a test reads it a thousand times. */
export function shortJob(number: number): Job {
  return smallJob({ name: `Small ${number}`, note: '', part: 'Board', panel_mm: [300, 200], coat: { id: 'coat', name: 'Coat' } });
}

export function packedShort(number: number): PackedJob {
  return packedJob(number, { name: `Small ${number}`, text: serialiseJob(shortJob(number)) });
}

export function packedSession(id: string): PackedSession {
  const { session, score, hand, keptAt } = keptSession({ id });
  return { session, score, hand, keptAt };
}

export function content(over: Partial<WorkshopContent> = {}): WorkshopContent {
  return { made: MADE, jobs: [packedJob(1), packedJob(2)], sessions: [packedSession('session-1')], rubric: null, preferences: { units: 'us' }, ...over };
}

/** A workshop's zip in one piece. */
export async function zipBytes(over: Partial<WorkshopContent> = {}): Promise<Uint8Array> {
  const { pieces } = await packWorkshop(content(over));
  return new Uint8Array(await new Blob(pieces).arrayBuffer());
}
