import { describe, expect, it } from 'vitest';
import { MEASURES, MORE_IS_BETTER, type Measure } from '../../../sim/job/measures.ts';
import { USUAL_RUBRIC } from '../../../sim/job/rubric.ts';
import { rubricFromSpec, scoreSession, type Rubric, type RubricRow, type SessionFigures } from '../../../sim/verdict/score.ts';

const NONE = Object.fromEntries(MEASURES.map((measure) => [measure, null])) as Record<Measure, null>;

function figures(values: Partial<SessionFigures>): SessionFigures {
  return { ...NONE, ...values };
}

function rubricOf(...rows: RubricRow[]): Rubric {
  return { name: 'worked', rows };
}

const DISTANCE: RubricRow = { measure: 'distance', weight: 10, limit: 0.0125, none: 0.05 };
const COVERAGE: RubricRow = { measure: 'coverage', weight: 12, limit: 0.98, none: 0.7 };
const RUNS: RubricRow = { measure: 'runs', weight: 8, limit: 0, none: 0.02 };

/** Worked by hand: (none - value) / (none - limit), held to 0 to 1. Sums of a few doubles: right to 1e-12. */
const MARKS: readonly (readonly [string, RubricRow, number | null, number, boolean])[] = [
  ['well within its limit', DISTANCE, 0.004, 1, true],
  ['exactly on its limit', DISTANCE, 0.0125, 1, true],
  ['a rounding beyond its limit', DISTANCE, 0.0125 + 1e-12, 1 - 1e-12 / 0.0375, true],
  ['a micrometre beyond its limit', DISTANCE, 0.012501, 0.037499 / 0.0375, false],
  ['half way between limit and none', DISTANCE, 0.03125, 0.5, false],
  ['four fifths of the way', DISTANCE, 0.0425, 0.2, false],
  ['exactly where there is none', DISTANCE, 0.05, 0, false],
  ['beyond none', DISTANCE, 0.4, 0, false],
  ['without a value', DISTANCE, null, 0, false],
  ['more is better: above its limit', COVERAGE, 1, 1, true],
  ['more is better: exactly on its limit', COVERAGE, 0.98, 1, true],
  ['more is better: a thousandth below', COVERAGE, 0.979, 0.279 / 0.28, false],
  ['more is better: half way', COVERAGE, 0.84, 0.5, false],
  ['more is better: beyond none', COVERAGE, 0.2, 0, false],
  ['more is better: without a value', COVERAGE, null, 0, false],
  ['a limit of nought, met', RUNS, 0, 1, true],
  ['a limit of nought, a quarter of the way', RUNS, 0.005, 0.75, false],
];

describe('the mark of one measure', () => {
  it.each(MARKS)('%s', (_, row, value, mark, isMet) => {
    const { rows, total, isPassed } = scoreSession(figures({ [row.measure]: value }), rubricOf(row), [row.measure]);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ ...row, value, isMet, counts: true });
    expect(rows[0]!.mark).toBeCloseTo(mark, 12);
    expect(total).toBeCloseTo(mark, 12);
    expect(isPassed).toBe(isMet);
  });
});

describe('the total', () => {
  const SPEED: RubricRow = { measure: 'speed', weight: 0, limit: 0.15, none: 0.6 };
  const STOPS: RubricRow = { measure: 'stops', weight: 8, limit: 0.1, none: 1 };
  const rubric = rubricOf(DISTANCE, COVERAGE, STOPS, SPEED, RUNS);
  const seen = figures({ distance: 0.03125, coverage: 0.99, stops: 1.4, speed: 0.3, runs: 0.005 });

  it('is the mean by weight of what the task asks for: (10 × 0.5 + 12 × 1 + 8 × 0) / 30', () => {
    const score = scoreSession(seen, rubric, ['distance', 'coverage', 'stops']);
    expect(score.total).toBeCloseTo(17 / 30, 12);
    expect(score.isPassed).toBe(false);
    expect(score.rows.map(({ counts }) => counts)).toEqual([true, true, true, false, false]);
  });

  it('marks what the task does not ask for, and leaves it out of the total', () => {
    const score = scoreSession(seen, rubric, ['coverage']);
    expect(score).toMatchObject({ total: 1, isPassed: true });
    expect(score.rows.map(({ mark }) => Math.round(mark * 1e6) / 1e6)).toEqual([0.5, 1, 0, 0.666667, 0.75]);
  });

  it('leaves a measure of weight 0 out of the mean, yet asks for it', () => {
    const score = scoreSession(seen, rubric, ['distance', 'coverage', 'speed']);
    expect(score.total).toBeCloseTo(17 / 22, 12);
    expect(scoreSession(figures({ coverage: 1, speed: 0.3 }), rubric, ['coverage', 'speed'])).toMatchObject({ total: 1, isPassed: false });
    expect(scoreSession(figures({ coverage: 1, speed: 0.1 }), rubric, ['coverage', 'speed'])).toMatchObject({ total: 1, isPassed: true });
  });

  it('is no number where what is asked for weighs nothing', () => {
    expect(scoreSession(seen, rubric, ['speed']).total).toBeNaN();
    expect(scoreSession(seen, rubric, []).total).toBeNaN();
  });

  it('gives no mark for a counted measure without a value', () => {
    const score = scoreSession(figures({ coverage: 1 }), rubric, ['distance', 'coverage']);
    expect(score.total).toBeCloseTo(12 / 22, 12);
    expect(score.isPassed).toBe(false);
  });

  it('is not passed where the rubric leaves out what counts, however good the rest', () => {
    const score = scoreSession(figures({ coverage: 1, angle: 0 }), rubric, ['coverage', 'angle']);
    expect(score).toMatchObject({ total: 1, isPassed: false });
    expect(score.rows.some(({ measure }) => measure === 'angle')).toBe(false);
  });
});

describe('a rubric from a file', () => {
  it('is in SI: mm, per cent, degrees and seconds become m, shares, rad and s', () => {
    const { rows } = rubricFromSpec(USUAL_RUBRIC);
    const limits = Object.fromEntries(rows.map(({ measure, limit, none }) => [measure, [limit, none]]));
    expect(limits).toMatchObject({ distance: [0.0125, 0.05], stops: [0.1, 1], runs: [0, 0.02], time: [1, 4] });
    expect(limits['angle']![0]).toBeCloseTo(Math.PI / 18, 15);
    expect(limits['coverage']![0]).toBeCloseTo(0.98, 15);
  });

  it('has its more-is-better rows the right way round, every one of them', () => {
    for (const { measure, limit, none } of rubricFromSpec(USUAL_RUBRIC).rows) {
      expect(limit > none, measure).toBe(MORE_IS_BETTER.includes(measure));
    }
  });
});
