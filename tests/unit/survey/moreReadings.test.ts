import { describe, expect, it } from 'vitest';
import { studentQuantile, studentShare } from '../../../sim/base/studentQuantile.ts';
import { nextAroundFailure } from '../../../sim/survey/aroundFailure.ts';
import { judgeReadings } from '../../../sim/survey/judgeReadings.ts';
import { moreReadings } from '../../../sim/survey/moreReadings.ts';
import { samplingNumbers } from '../../../sim/survey/samplingNumbers.ts';
import { combs, gauge, meanEighty, spotsAreas, spotsInMil } from '../../helpers/surveys.ts';

describe('studentShare', () => {
  it('undoes the quantile, and is the arc tangent at one degree of freedom', () => {
    for (const freedom of [1, 2, 9, 40, 999]) for (const share of [0.001, 0.2, 0.5, 0.975]) expect(studentShare(studentQuantile(share, freedom), freedom)).toBeCloseTo(share, 12);
    // Where the expansion begins it meets the sum.
    for (const freedom of [201, 500, 9999]) for (const share of [0.001, 0.2, 0.975, 0.9999]) expect(studentShare(studentQuantile(share, freedom), freedom)).toBeCloseTo(share, 10);
    expect(studentShare(1.7, 1)).toBeCloseTo(0.5 + Math.atan(1.7) / Math.PI, 14);
    expect([studentShare(-Infinity, 3), studentShare(Infinity, 3), studentShare(NaN, 3)]).toEqual([0, 1, NaN]);
  });
});

describe('moreReadings', () => {
  const judged = judgeReadings(meanEighty(), gauge(105, 98, 110, 120, 101));
  it('the number it names settles the mean, and one fewer does not', () => {
    const { more, wished_m, count } = moreReadings(judged, 4e-6);
    const half = (all: number) => (studentQuantile(0.975, all - 1) * judged.figures.deviation_m) / Math.sqrt(all);
    expect(wished_m).toBe(4e-6);
    expect(half(count + more!)).toBeLessThanOrEqual(4e-6);
    expect(half(count + more! - 1)).toBeGreaterThan(4e-6);
  });
  it('the chance is Student’s predictive law', () => {
    const { mean_m, deviation_m } = judged.figures;
    const t = (80e-6 - mean_m) / (deviation_m * Math.sqrt(1.2));
    expect(moreReadings(judged).chanceBelow).toBeCloseTo(studentShare(t, 4), 12);
    expect(moreReadings(judged).chanceAbove).toBeLessThan(0.01);
  });
  it('one reading tells nothing of scatter; like readings settle all', () => {
    expect(moreReadings(judgeReadings(meanEighty(), gauge(100)))).toMatchObject({ more: null, halfWidth_m: null, chanceBelow: null });
    expect(moreReadings(judgeReadings(meanEighty(), gauge(101, 101)))).toMatchObject({ more: 0, moreForLimit: 0, chanceBelow: 0 });
  });
  it('spots are counted where spots are judged; combs without an end are left out', () => {
    expect(moreReadings(judgeReadings(spotsAreas(2.5, 3), spotsInMil(2.5, 2.1, 2.8)))).toMatchObject({ of: 'spot', count: 3, least_m: expect.closeTo(50.8e-6, 12) as number });
    expect(moreReadings(judgeReadings(meanEighty(), combs(0.2, [100, 125], [100]))).count).toBe(1);
  });
  it('a mean at its limit is never parted from it', () => {
    expect(moreReadings(judgeReadings(meanEighty(), gauge(90, 110))).moreForLimit).toBe(Infinity);
  });
});

describe('samplingNumbers', () => {
  it('never asks for less on more area, by any rule and unit', () => {
    for (const rule of ['mean-80', 'spots-areas', 'ninety-ten', 'shop'] as const) {
      for (const unit of ['m2', 'ft2'] as const) {
        let before = 0;
        for (let area = 0.1; area < 2000; area *= 1.07) {
          const { readings } = samplingNumbers(rule, area, unit);
          expect(readings).toBeGreaterThanOrEqual(before);
          before = readings;
        }
      }
    }
  });
  it('refuses no area', () => {
    expect(() => samplingNumbers('mean-80', 0)).toThrow(/samplingNumbers: area = 0 m²/);
  });
});

describe('nextAroundFailure', () => {
  const box = [0, 0, 4, 3] as const;
  it('reads in eight directions, inside the box', () => {
    const places = nextAroundFailure([2, 1.5], box, 1.5);
    expect(places.map(({ direction }) => direction)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(places[2]!.at_m).toEqual([expect.closeTo(2, 12), expect.closeTo(3, 12)]);
    expect(nextAroundFailure([0, 0], box, 1.5).map(({ direction }) => direction)).toEqual([0, 1, 2]);
  });
  it('goes on until two in a row conform', () => {
    const at = (found: readonly boolean[]) => nextAroundFailure([0, 0], box, 1, [found]).find(({ direction }) => direction === 0);
    expect(at([true])).toMatchObject({ step: 2, at_m: [2, 0] });
    expect(at([true, false])).toMatchObject({ step: 3 });
    expect(at([false, true, true])).toBeUndefined();
    expect(at([false, false, false, false])).toBeUndefined();
  });
});
