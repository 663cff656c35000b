import type { FaultKind } from '../verdict/verdict.ts';

/** What a knob turns, which says how its value is written. */
export type KnobQuantity = 'time' | 'length' | 'speed' | 'angle' | 'percent' | 'ratio' | 'passes' | 'wait';

/** The one thing that a demonstration changes, in the unit in which it is shown. */
export interface Knob {
  readonly name: string;
  /** As shown; empty for passes. */
  readonly unit: string;
  readonly quantity: KnobQuantity;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  /** The value that shows the fault, and the one that does not. */
  readonly wrong: number;
  readonly cured: number;
  /** How a sentence speaks of the value, `#` standing for it: `with a stop of #`. */
  readonly said: string;
  /** How a sentence speaks of 0, where `said` would read badly. */
  readonly saidNone?: string;
}

/** The figures that a lesson is told in. SI; over the cells that are judged. */
export interface LessonFigures {
  /** Wet film of this coat as it landed. */
  readonly heaviest_m: number;
  readonly thinnest_m: number;
  readonly mean_m: number;
  /** Mean dry film of this coat. */
  readonly meanDry_m: number;
  /** Standard deviation of that film over its mean. */
  readonly cv: number;
  /** Share of the area between the limits of the target and not dry-sprayed. */
  readonly inTargetFraction: number;
  /** The farthest that film which gathered has run; 0 where none has. */
  readonly longestRun_m: number;
  /** Amplitude of the ripple left, of which 95 % of the film has less. */
  readonly peel_m: number;
  readonly peelWord: 'still levelling' | 'smooth' | 'slight' | 'orange peel';
  /** The largest share of the film at any place that arrived dry. */
  readonly dryFraction: number;
  /** Film temperature less dew point at its lowest, K; NaN before the first film. */
  readonly blushMargin_K: number;
  /** Solvent share of what lay beneath, a mean weighted by the fresh film over it; 0 on a bare panel. */
  readonly trappedFraction: number;
  /** When nearly all was dry to touch, s from the first row; null where that was not seen. */
  readonly touchDry_s: number | null;
  /** Liquid that left the gun and does not lie on the panel: fog, missed, solvent gone in flight. */
  readonly lost_m3: number;
}

/** Figures by which a demonstration is told, in the order of its sentence. */
export type LessonFigureName = Exclude<keyof LessonFigures, 'peelWord'>;

/** One side of a demonstration at one time, as a report reads it. */
export interface ReportedSide {
  readonly id: string;
  readonly title: string;
  /** The knob's value there; null where the side does without the thing that it turns. */
  readonly knob: number | null;
  readonly time_s: number;
  readonly figures: LessonFigures;
  /** The kinds of fault found, each once. */
  readonly faults: readonly FaultKind[];
}

/** A demonstration that was run, as a report reads it. */
export interface ReportedDemonstration {
  readonly demonstration: {
    readonly id: string;
    readonly title: string;
    readonly question: string;
    readonly caution: string;
    readonly knob: Knob;
    readonly fault: FaultKind;
    readonly tells: readonly LessonFigureName[];
    readonly until_s: number;
  };
  /** The side at the knob, then the cured one, then others, at the end of the watch. */
  readonly sides: readonly ReportedSide[];
  /** The same sides at each of the times asked for. */
  readonly moments: readonly (readonly ReportedSide[])[];
}
