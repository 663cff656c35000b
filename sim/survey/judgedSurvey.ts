import type { RuleSpec } from '../job/schema.ts';
import type { FilmReading } from './filmReading.ts';

/** Undecided: bounds of combs lie on both sides of a limit, or there is nothing to judge. */
export type SurveyAnswer = 'pass' | 'fail' | 'undecided';

/** What a rule asks; the report has the words of each. */
export type CheckCode =
  | 'mean-low' | 'mean-high' | 'reading-low' | 'reading-high' | 'low-share' | 'spread'
  | 'spot-low' | 'spot-high' | 'area-low' | 'area-high';

/** One thing that a rule asks, and whether it holds. */
export interface RuleCheck {
  readonly code: CheckCode;
  readonly answer: SurveyAnswer;
  /** What was found: m for films, a share for `low-share` and `spread`; for combs the figure at the low teeth and at the high ones. */
  readonly found: readonly [low: number, high: number];
  /** What it must reach, or stay below, in the same unit. */
  readonly limit: number;
  /** The limit itself passes. */
  readonly includesLimit: boolean;
  /** Places in the survey of the readings that decide it: those beyond the limit, else the nearest to it. */
  readonly readings: readonly number[];
  /** Name of the spot or area that decides it; null for a check of all readings. */
  readonly where: string | null;
}

/** Mean of some readings: a spot or an area. */
export interface GroupMean {
  readonly name: string;
  readonly mean_m: readonly [low: number, high: number];
  readonly readings: readonly number[];
  readonly answer: SurveyAnswer;
}

/** How readings were put into spots, and spots into areas. */
export interface Grouping {
  /**
   * `named`: by the spot that each names. `threes`: each three in order, where none names one. `means-named`: every named spot has one
   * reading, taken as its mean. `means-assumed`: none names a spot, and they are too few for an area but whole fives, so each is
   * taken as a spot's mean. `mixed`: more than one of these.
   */
  readonly spots: 'named' | 'threes' | 'means-named' | 'means-assumed' | 'mixed';
  /** By the area that each names; each five spots in order where none does. */
  readonly areas: 'named' | 'fives' | 'mixed';
  /** Spots of fewer than three readings, those taken as means left out. */
  readonly shortSpots: number;
  /** Areas of fewer than five spots. */
  readonly shortAreas: number;
}

/** What all readings come to, by the middle of each. */
export interface SurveyFigures {
  /** Readings that have a middle: combs with every tooth wetted have none and are left out. NaN in the films where this is 0. */
  readonly count: number;
  readonly mean_m: number;
  readonly least_m: number;
  readonly most_m: number;
  /** Standard deviation, n - 1; 0 for one reading. */
  readonly deviation_m: number;
  /** 95 % interval of the mean by Student's t, the readings taken as independent; null below two readings. */
  readonly meanInterval_m: readonly [number, number] | null;
}

/** A survey judged by its rule. */
export interface JudgedSurvey {
  readonly rule: RuleSpec;
  readonly answer: SurveyAnswer;
  /** All that the rule asks, the one that decides first. */
  readonly checks: readonly RuleCheck[];
  readonly figures: SurveyFigures;
  readonly spots: readonly GroupMean[];
  readonly areas: readonly GroupMean[];
  /** Null for rules that ask nothing of spots. */
  readonly grouping: Grouping | null;
  /** The readings, after the rule's own correction. */
  readonly readings: readonly FilmReading[];
}
