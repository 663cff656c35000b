import type { PaintAccount } from '../deposit/deposit.ts';
import type { Film } from '../film/film.ts';
import type { TaskSpec } from '../job/session.ts';
import type { MeantStroke } from '../stroke/stroke.ts';
import type { StrokeTrace } from '../stroke/traces.ts';
import type { Score, ScoreRow, SessionFigures } from '../verdict/score.ts';
import type { Fault, FaultKind, FilmFigures, Zone } from '../verdict/verdict.ts';
import type { ReportedCoat } from './reported.ts';

/** Habits that a session is sprayed again without. */
export type WhatIfHabit = 'even-speed' | 'no-arc' | 'even-distance' | 'right-overlap' | 'trigger-past-edge';

/** The one thing to fix first. */
export type ChiefFinding =
  /** A fault and what the hand did there; with a run, one that began in it. */
  | { readonly kind: 'fault'; readonly fault: Fault; readonly run: Zone | null }
  /** No fault with a cause in the hand: the measure that is farthest from its limit, and the stroke that shows it most. */
  | { readonly kind: 'measure'; readonly row: ScoreRow; readonly stroke: number | null }
  /** Everything that counts is within its limit. */
  | { readonly kind: 'met' }
  /** The trigger was never pulled for long enough to lay a stroke. */
  | { readonly kind: 'nothing' };

/** The film that some other travel of the gun would have given. */
export interface OtherFilm {
  readonly film: Film;
  /** Of the film that the target speaks of. */
  readonly figures: FilmFigures;
  readonly inTargetFraction: number;
  readonly account: PaintAccount;
  /** From the first trigger to the last, s. */
  readonly duration_s: number;
  /** Area of each kind of fault, m²; a kind without any is left out. Faults of the film's life only where it was watched. */
  readonly areas_m2: Readonly<Partial<Record<FaultKind, number>>>;
}

/** A session looked through, as a report reads it. */
export interface ReportedDebrief {
  readonly task: TaskSpec;
  readonly trainee: string;
  readonly name: string;
  /** The coat as sprayed, judged, its film watched. */
  readonly coat: ReportedCoat;
  readonly meant: readonly MeantStroke[];
  readonly figures: SessionFigures;
  readonly score: Score;
  readonly chief: ChiefFinding;
  /** As sprayed, on the same footing as `planned`. */
  readonly sprayed: OtherFilm;
  /** What the planned strokes would have given. */
  readonly planned: OtherFilm;
  /** How many strokes the task asks for; fewer show nothing, and the task is not passed. 0 where only the film counts. */
  readonly strokesAsked: number;
  /** One a stroke, in time. */
  readonly traces: readonly StrokeTrace[];
}

/** The same session with one habit corrected, sprayed again by the model. */
export interface ReportedWhatIf {
  readonly habit: WhatIfHabit;
  /** How many strokes it changes; 0: the session does not have the habit. */
  readonly strokes: number;
  readonly other: OtherFilm;
}
