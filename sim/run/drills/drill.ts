import type { Job } from '../../job/schema.ts';
import type { TaskSpec } from '../../job/session.ts';

/**
 * An exercise with the gun: a job to be sprayed by hand, and what shows that it can be done. The job
 * is an ordinary job; the coat's plan says what is meant. Everything in it is made up.
 */
export interface Drill {
  readonly id: string;
  readonly title: string;
  /** What to do, to the trainee, in at most three short sentences. */
  readonly task: string;
  /** As a curriculum states it: what must be so, with figures. */
  readonly criterion: string;
  /** What is looked at to see it. */
  readonly evidence: string;
  /** Where the criterion comes from: a published source that was read, `common practice`, or `Assumed`. */
  readonly source: string;
  readonly caution: string;
  readonly job: () => Job;
  readonly coat: string;
  /** Measures that must be within the rubric's limits. */
  readonly counts: TaskSpec['counts'];
  /** How long the film is watched after the gun is put away, s. */
  readonly watch_s: number;
  /** Time that the task itself asks to wait, s. */
  readonly wait_s: number;
  /** Whether the planned lines are drawn at the start. */
  readonly guides: boolean;
}

/** What of a drill a session keeps. */
export function taskOf({ id, title, coat, counts, watch_s, wait_s }: Drill): TaskSpec {
  return { id, title, coat, counts: [...counts], watch_s, wait_s };
}
