import type { DBSchema, IDBPTransaction, StoreNames } from 'idb';
import type { HandSample, Job, Score, SessionSpec, TaskSpec } from '../../sim/index.ts';

/** What a list shows of a kept job, without reading it. */
export interface JobHead {
  readonly id: string;
  readonly name: string;
  /** Name of the part. */
  readonly part: string;
  /** What the device's clock said, RFC 3339 with Z. A clock can be set back: it never decides what is newer. */
  readonly madeAt: string;
  readonly changedAt: string;
  readonly archived: boolean;
  /**
   * Number of the write that made it what it is. One count for all jobs of this browser, so that the higher revision is the newer
   * one also across jobs.
   */
  readonly revision: number;
  /** Length of the whole job as JSON text, about. */
  readonly letters: number;
  readonly coats: number;
}

/** A practice session with what it was worth when it was sprayed. */
export interface KeptSession {
  readonly session: SessionSpec;
  readonly score: Score;
  readonly hand: HandSample;
  /** When it was put here, ISO 8601. */
  readonly keptAt: string;
}

/** A kept session as a list shows it: without its job and its strokes, which may be long. */
export interface ListedSession extends Omit<KeptSession, 'session'> {
  readonly session: Omit<SessionSpec, 'job' | 'strokes'>;
  /** Speed that the task asked for, which makes a length of a time. */
  readonly plannedSpeed_m_s: number;
}

/** The session under way, so that a closed page loses no more than its last seconds. */
export interface SessionDraft {
  readonly task: TaskSpec;
  readonly job: Job;
  readonly trainee: string;
  /** Recorded-stroke CSV so far. */
  readonly strokes: string;
}

/** Every store of the browser's database. */
export interface Stores extends DBSchema {
  /** Values by key; the state table says which keys there are. */
  kept: { key: string; value: unknown };
  sessions: { key: string; value: ListedSession };
  /** The long parts of a session, by its id. */
  sessionTexts: { key: string; value: Pick<SessionSpec, 'job' | 'strokes'> };
  /** At most one, under `DRAFT_KEY`; under keys that begin so its stamp, and the rows that were sprayed since, in order. */
  drafts: { key: string; value: SessionDraft | string };
  /** What lists show of the jobs. */
  jobs: { key: string; value: JobHead };
  /** Parts of the jobs by job and name of the part: the long ones are written once. jobStore.ts says which there are. */
  jobParts: { key: [job: string, name: string]; value: unknown };
}

/** The transaction in which a database is brought to a newer version. */
export type Upgrading = IDBPTransaction<Stores, StoreNames<Stores>[], 'versionchange'>;

/** What `whole` needs of a transaction. */
interface Ending {
  readonly done: Promise<void>;
  readonly error: DOMException | null;
  abort(): void;
}

/** Does all of an act in one transaction, or nothing. @throws what storage refused: what a request says of a transaction that ended is only that it ended. */
export async function whole<T>(transaction: Ending, act: () => Promise<T>): Promise<T> {
  try {
    const result = await act();
    await transaction.done;
    return result;
  } catch (why) {
    abandon(transaction);
    throw transaction.error ?? why;
  }
}

/** Ends a transaction with nothing of it kept: a value that cannot be stored is refused before the transaction knows of it. */
export function abandon(transaction: Omit<Ending, 'error'>): void {
  transaction.done.catch(() => undefined);
  try {
    transaction.abort();
  } catch {
    // It has come to its end by itself.
  }
}
