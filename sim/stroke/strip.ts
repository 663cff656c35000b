import type { Panel, Polygon } from '../panel/panel.ts';

/** From and to along a line, m. */
export type Span = readonly [from_m: number, to_m: number];

/**
 * A panel turned so that strokes run along `s` and step along `c` (left of the travel):
 * s = x cos d + y sin d, c = -x sin d + y cos d.
 */
export interface TurnedPanel {
  /** Outline and holes, each corner as s, c. */
  readonly rings: readonly Float64Array[];
  readonly lowest_m: number;
  readonly highest_m: number;
}

/** Turns a panel's outline and holes into a stroke's frame. @param direction_rad of the strokes. */
export function turnPanel(panel: Panel, direction_rad: number): TurnedPanel {
  const cos = Math.cos(direction_rad);
  const sin = Math.sin(direction_rad);
  const turn = (ring: Polygon) => {
    const turned = new Float64Array(ring.length);
    for (let i = 0; i < ring.length; i += 2) {
      const x = ring[i] as number;
      const y = ring[i + 1] as number;
      turned[i] = x * cos + y * sin;
      turned[i + 1] = -x * sin + y * cos;
    }
    return turned;
  };
  const outline = turn(panel.outline);
  let lowest_m = Infinity;
  let highest_m = -Infinity;
  for (let i = 1; i < outline.length; i += 2) {
    lowest_m = Math.min(lowest_m, outline[i] as number);
    highest_m = Math.max(highest_m, outline[i] as number);
  }
  return { rings: [outline, ...panel.holes.map(turn)], lowest_m, highest_m };
}

/**
 * Where along `s` any part of the strip `low < c < high` lies on the panel: rising, apart. A gap
 * between two spans is a length over which the whole strip is off the panel. Exact for polygons.
 * Cost: corners · log corners, plus corners for each span.
 */
export function stripSpans(turned: TurnedPanel, low_m: number, high_m: number): Span[] {
  const touched = touchedSpans(turned, low_m, high_m);
  const spans: [number, number][] = [];
  for (const [from, to] of touched) {
    const last = spans.at(-1);
    if (last !== undefined && from <= last[1]) last[1] = Math.max(last[1], to);
    else if (last !== undefined && isInside(turned, (last[1] + from) / 2, (low_m + high_m) / 2)) last[1] = to;
    else spans.push([from, to]);
  }
  return spans;
}

/** The edges' shadows on `s`, each edge cut to the strip, sorted by where they begin. */
function touchedSpans(turned: TurnedPanel, low_m: number, high_m: number): Span[] {
  const touched: Span[] = [];
  for (const ring of turned.rings) {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      const s0 = ring[i] as number;
      const c0 = ring[i + 1] as number;
      const s1 = ring[j] as number;
      const c1 = ring[j + 1] as number;
      if (Math.max(c0, c1) <= low_m || Math.min(c0, c1) >= high_m) continue;
      const sAt = (c: number) => (c1 === c0 ? s0 : s0 + ((s1 - s0) * (c - c0)) / (c1 - c0));
      const a = c0 < low_m ? sAt(low_m) : c0 > high_m ? sAt(high_m) : s0;
      const b = c1 < low_m ? sAt(low_m) : c1 > high_m ? sAt(high_m) : s1;
      touched.push([Math.min(a, b), Math.max(a, b)]);
    }
  }
  return touched.sort((a, b) => a[0] - b[0]);
}

/** Even-odd rule over all rings: inside the outline and outside the holes. */
function isInside(turned: TurnedPanel, s: number, c: number): boolean {
  let inside = false;
  for (const ring of turned.rings) {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      const c0 = ring[i + 1] as number;
      const c1 = ring[j + 1] as number;
      if (c0 > c === c1 > c) continue;
      const s0 = ring[i] as number;
      const s1 = ring[j] as number;
      if (s < s0 + ((s1 - s0) * (c - c0)) / (c1 - c0)) inside = !inside;
    }
  }
  return inside;
}
