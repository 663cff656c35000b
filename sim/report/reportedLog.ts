import type { AirSpec, LogEntrySpec, StepSpec } from '../job/schema.ts';
import type { WaitBefore } from '../log/progress.ts';
import type { SignatureState } from '../log/signing.ts';

/** The air as it was noted, with what follows from it. */
export interface ReportedNotedAir {
  readonly temperature_K: number;
  readonly humidityFraction: number;
  readonly dewPoint_K: number;
  /** Null where the surface was not read. */
  readonly surface_K: number | null;
  /** Surface over dew point; null where the surface was not read. */
  readonly surfaceMargin_K: number | null;
}

/** What the plan says beside an entry. */
export interface ReportedEntryPlan {
  readonly stepName: string | null;
  /** The step before it, whose wait comes before this one; null for a first step, or an entry without one. */
  readonly before: StepSpec | null;
  readonly mixName: string | null;
  /** Finish to thinner, in words. */
  readonly ratio: string | null;
  /** The cup reading stated with the mix. */
  readonly cup: NonNullable<LogEntrySpec['cup']> | null;
  readonly air: AirSpec;
  readonly wet_um: number | null;
}

/** An entry of the log with what follows from it, for words. */
export interface ReportedEntry {
  readonly entry: LogEntrySpec;
  readonly panelNames: readonly string[];
  /** Null where the entry names none, or the job has it no more. */
  readonly coatName: string | null;
  readonly setUpName: string | null;
  readonly recordingName: string | null;
  readonly cupName: string | null;
  /** From start to end, s; below 0 where the clock was put back; null where no end is noted. */
  readonly took_s: number | null;
  readonly airStart: ReportedNotedAir | null;
  readonly airEnd: ReportedNotedAir | null;
  readonly wait: WaitBefore | null;
  readonly plan: ReportedEntryPlan;
  readonly signature: SignatureState;
}
