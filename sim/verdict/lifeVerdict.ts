import type { Warning } from '../base/errors.ts';
import type { Fault } from './verdict.ts';

/** What a coat's film went through, in figures. Times are on the film's clock, from the first row of the path. */
export interface LifeFigures {
  readonly sprayed_s: number;
  /** To when the film was watched. */
  readonly watched_s: number;
  /** When 99 % of it had set, and was ready for another coat; null where that was not seen. */
  readonly touchDry_s: number | null;
  readonly recoat_s: number | null;
  /** Farthest that any film ran, and what ran off the panel. */
  readonly longestRun_m: number;
  readonly ranOff_m3: number;
  /** Mean ripple left, as an amplitude. */
  readonly peel_m: number;
  /** Coldest wet film, and by how much it stayed above the dew point; NaN without film. */
  readonly coldest_K: number;
  readonly blushMargin_K: number;
  /** Mean dry film, all coats that lie there, and what it weighs. */
  readonly dry_m: number;
  readonly weight_kg_m2: number;
  readonly evaporated_m3: number;
}

/** A film's life judged: figures, faults worst first, and doubts about the judgement. */
export interface LifeVerdict {
  readonly figures: LifeFigures;
  readonly faults: readonly Fault[];
  readonly warnings: readonly Warning[];
}
