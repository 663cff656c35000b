import { describe, expect, it } from 'vitest';
import { nearestEdge } from '../../../sim/panel/nearestEdge.ts';
import { panelOf } from './specs.ts';

const panel = panelOf({ rectangle_mm: [600, 400] }, [{ points_mm: [[200, 100], [300, 100], [300, 200], [200, 200]] }]);

describe('nearestEdge', () => {
  it.each([
    ['inside, by the left edge', 0.05, 0.3, 0.05, -1, [0, 0.3]],
    ['outside a corner', -0.03, -0.04, -0.05, -1, [0, 0]],
    ['outside the right edge', 0.7, 0.2, -0.1, -1, [0.6, 0.2]],
    ['in the hole', 0.21, 0.15, -0.01, 0, [0.2, 0.15]],
    ['on the panel, by the hole', 0.32, 0.15, 0.02, 0, [0.3, 0.15]],
    ['by a corner of the hole', 0.303, 0.204, 0.005, 0, [0.3, 0.2]],
  ] as const)('%s', (_, x, y, distance, hole, at) => {
    const nearest = nearestEdge(panel, x, y);
    expect(nearest.distance_m).toBeCloseTo(distance, 12);
    expect(nearest.hole).toBe(hole);
    expect(nearest.at_m[0]).toBeCloseTo(at[0], 12);
    expect(nearest.at_m[1]).toBeCloseTo(at[1], 12);
  });
});
