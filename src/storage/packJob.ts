import type { Job } from '../../sim/index.ts';

const RECORDING_KEY = 'recording:';

export interface PackedJob {
  readonly values: ReadonlyMap<string, unknown>;
  readonly removed: readonly string[];
  /** Text of every recording now kept, by id. */
  readonly recordings: Map<string, string>;
}

/**
 * Splits a job for storage: its words without the recordings' text under `job`, and each
 * recording under its own key only when it is new, since a recording can be 64 MB and typing in
 * a field must not write it again.
 */
export function packJob(job: Job, kept: ReadonlyMap<string, string>): PackedJob {
  const values = new Map<string, unknown>([
    ['job', { ...job, recordings: job.recordings.map((each) => ({ ...each, text: '' })) }],
  ]);
  const recordings = new Map(job.recordings.map((each) => [each.id, each.text]));
  for (const [id, text] of recordings) {
    if (kept.get(id) !== text) values.set(RECORDING_KEY + id, text);
  }
  const removed = [...kept.keys()].filter((id) => !recordings.has(id)).map((id) => RECORDING_KEY + id);
  return { values, removed, recordings };
}

/** Puts a stored job together again; still to be checked by `parseJob`. Null where none is stored. */
export function unpackJob(stored: ReadonlyMap<string, unknown>): unknown {
  const job = stored.get('job');
  if (typeof job !== 'object' || job === null) return null;
  const { recordings } = job as { recordings?: unknown };
  if (!Array.isArray(recordings)) return job;
  return {
    ...job,
    recordings: (recordings as { id: string }[]).map((each) => ({
      ...each,
      text: stored.get(RECORDING_KEY + each.id) ?? '',
    })),
  };
}
