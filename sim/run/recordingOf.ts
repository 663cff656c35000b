import { CrosscoatError } from '../base/errors.ts';
import type { CoatSpec, Job } from '../job/schema.ts';
import type { Recording } from '../stroke/recordingReader.ts';
import { readRecording } from './readRecording.ts';

/**
 * The recording that lays a coat, or null where the plan does.
 * @param given recordings already read, by id; they stand before those in the job.
 * @throws CrosscoatError `not-found`; what reading it throws.
 */
export function recordingOf(job: Job, coat: CoatSpec, given?: ReadonlyMap<string, Recording>): Recording | null {
  if (coat.recording === undefined) return null;
  const known = given?.get(coat.recording);
  if (known !== undefined) return known;
  const stored = job.recordings.find(({ id }) => id === coat.recording);
  if (stored !== undefined) return readRecording([stored.text], stored.name);
  const pointer = `/coats/${job.coats.indexOf(coat)}/recording`;
  throw new CrosscoatError('not-found', `job: recording "${coat.recording}" of coat "${coat.id}" is not in the job; add it or take it out of the coat`, { pointer });
}
