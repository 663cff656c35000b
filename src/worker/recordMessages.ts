import type { Job, KeepRow, UnitSystem } from '../../sim/index.ts';

/** The record of a job as the files that it is saved as, and what its sheet says of it. */
export interface RecordReply {
  /** The page that prints. */
  readonly html: string;
  readonly readingsCsv: string;
  readonly logCsv: string;
  readonly json: string;
  /** The job in canonical form, of which the digest is. */
  readonly canonical: string;
  readonly digest: string;
  /** Rules that fail or stay open, signatures that do not match. */
  readonly look: readonly string[];
  /** Names of entries and surveys that nobody signed. */
  readonly unsigned: readonly string[];
  readonly keep: readonly KeepRow[];
}

/** Messages of the record: name, what is asked, what comes back. */
export interface RecordMessages {
  /** The whole record. `at` is the moment that stands on it. */
  record: { request: { job: Job; at: string; units: UnitSystem }; reply: RecordReply };
}
