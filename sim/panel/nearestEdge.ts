import type { Panel, Polygon } from './panel.ts';
import { contains } from './polygon.ts';

/** The nearest place on a panel's outline or holes. */
export interface NearestEdge {
  /** Positive where the place asked about is on the panel, negative in a hole or outside. */
  readonly distance_m: number;
  /** The hole whose edge it is, or -1 for the outline. */
  readonly hole: number;
  readonly at_m: readonly [number, number];
}

/**
 * The nearest edge of a panel to a place (x, y), m, by visiting every edge: cost grows with the
 * panel's corners.
 */
export function nearestEdge(panel: Panel, x: number, y: number): NearestEdge {
  let best = Infinity;
  let hole = -1;
  let at: readonly [number, number] = [NaN, NaN];
  let inside = contains(panel.outline, x, y);
  const visit = (ring: Polygon, index: number): void => {
    let ax = ring[ring.length - 2] as number;
    let ay = ring[ring.length - 1] as number;
    for (let i = 0; i < ring.length; i += 2) {
      const bx = ring[i] as number;
      const by = ring[i + 1] as number;
      const dx = bx - ax;
      const dy = by - ay;
      const share = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
      const px = ax + share * dx;
      const py = ay + share * dy;
      const squared = (x - px) * (x - px) + (y - py) * (y - py);
      if (squared < best) {
        best = squared;
        hole = index;
        at = [px, py];
      }
      ax = bx;
      ay = by;
    }
  };
  visit(panel.outline, -1);
  panel.holes.forEach((ring, index) => {
    visit(ring, index);
    if (contains(ring, x, y)) inside = false;
  });
  const distance = Math.sqrt(best);
  return { distance_m: inside ? distance : -distance, hole, at_m: at };
}
