import { CrosscoatError, type CoatSpec, type Job } from '../../sim/index.ts';

/** The coat asked for; without one, all of the job's coats. An unknown id is found out by the run. */
export function chosenCoats(job: Job, asked: string | undefined): string[] {
  return asked === undefined ? job.coats.map(({ id }) => id) : [asked];
}

/**
 * The coat that strokes given beside a job lay: the one asked for, else the job's only coat that a
 * recording lays already (another session of the same coat), else its first.
 */
export function recordedCoat(job: Job, asked: string | undefined): string[] {
  if (asked !== undefined) return [asked];
  const laidByHand = job.coats.filter(({ recording }) => recording !== undefined);
  const [coat] = laidByHand.length === 1 ? laidByHand : job.coats;
  return coat === undefined ? [] : [coat.id];
}

/** The one coat that a question is about: the one asked for, else the job's first. @throws `not-found`. */
export function coatAsked(job: Job, asked: string | undefined): CoatSpec {
  const coat = asked === undefined ? job.coats[0] : job.coats.find(({ id }) => id === asked);
  if (coat !== undefined) return coat;
  const known = job.coats.map(({ id }) => id).join(', ');
  throw new CrosscoatError('not-found', `--coat = "${asked ?? ''}" is not in the job (it has ${known}); give one of these`, { pointer: '/coats' });
}
