import { describe, expect, it } from 'vitest';
import { cornerStep, firstCorners, withCorner } from '../../../../src/app/setups/corners.ts';

describe('the corners on a photograph', () => {
  it('begin within it, counter-clockwise from the lower left as seen', () => {
    expect(firstCorners(1000, 500)).toEqual([[100, 450], [900, 450], [900, 50], [100, 50]]);
  });

  it('move one at a time and stay within it', () => {
    const corners = firstCorners(1000, 500);
    expect(withCorner(corners, 2, [930.5, -7], 1000, 500)).toEqual([[100, 450], [900, 450], [930.5, 0], [100, 50]]);
    expect(withCorner(corners, 0, [1e6, 1e6], 1000, 500)[0]).toEqual([1000, 500]);
  });

  it('go by one pixel with an arrow, by ten with Shift, and by nothing else', () => {
    expect(cornerStep('ArrowUp', false)).toEqual([0, -1]);
    expect(cornerStep('ArrowRight', true)).toEqual([10, 0]);
    expect([cornerStep('Enter', false), cornerStep('a', true)]).toEqual([null, null]);
  });
});
