import { describe, expect, it } from 'vitest';
import { MEASURES } from '../../../sim/job/measures.ts';
import { MEASURE_WORDS, shownMeasure } from '../../../sim/report/measureWords.ts';
import { rubricFromSpec } from '../../../sim/verdict/score.ts';

describe('shownMeasure', () => {
  it.each([
    ['distance', 0.012, '12 mm', '0.472 in'],
    ['speed', 0.15, '15 %', '15 %'],
    ['angle', (7 * Math.PI) / 180, '7°', '7°'],
    ['stops', 0.7, '0.7 s', '0.7 s'],
    ['time', 1.5, '150 %', '150 %'],
    ['runs', 0, '0 %', '0 %'],
  ] as const)('%s', (measure, value, metric, us) => {
    expect(shownMeasure(measure, value, 'metric')).toBe(metric);
    expect(shownMeasure(measure, value, 'us')).toBe(us);
  });

  it('says that there was nothing to measure', () => {
    expect(shownMeasure('overlap', null, 'metric')).toBe('not shown');
  });
});

describe('MEASURE_WORDS', () => {
  it('names the unit that a rubric is marked in', () => {
    const sizes = { mm: 1e-3, percent: 0.01, deg: Math.PI / 180, s: 1 };
    const rows = MEASURES.map((measure) => ({ measure, weight: 1, limit: 1, none: 2 }));
    for (const { measure, limit } of rubricFromSpec({ rubricVersion: 1, name: '', rows }).rows) {
      expect(limit, measure).toBeCloseTo(sizes[MEASURE_WORDS[measure].unit], 15);
    }
  });

  it('calls no two measures by one title', () => {
    expect(new Set(MEASURES.map((measure) => MEASURE_WORDS[measure].title)).size).toBe(MEASURES.length);
  });
});
