import type { Job, SurveySpec } from '../../job/schema.ts';
import type { SignatureState } from '../../log/signing.ts';
import type { PlanComparison } from '../../survey/comparison.ts';
import type { ReportedEntry } from '../reportedLog.ts';
import type { ReportedScheme } from '../reportedScheme.ts';
import type { ReportedSurvey } from '../survey/reportedSurvey.ts';

/** When a record was made, RFC 3339 with its offset, and by which version of the program. */
export interface RecordMade {
  readonly at: string;
  readonly version: string;
}

/** A scheme of the plan; without its figures where it could not be worked out, and why. */
export interface RecordedScheme {
  readonly name: string;
  readonly report: ReportedScheme | null;
  readonly problem: string;
}

/** A picture of a survey's panel. */
export interface SurveyMap {
  /** A whole SVG element. */
  readonly svg: string;
  /** What it shows, a sentence. */
  readonly caption: string;
}

/** A survey judged; without its verdict where it could not be, and why. */
export interface RecordedSurvey {
  readonly survey: SurveySpec;
  readonly reported: ReportedSurvey | null;
  readonly problem: string;
  readonly signature: SignatureState;
  /** Beside the film that its coats should have laid; null where that cannot be said, and why. */
  readonly comparison: PlanComparison | null;
  readonly comparisonProblem: string;
  readonly maps: readonly SurveyMap[];
}

/** Everything that the record of a job says. */
export interface ReportedRecord {
  readonly job: Job;
  readonly made: RecordMade;
  readonly schemes: readonly RecordedScheme[];
  /** In the order in which they were begun. */
  readonly log: readonly ReportedEntry[];
  readonly surveys: readonly RecordedSurvey[];
  /** SHA-256 of the canonical form of the whole job, 64 hexadecimal digits. */
  readonly digest: string;
}
