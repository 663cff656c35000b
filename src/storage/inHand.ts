import type { Job } from '../../sim/index.ts';

/** The job that a window works on. All of it is replaced, never changed in place, so that what is the same need not be kept again. */
export interface InHand {
  readonly id: string;
  readonly job: Job;
  /** Half-typed text by its field. */
  readonly drafts: unknown;
}
