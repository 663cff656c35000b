import { describe, expect, it } from 'vitest';
import { fitBox } from '../../../src/app/fitBox.ts';

const line = (...places: number[]): Float64Array => Float64Array.from(places);

describe('fitBox', () => {
  it('is the panel where no stroke leaves it', () => {
    expect(fitBox(0.6, 0.4, [line(0, 0.1, 0.6, 0.1), line()])).toEqual([0, 0, 0.6, 0.4]);
  });

  it('takes in both ends of every stroke, outward to a twentieth of the side', () => {
    const [left, bottom, right, top] = fitBox(1, 0.5, [line(-0.12, 0.2, 1.05, 0.2), line(0.3, -0.01, 0.3, 0.52)]);
    expect(left).toBeCloseTo(-0.15, 12);
    expect(bottom).toBeCloseTo(-0.025, 12);
    expect(right).toBeCloseTo(1.05, 12);
    expect(top).toBeCloseTo(0.525, 12);
  });

  it('follows a stray stroke only so far', () => {
    expect(fitBox(1, 1, [line(-40, 0.5, 90, 0.5)])).toEqual([-0.4, 0, 1.4, 1]);
  });
});
