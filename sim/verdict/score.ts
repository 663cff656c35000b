import type { Measure } from '../job/measures.ts';
import type { RubricSpec } from '../job/rubric.ts';

/** Figures of a practice session by measure, SI (m, rad, s, shares from 0); null where there is nothing to measure. */
export type SessionFigures = Readonly<Record<Measure, number | null>>;

/** How one measure is marked, SI. */
export interface RubricRow {
  readonly measure: Measure;
  readonly weight: number;
  /** Within it the criterion is met and the mark is full. */
  readonly limit: number;
  /** From here on there is no mark. More is better where it lies below the limit. */
  readonly none: number;
}

export interface Rubric {
  readonly name: string;
  readonly rows: readonly RubricRow[];
}

/** One measure, marked. */
export interface ScoreRow extends RubricRow {
  readonly value: number | null;
  /** 0 to 1; 0 where there is nothing to measure. */
  readonly mark: number;
  readonly isMet: boolean;
  /** Whether the task asks for it. */
  readonly counts: boolean;
}

/** A session, marked. */
export interface Score {
  /** Mean, by weight, of the marks of the measures that the task asks for, 0 to 1 (less where strokes are missing); NaN where they weigh nothing. */
  readonly total: number;
  readonly rows: readonly ScoreRow[];
  /** Every measure that the task asks for is within its limit. */
  readonly isPassed: boolean;
}

const DEGREE = Math.PI / 180;

/** One unit of a rubric's limits, SI: mm, percent, degrees or seconds. */
export const MEASURE_SIZE: Readonly<Record<Measure, number>> = {
  distance: 1e-3,
  speed: 0.01,
  angle: DEGREE,
  overlap: 0.01,
  trigger: 0.01,
  stops: 1,
  coverage: 0.01,
  evenness: 0.01,
  runs: 0.01,
  'dry-laps': 0.01,
  dust: 0.01,
  paint: 0.01,
  time: 0.01,
};

/** A rubric in SI from its words in a file. Limits were checked when it was read. */
export function rubricFromSpec({ name, rows }: RubricSpec): Rubric {
  return {
    name,
    rows: rows.map(({ measure, weight, limit, none }) => ({ measure, weight, limit: limit * MEASURE_SIZE[measure], none: none * MEASURE_SIZE[measure] })),
  };
}

/**
 * Marks a session. A measure has its full mark up to `limit`, none from `none` on, and falls evenly
 * in between; the total is the mean, by weight, over the measures that the task asks for. One of
 * those that has no value (nothing was sprayed that shows it) has no mark and is not met.
 * @param counts measures that the task asks for; one that the rubric leaves out counts as not met.
 */
export function scoreSession(figures: SessionFigures, rubric: Rubric, counts: readonly Measure[]): Score {
  const rows = rubric.rows.map((row): ScoreRow => {
    const value = figures[row.measure];
    return { ...row, value, mark: value === null ? 0 : markOf(value, row), isMet: value !== null && isWithin(value, row), counts: counts.includes(row.measure) };
  });
  const counted = rows.filter((row) => row.counts);
  const weights = counted.reduce((sum, { weight }) => sum + weight, 0);
  const total = counted.reduce((sum, { mark, weight }) => sum + mark * weight, 0) / weights;
  const isPassed = counts.every((measure) => counted.some((row) => row.measure === measure && row.isMet));
  return { total, rows, isPassed };
}

/** Rounding leaves a figure on its limit a little beyond it. */
const ROUNDING = 1e-9;

function isWithin(value: number, { limit, none }: RubricRow): boolean {
  return none > limit ? value <= limit + ROUNDING : value >= limit - ROUNDING;
}

function markOf(value: number, { limit, none }: RubricRow): number {
  return Math.min(1, Math.max(0, (none - value) / (none - limit)));
}
