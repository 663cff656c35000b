import type { Job } from '../job/schema.ts';
import type { Recording } from '../stroke/recordingReader.ts';
import { judgeCoat } from './judge.ts';
import { layCoat } from './lay.ts';
import { recordingOf } from './recordingOf.ts';
import type { CoatResult } from './result.ts';
import { settleCoat } from './settle.ts';
import { strokesOf } from './strokes.ts';

/** Which coats of a job are run, from which recordings, how finely, and how it is watched and stopped. */
export interface RunOptions {
  /** Coats to run, in this order; all of the job's where not given. */
  readonly coatIds?: readonly string[];
  /** Recordings already read, by id; they stand before those in the job. */
  readonly recordings?: ReadonlyMap<string, Recording>;
  /** Side of a grid cell, mm, 1 to 10; the job's own where not given. */
  readonly cell_mm?: number;
  /** Whether cures are tried by laying the coats again; true where not given. */
  readonly cures?: boolean;
  /** Asked often; true ends the run with a `cancelled` error. */
  readonly shouldStop?: () => boolean;
  /** Share of the whole run that is done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
}

/**
 * Runs a job: settles, lays and judges each coat. Coats do not see each other's film.
 * @throws CrosscoatError for what cannot be settled or read, `cancelled` when stopped.
 */
export function runJob(job: Job, options: RunOptions = {}): CoatResult[] {
  const ids = options.coatIds ?? job.coats.map(({ id }) => id);
  return ids.map((id, i) => {
    const result = runCoat(job, id, {
      ...options,
      onProgress: (share) => options.onProgress?.((i + share) / ids.length),
    });
    options.onProgress?.((i + 1) / ids.length);
    return result;
  });
}

/** Share of one coat's run that is done when it is laid, before it is judged. */
const LAID_SHARE = 0.3;

function runCoat(job: Job, coatId: string, options: RunOptions): CoatResult {
  const setting = settleCoat(job, coatId, options);
  const strokes = strokesOf(setting, recordingOf(job, setting.coat, options.recordings));
  const laid = layCoat(setting, strokes, options);
  options.onProgress?.(LAID_SHARE);
  return judgeCoat(setting, strokes, laid, {
    ...options,
    onProgress: (share) => options.onProgress?.(LAID_SHARE + (1 - LAID_SHARE) * share),
  });
}
