import type { Warning } from '../base/errors.ts';

/**
 * Faults of the film as laid: bare or nearly so, thin, too heavy, and arrived too dry to flow out. One
 * place has at most one film fault; dry spray may join it.
 */
export type LaidFaultKind = 'holiday' | 'thin-lap' | 'heavy-spot' | 'dry-spray';

/**
 * Faults that the film gets while it lives: it ran and gathered; it set before it levelled; fresh film
 * was laid on a lap that had set; it was colder than the dew point; solvent was shut in beneath a fresh
 * coat, or beneath its own skin; there is more of it than a coat should weigh.
 */
export type LifeFaultKind = 'run' | 'orange-peel' | 'dry-lap' | 'blush' | 'blister' | 'pinhole' | 'over-thick';

/** With the trade's meanings. */
export type FaultKind = LaidFaultKind | LifeFaultKind;

/** A connected region of one fault. */
export interface Zone {
  readonly kind: FaultKind;
  readonly area_m2: number;
  /** Place of the worst value. */
  readonly at_m: readonly [number, number];
  /** Bounding box: left, bottom, right, top. */
  readonly box_m: readonly [number, number, number, number];
  /**
   * Film there, in the target's kind (wet or dry), m; for dry spray the share that arrived dry; for the
   * faults of the film's life see `LifeLimits`.
   */
  readonly worst: number;
  /** The limit that it is past, in the same unit. */
  readonly limit: number;
  /** How far past its limit, in the same unit, positive. */
  readonly margin: number;
  /** Cells of the zone. */
  readonly cells: Uint32Array;
  /** Of a run only. */
  readonly run?: RunCourse;
}

/** Where and when a run began, and how far down it reaches. */
export interface RunCourse {
  readonly start_m: readonly [number, number];
  readonly started_s: number;
  readonly length_m: number;
}

/** What a fault can come from: a habit of the hand, the plan, the set-up, or nothing that can be named. */
export type CauseKind =
  /**
   * A stroke of the plan was not sprayed, or not all along its line. `strokes` are then indices of
   * the plan, not of what was laid; `found` is the largest share of their lines that was sprayed.
   */
  | 'missing-stroke'
  | 'stop'
  | 'speed'
  | 'distance'
  | 'angle'
  | 'overlap'
  | 'trigger'
  /** A hand's outermost stroke ran off its line and leaves the edge thin. */
  | 'edge'
  /** The plan's first line stands too far inside the edge. */
  | 'plan-edge'
  /** The plan opens or closes the fluid too near the edge. */
  | 'plan-lead'
  | 'plan-overlap'
  | 'plan-film'
  | 'plan-distance'
  | 'set-up'
  /** The plan lays more or less than this film can bear at its speed. */
  | 'plan-speed'
  /** More liquid leaves the gun than the film can hold, or less than it needs. */
  | 'fluid'
  /** Thinned too much or too little. */
  | 'thinner'
  /** The solvents leave too fast, or the last of them too slowly. */
  | 'solvent'
  /** The room: its warmth and moisture. */
  | 'air'
  /** The coat beneath had not stood long enough. */
  | 'wait'
  | 'unknown';

/** Why a fault is there: which strokes, what the hand did there, against what was meant. */
export interface Cause {
  readonly kind: CauseKind;
  /** 0-based indices of the strokes laid; of planned strokes for `missing-stroke`. The chief one first. */
  readonly strokes: readonly number[];
  /** What was found and what was meant, SI; NaN where it has no single figure. */
  readonly found: number;
  readonly meant: number;
  /** Unit of `found` and `meant`; volumes of thinner to one of finish have 'ratio'. */
  readonly unit: 'm' | 'm/s' | 's' | 'rad' | 'fraction' | 'K' | 'm3/s' | 'ratio' | '';
  /** Share of the excess or lack at the zone's worst and other representative places that goes when this cause is taken away, 0 to 1; NaN for a zone whose cause was not sought. */
  readonly explains: number;
}

/** One thing to do otherwise, small enough to be tried by the model. */
export type Change = TravelChange | ConditionChange;

/** Something other than the gun's travel. */
export type ConditionChange =
  | { readonly kind: 'fluid-rate'; readonly rate_m3_s: number }
  | { readonly kind: 'thinner'; readonly thinnerPerFinish: number }
  /** Share of the thinner that is retarder. */
  | { readonly kind: 'retarder'; readonly retarderFraction: number }
  /** The same air warmed, its moisture unchanged. */
  | { readonly kind: 'warm-room'; readonly temperature_K: number }
  | { readonly kind: 'wait'; readonly wait_s: number };

/** How the gun is moved, or should have been. */
export type TravelChange =
  | { readonly kind: 'even-speed'; readonly strokes: readonly number[]; readonly speed_m_s: number }
  | { readonly kind: 'no-stops'; readonly strokes: readonly number[] }
  | { readonly kind: 'even-distance'; readonly strokes: readonly number[]; readonly distance_m: number }
  | { readonly kind: 'square-gun'; readonly strokes: readonly number[] }
  /** `anchored`: those of the strokes that go to their planned lines, having no stroke before them to lap. */
  | { readonly kind: 'move-strokes'; readonly strokes: readonly number[]; readonly overlapFraction: number; readonly anchored?: readonly number[] }
  | { readonly kind: 'trigger-past-edge'; readonly strokes: readonly number[]; readonly lead_m: number }
  /** What was not sprayed of these strokes of the plan laid as well; indices of the plan. */
  | { readonly kind: 'add-strokes'; readonly strokes: readonly number[] }
  | { readonly kind: 'plan'; readonly overlapFraction?: number; readonly speed_m_s?: number; readonly distance_m?: number; readonly firstStroke_m?: number; readonly lead_m?: number };

/** A cure that the model has tried by running the whole coat again with the change. */
export interface Cure {
  readonly change: Change;
  /** Worst value at the fault's place afterwards, same unit as `Zone.worst`. */
  readonly worst: number;
  /** Area of this kind of fault on the whole panel, before and after. */
  readonly areaBefore_m2: number;
  readonly areaAfter_m2: number;
  readonly inTargetBefore: number;
  readonly inTargetAfter: number;
  /** Kinds of fault that the change makes worse. */
  readonly worsens: readonly FaultKind[];
}

/** Zones of one kind with one cause, worst zone first. */
export interface Fault {
  readonly kind: FaultKind;
  readonly zones: readonly Zone[];
  readonly area_m2: number;
  readonly cause: Cause;
  /** Null where no tried change helps. */
  readonly cure: Cure | null;
}

/** Film figures over the panel's inside, weighted by covered area. */
export interface FilmFigures {
  readonly mean_m: number;
  readonly min_m: number;
  readonly max_m: number;
  /** Standard deviation over mean. */
  readonly cv: number;
}

/** A coat judged against its target: film figures, faults with causes and cures, and doubts about the judgement. */
export interface Verdict {
  readonly wet: FilmFigures;
  readonly dry: FilmFigures;
  /** Share of the panel's area between the target's limits and not dry-sprayed, 0 to 1. */
  readonly inTargetFraction: number;
  /** Worst first: by area times how far past the limit. */
  readonly faults: readonly Fault[];
  readonly warnings: readonly Warning[];
}
