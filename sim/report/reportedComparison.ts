import type { Warning } from '../base/errors.ts';
import type { KnownNumber } from '../gun/knownWithin.ts';
import type { FaultKind } from '../verdict/verdict.ts';

/**
 * The figures that set-ups are compared by. SI, the unit in the name; over the panel's inside.
 * Film figures are of this coat alone, as it landed.
 */
export interface ComparedValues {
  /** Speed at which the coat is sprayed. */
  readonly speed_m_s: number;
  /** Mean wet and dry film, and what the dry one weighs. */
  readonly wet_m: number;
  readonly dry_m: number;
  readonly weight_kg_m2: number;
  /** Wet film: standard deviation over mean, least over most, and least over mean; edges belong to it. */
  readonly cv: number;
  readonly minOverMax: number;
  readonly worstLapRatio: number;
  /** 1 less the farthest that film moved over the distance that counts as a run; below 0 it ran. */
  readonly runMarginFraction: number;
  /** How much more film than the heaviest place has would move as far as a run, as a share of it and as film; Infinity where none does. */
  readonly holdMarginFraction: number;
  readonly holdMargin_m: number;
  /** Limit of the share that arrives dry, less the largest share. */
  readonly dryMarginFraction: number;
  /** Mean ripple left, as an amplitude. */
  readonly peel_m: number;
  /** Coldest wet film less the dew point. */
  readonly blushMargin_K: number;
  /** From trigger on to the gun put away. */
  readonly spraying_s: number;
  /** Liquid that left the gun = landed + lost; lost = fog + missed + flight. */
  readonly sprayed_m3: number;
  readonly landed_m3: number;
  readonly lost_m3: number;
  /** Never reached the panel's plane; reached it beside the panel; solvent gone from the drops that land. */
  readonly fog_m3: number;
  readonly missed_m3: number;
  readonly flight_m3: number;
  readonly passes: number;
  readonly strokes: number;
  /** All the solvent sprayed, which the room gets in the end: from drops, film and fog. */
  readonly solvent_m3: number;
  readonly solvent_kg: number;
}

/** A figure by name. */
export type ComparedName = keyof ComparedValues;

/** One figure of one set-up. */
export interface ComparedFigure {
  readonly value: number;
  /** Half of the 95 % interval, in the figure's unit: what is not known of the set-up carried to it; 0 where it depends on none of that. */
  readonly within: number;
  /** Whether it hangs on a distance outside the fan's measured range. */
  readonly isOutsideRange: boolean;
}

/** A set-up whose coat was laid, watched and judged. */
export interface ReportedLaidSide {
  readonly setUp: { readonly id: string; readonly name: string };
  readonly problem: null;
  readonly figures: Readonly<Record<ComparedName, ComparedFigure>>;
  /** The kinds of fault found, each once. */
  readonly faults: readonly FaultKind[];
  /** Numbers of the set-up that nobody measured. */
  readonly assumed: readonly KnownNumber[];
  readonly isOutsideRange: boolean;
  readonly warnings: readonly Warning[];
}

/** A set-up of which no coat can be made, and why. */
export interface ReportedProblemSide {
  readonly setUp: { readonly id: string; readonly name: string };
  readonly problem: string;
}

/** One row of the table: which sides have its best figure. */
export interface ComparedRow {
  readonly name: ComparedName;
  /** Places, among the sides, of the best figure and of all that cannot be told from it; none for a row without a best. */
  readonly best: readonly number[];
  /** Whether some figures of the row cannot be told from the best, or all are the best. */
  readonly isTie: boolean;
}

/** Set-ups side by side, as a report reads them. */
export interface ReportedComparison {
  readonly coat: { readonly id: string; readonly name: string };
  readonly panel: { readonly id: string; readonly name: string };
  readonly strokes: 'as-stated' | 'to-target';
  /** To when every film was watched, on its own clock; 0 where none was laid. */
  readonly watched_s: number;
  readonly sides: readonly (ReportedLaidSide | ReportedProblemSide)[];
  readonly rows: readonly ComparedRow[];
}

/** Whether a side has figures. */
export function isWholeSide(side: ReportedLaidSide | ReportedProblemSide): side is ReportedLaidSide {
  return side.problem === null;
}
