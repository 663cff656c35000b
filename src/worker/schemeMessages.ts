import type { Job, PlannedScheme } from '../../sim/index.ts';

/** Messages of the scheme: name, what is asked, what comes back. */
export interface SchemeMessages {
  /** A scheme of the job worked out. */
  planScheme: { request: { job: Job; scheme: string }; reply: { plan: PlannedScheme } };
}
