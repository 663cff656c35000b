import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CrosscoatError } from '../../sim/base/errors.ts';
import { findCrossing } from '../../sim/panel/crossings.ts';
import { nearestEdge } from '../../sim/panel/nearestEdge.ts';
import { contains } from '../../sim/panel/polygon.ts';
import { rasterisePanel } from '../../sim/panel/rasterisePanel.ts';
import { panelOf } from '../unit/panel/specs.ts';

/** Star-shaped outlines: corners at rising angles round a middle never cross. */
const stars = fc
  .array(fc.double({ min: 50, max: 300, noNaN: true }), { minLength: 3, maxLength: 40 })
  .map((radii) => radii.map((radius, i): [number, number] => [radius * Math.cos((2 * Math.PI * i) / radii.length), radius * Math.sin((2 * Math.PI * i) / radii.length)]));

/** Any corners on a coarse lattice, so that touching, overlap and repeats are common. */
const scribbles = fc.array(fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 6 })), { minLength: 3, maxLength: 9 });

/** Whether two closed segments share a place, by exact integer turns; written apart from the code under test. */
function segmentsMeet(a: number[], b: number[], c: number[], d: number[]): boolean {
  const turn = (p: number[], q: number[], r: number[]): number => Math.sign((q[0]! - p[0]!) * (r[1]! - p[1]!) - (q[1]! - p[1]!) * (r[0]! - p[0]!));
  const between = (p: number[], q: number[], r: number[]): boolean =>
    turn(p, q, r) === 0 && Math.min(p[0]!, q[0]!) <= r[0]! && r[0]! <= Math.max(p[0]!, q[0]!) && Math.min(p[1]!, q[1]!) <= r[1]! && r[1]! <= Math.max(p[1]!, q[1]!);
  const proper = turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
  return proper || between(a, b, c) || between(a, b, d) || between(c, d, a) || between(c, d, b);
}

/** All pairs, no sweep: whether a ring touches itself beyond its neighbours' shared corners. */
function touchesItself(points: number[][]): boolean {
  const n = points.length;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const [a, b, c, d] = [points[i]!, points[(i + 1) % n]!, points[j]!, points[(j + 1) % n]!];
      if (j === i + 1 || (i === 0 && j === n - 1)) {
        const [shared, before, after] = j === i + 1 ? [b, a, d] : [a, b, c];
        const ahead = (before[0]! - shared[0]!) * (after[0]! - shared[0]!) + (before[1]! - shared[1]!) * (after[1]! - shared[1]!);
        const line = (before[0]! - shared[0]!) * (after[1]! - shared[1]!) - (before[1]! - shared[1]!) * (after[0]! - shared[0]!);
        if (line === 0 && ahead > 0) return true;
      } else if (segmentsMeet(a, b, c, d)) return true;
    }
  }
  return false;
}

describe('makePanel', () => {
  it('covers exactly the outline\'s area, with shares from 0 to 1', () => {
    fc.assert(
      fc.property(stars, fc.double({ min: 0.001, max: 0.01, noNaN: true }), (points, cell_m) => {
        const panel = panelOf({ points_mm: points });
        const { cover, covered_m2 } = rasterisePanel(panel, cell_m);
        // A sliver narrower than a cell keeps its relative error only as far as dropped shares allow.
        expect(Math.abs(covered_m2 / panel.area_m2 - 1)).toBeLessThan(1e-6);
        return cover.every((share) => share >= 0 && share <= 1);
      }),
      { numRuns: 100 },
    );
  });

  it('makes a panel or refuses with an error of its own, whatever the corners', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.double({ min: -1e5, max: 1e5, noNaN: true }), fc.double({ min: -1e5, max: 1e5, noNaN: true })), { minLength: 3, maxLength: 12 }), (points) => {
        try {
          return panelOf({ points_mm: points }).area_m2 > 0;
        } catch (error) {
          return error instanceof CrosscoatError && error.code !== 'internal';
        }
      }),
      { numRuns: 500 },
    );
  });

  it('refuses or reads any path text with an error of its own', () => {
    const pathText = fc.array(fc.constantFrom('M', 'L', 'm', 'l', 'H', 'v', 'C', 's', 'Q', 't', 'A', 'Z', 'z', ' ', ',', '0', '1', '10', '-5', '.5', '1e3', 'x')).map((parts) => parts.join(' '));
    fc.assert(
      fc.property(pathText, (path_mm) => {
        try {
          return panelOf({ path_mm }).area_m2 > 0;
        } catch (error) {
          return error instanceof CrosscoatError && error.code !== 'internal';
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('findCrossing', () => {
  it('agrees with a comparison of all pairs in whole numbers', () => {
    fc.assert(
      fc.property(scribbles, (points) => {
        const distinct = points.filter((p, i) => {
          const before = points[(i + points.length - 1) % points.length]!;
          return p[0] !== before[0] || p[1] !== before[1];
        });
        fc.pre(distinct.length >= 3);
        return (findCrossing([Float64Array.from(distinct.flat())]) !== null) === touchesItself(distinct);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('nearestEdge', () => {
  it('gives the distance to the place it names, with the sign of inside', () => {
    fc.assert(
      fc.property(stars, fc.double({ min: -0.1, max: 0.7, noNaN: true }), fc.double({ min: -0.1, max: 0.7, noNaN: true }), (points, x, y) => {
        const panel = panelOf({ points_mm: points });
        const { distance_m, at_m } = nearestEdge(panel, x, y);
        expect(Math.abs(distance_m)).toBeCloseTo(Math.hypot(x - at_m[0], y - at_m[1]), 12);
        return distance_m === 0 || distance_m > 0 === contains(panel.outline, x, y);
      }),
      { numRuns: 200 },
    );
  });
});
