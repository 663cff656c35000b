import type { Job } from '../../sim/index.ts';

/** A job without its long parts, and where each of them belongs. */
export interface MainPart {
  readonly job: unknown;
  readonly cuts: readonly Cut[];
}

/** A part's name, and the keys that lead from the job's top to its place. */
export type Cut = readonly [name: string, path: readonly (string | number)[]];

export interface JobParts {
  readonly main: MainPart;
  /** Each long part by its name. The same value (texts equal, lists the same one) need not be written again. */
  readonly parts: ReadonlyMap<string, unknown>;
}

/**
 * Takes a job apart for storage: a recording can be 64 MB, a photograph 400 kB and a survey have 20,000 readings, and typing in
 * a field must not write them again. Named by ids, so that what moves in its list stays the same part.
 */
export function packJob(job: Job): JobParts {
  const parts = new Map<string, unknown>();
  const cuts: Cut[] = [];
  const cut = (name: string, path: Cut[1], value: unknown): void => {
    parts.set(name, value);
    cuts.push([name, path]);
  };
  const recordings = job.recordings.map((each, i) => {
    cut(`recording:${each.id}`, ['recordings', i, 'text'], each.text);
    return { ...each, text: '' };
  });
  const log = job.log?.map((entry, i) => ({
    ...entry,
    photos: entry.photos.map((photo, k) => {
      cut(`photo:${entry.id}:${photo.id}`, ['log', i, 'photos', k, 'jpeg'], photo.jpeg);
      return { ...photo, jpeg: '' };
    }),
  }));
  const surveys = job.surveys?.map((survey, i) => {
    cut(`readings:${survey.id}`, ['surveys', i, 'readings'], survey.readings);
    return { ...survey, readings: [] };
  });
  return { main: { job: { ...job, recordings, ...(log && { log }), ...(surveys && { surveys }) }, cuts }, parts };
}

/** Puts a job together again, in place; still to be checked by `parseJob`. A part that is not there leaves its place as it is. */
export function unpackJob({ job, cuts }: MainPart, parts: ReadonlyMap<string, unknown>): unknown {
  for (const [name, path] of cuts) {
    let at = job as Record<string | number, unknown>;
    for (const key of path.slice(0, -1)) at = at[key] as typeof at;
    if (parts.has(name)) at[path.at(-1) as string] = parts.get(name);
  }
  return job;
}
