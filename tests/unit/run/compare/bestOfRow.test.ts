import { describe, expect, it } from 'vitest';
import { bestOfRow, betterOf, ROW_NAMES } from '../../../../sim/run/compare/bestOfRow.ts';
import { COMPARED_WORDS } from '../../../../sim/report/comparedWords.ts';
import { testSetting } from '../testJob.ts';

const figure = (value: number, within = 0) => ({ value, within, isOutsideRange: false });

describe('the best of a row', () => {
  it('is the most, the least, or the nearest', () => {
    const three = [figure(1), figure(2), figure(4)];
    expect(bestOfRow('cv', three, 'more')).toEqual({ name: 'cv', best: [2], isTie: false });
    expect(bestOfRow('cv', three, 'less').best).toEqual([0]);
    expect(bestOfRow('cv', three, { nearest: 2.4 }).best).toEqual([1]);
    expect(bestOfRow('strokes', three, null).best).toEqual([]);
  });

  it('takes along what is within the root of the sum of squares, and nothing beyond', () => {
    expect(bestOfRow('wet_m', [figure(10, 3), figure(14.9, 4), figure(15.1, 4)], 'less').best).toEqual([0, 1]);
    expect(bestOfRow('wet_m', [figure(10, 3), figure(14.9, 4)], 'less').isTie).toBe(true);
  });

  it('does not tell apart what differs by less than the model itself is right to', () => {
    expect(bestOfRow('cv', [figure(1), figure(1.001)], 'more').best).toEqual([0, 1]);
    expect(bestOfRow('cv', [figure(1), figure(1.01)], 'more').best).toEqual([1]);
  });

  it('leaves out sides without a figure, and takes endless margins for the same', () => {
    expect(bestOfRow('cv', [null, figure(NaN), figure(3)], 'less').best).toEqual([2]);
    expect(bestOfRow('holdMargin_m', [figure(Infinity), figure(1, 5), figure(Infinity)], 'more').best).toEqual([0, 2]);
    expect(bestOfRow('cv', [null, null], 'less').best).toEqual([]);
  });

  it('has a row for every figure, and the target decides which film is judged', () => {
    expect([...ROW_NAMES].sort()).toEqual(Object.keys(COMPARED_WORDS).sort());
    const { target } = testSetting();
    expect(betterOf('wet_m', target)).toEqual({ nearest: target.thickness_m });
    expect(betterOf('dry_m', target)).toBeNull();
  });
});
