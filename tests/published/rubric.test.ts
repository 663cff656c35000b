import { describe } from 'vitest';
import { MEASURES, type Measure } from '../../sim/job/measures.ts';
import { USUAL_RUBRIC } from '../../sim/job/rubric.ts';
import { drillById } from '../../sim/run/drills/drills.ts';
import { rubricFromSpec, scoreSession, type SessionFigures } from '../../sim/verdict/score.ts';
import { bisect } from '../helpers/overlapTheory.ts';
import { testPublished, type PublishedRow } from '../helpers/publishedRow.ts';

const COMMON = 'common practice of training courses, from memory; no one source';
const WHY = 'the mark itself is asked: the search stops at 1e-12, and a figure on its limit may round 1e-9 beyond it';
const TOLERANCE = 1e-6;
const DEGREE = Math.PI / 180;

const RUBRIC = rubricFromSpec(USUAL_RUBRIC);
const NOTHING = Object.fromEntries(MEASURES.map((measure) => [measure, null])) as Record<Measure, null>;

/** The figure at which the usual rubric stops passing a task that counts one measure alone, SI. */
function lastPassing(measure: Measure, high: number): number {
  const passes = (value: number): boolean => {
    const figures: SessionFigures = { ...NOTHING, [measure]: value };
    return scoreSession(figures, RUBRIC, [measure]).isPassed;
  };
  const isFirst = passes(0);
  return bisect((value) => (passes(value) === isFirst ? -1 : 1), -1e-3, high);
}

/** What the half-overlap drill means, %. */
function plannedOverlap_percent(): number {
  const drill = drillById('half-overlap');
  return drill.job().coats.find(({ id }) => id === drill.coat)?.plan.overlap_percent ?? NaN;
}

const rows: PublishedRow[] = [
  { source: `${COMMON}; ± 25 mm taken as two standard deviations`, quantity: 'gun distance, two standard deviations, mm', expected: 25, ours: () => 2e3 * lastPassing('distance', 0.2), tolerance: 2e3 * 2e-9, why: WHY },
  { source: COMMON, quantity: 'gun off square, degrees', expected: 10, ours: () => lastPassing('angle', 1) / DEGREE, tolerance: TOLERANCE, why: WHY },
  { source: COMMON, quantity: 'speed off what was meant, %', expected: 15, ours: () => 100 * lastPassing('speed', 1), tolerance: TOLERANCE, why: WHY },
  { source: `${COMMON}; half overlap: FAA AC 43.13-1B (1998, change 1 2001), paragraph 2-20`, quantity: 'overlap, least, %', expected: 40, ours: () => plannedOverlap_percent() - 100 * lastPassing('overlap', 1), tolerance: TOLERANCE, why: WHY },
  { source: COMMON, quantity: 'overlap, most, %', expected: 60, ours: () => plannedOverlap_percent() + 100 * lastPassing('overlap', 1), tolerance: TOLERANCE, why: WHY },
  { source: COMMON, quantity: 'coverage, least, %', expected: 98, ours: () => 100 * lastPassing('coverage', 1), tolerance: TOLERANCE, why: WHY },
  { source: COMMON, quantity: 'evenness, deviation over mean, %', expected: 15, ours: () => 100 * lastPassing('evenness', 1), tolerance: TOLERANCE, why: WHY },
  { source: COMMON, quantity: 'panel that has run, %', expected: 0, ours: () => 100 * lastPassing('runs', 1), tolerance: TOLERANCE, why: WHY },
];

describe('the usual rubric beside the figures that it comes from', () => {
  testPublished(rows);
});
