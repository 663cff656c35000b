import { describe, expect, it } from 'vitest';
import { roundLength, rulerTicks, tickText } from '../../../src/canvas/ticks.ts';

describe('ruler ticks', () => {
  it('labels round values and divides them evenly', () => {
    const { labelled, small } = rulerTicks(-130, 2530, 1280, 95);
    expect(labelled[0]).toBe(0);
    expect(labelled[1]).toBe(200);
    for (const value of labelled) expect(small).toContain(value);
    expect(small.length).toBeGreaterThan(3 * labelled.length);
  });

  it('writes values without rounding noise and with a minus sign', () => {
    expect(tickText(0.1 + 0.2)).toBe('0.3');
    expect(tickText(-50)).toBe('−50');
  });

  it('takes 1, 2 or 5 times a power of ten for the scale bar', () => {
    expect([130, 60, 49, 2.1, 1.9, 0.07].map(roundLength)).toEqual([100, 50, 20, 2, 1, 0.05]);
  });
});
