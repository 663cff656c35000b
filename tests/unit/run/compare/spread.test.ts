import { describe, expect, it } from 'vitest';
import { SIGMAS_95 } from '../../../../sim/base/special.ts';
import { halfInterval } from '../../../../sim/run/compare/spread.ts';

/** Standard deviation of f(z) for a normal z, by the trapezoid rule from -8 to 8. */
function deviation(f: (z: number) => number): number {
  const step = 0.001;
  const [sum, squares] = [1, 2].map((power) => {
    let total = 0;
    for (let z = -8; z <= 8; z += step) total += f(z) ** power * Math.exp(-0.5 * z * z) * step;
    return total / Math.sqrt(2 * Math.PI);
  }) as [number, number];
  return Math.sqrt(squares - sum * sum);
}

const ofThree = (f: (z: number) => number) => halfInterval(f(-SIGMAS_95), f(0), f(SIGMAS_95));

describe('the half interval of a figure', () => {
  it.each([
    ['a straight line', (z: number) => 3 - 2 * z],
    ['a parabola at its best', (z: number) => 1 + 0.5 * z * z],
    ['a parabola on its side', (z: number) => 1 + z - 0.3 * z * z],
  ])('is 1.96 standard deviations of %s', (_, f) => {
    expect(ofThree(f)).toBeCloseTo(SIGMAS_95 * deviation(f), 6);
  });

  it('is over-stated by a fifth at a corner, never under-stated', () => {
    const ratio = ofThree(Math.abs) / (SIGMAS_95 * deviation(Math.abs));
    expect(ratio).toBeCloseTo(Math.SQRT2 / SIGMAS_95 / Math.sqrt(1 - 2 / Math.PI), 4);
    expect(ratio).toBeGreaterThan(1.19);
    expect(ratio).toBeLessThan(1.2);
  });

  it('is nothing for a figure that does not change', () => {
    expect(halfInterval(5, 5, 5)).toBe(0);
  });
});
