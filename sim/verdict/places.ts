import type { Grid } from '../base/grid.ts';
import type { Zone } from './verdict.ts';
import { centreOf } from './zones.ts';

/** At most this many cells of a zone are weighed when its places are spread. */
const WEIGHED_CELLS = 512;

/**
 * A handful of places that stand for a zone: its worst place first, then each the farthest from
 * those before it, among an even sample of the zone's cells.
 * @param most at least 1. @returns x0, y0, x1, y1, … m; fewer places where the zone has fewer cells.
 */
export function representativePlaces(zone: Zone, grid: Grid, most: number): Float64Array {
  const { columns, cellSize_m } = grid;
  const step = Math.max(1, Math.floor(zone.cells.length / WEIGHED_CELLS));
  const sample: (readonly [number, number])[] = [];
  for (let i = Math.floor(step / 2); i < zone.cells.length; i += step) {
    sample.push(centreOf(zone.cells[i] as number, columns, cellSize_m));
  }
  const chosen: (readonly [number, number])[] = [zone.at_m];
  const apart = sample.map((place) => between(place, zone.at_m));
  while (chosen.length < most) {
    const far = apart.indexOf(Math.max(...apart));
    if (far < 0 || !((apart[far] as number) > 0)) break;
    const place = sample[far] as readonly [number, number];
    chosen.push(place);
    sample.forEach((other, i) => {
      apart[i] = Math.min(apart[i] as number, between(other, place));
    });
  }
  return Float64Array.from(chosen.flat());
}

function between(a: readonly [number, number], b: readonly [number, number]): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
