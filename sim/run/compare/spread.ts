import { SIGMAS_95 } from '../../base/special.ts';

/**
 * Half of the 95 % interval that one uncertain number gives to a figure, from the figure at the
 * number less its own half interval, at the number, and at the number plus it.
 *
 * A parabola through the three values, of a normal z: f(z) = f0 + b z + a z² has the variance
 * b² + 2 a² (moments of the normal distribution: E z² = 1, E z⁴ = 3). So a figure at its best in the
 * middle, where a straight line would say that it is exact, has an interval too. Over-stated by about a
 * fifth where the figure has a corner at the middle: |z| has the deviation √(1 - 2/π) = 0.60, its
 * parabola √2/1.96 = 0.72.
 */
export function halfInterval(low: number, middle: number, high: number): number {
  const slope = (high - low) / 2;
  const bend = (high + low - 2 * middle) / (Math.SQRT2 * SIGMAS_95);
  return Math.hypot(slope, bend);
}
