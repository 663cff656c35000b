import type { Polygon } from './panel.ts';

/** Two edges that meet where they should not. Edges count from 0: edge i runs from corner i to the next. */
export interface Crossing {
  readonly ringA: number;
  readonly edgeA: number;
  readonly ringB: number;
  readonly edgeB: number;
  readonly at: readonly [x: number, y: number];
}

/** All edges of all rings, one array a column, sorted along a sweep line. */
interface Edges {
  readonly ring: Int32Array;
  readonly edge: Int32Array;
  readonly x0: Float64Array;
  readonly y0: Float64Array;
  readonly x1: Float64Array;
  readonly y1: Float64Array;
}

/** Sweep directions tried: the one along which edges are shortest keeps the fewest edges in play. */
const DIRECTIONS = [
  [1, 0],
  [0, 1],
  [Math.SQRT1_2, Math.SQRT1_2],
  [Math.SQRT1_2, -Math.SQRT1_2],
] as const;

/**
 * The first place found where edges of one ring, or of two, cross or touch; null where none do.
 * Neighbouring edges share their corner and count only when they fold back on each other.
 *
 * Edges sorted along a sweep line are compared with those whose extents overlap: n log n for
 * drawn outlines, n² at worst (20 000 edges that all overlap: measured in the tests).
 */
export function findCrossing(rings: readonly Polygon[]): Crossing | null {
  const edges = collectEdges(rings);
  const count = edges.x0.length;
  const [dx, dy] = bestDirection(edges);
  const low = new Float64Array(count);
  const high = new Float64Array(count);
  const sideLow = new Float64Array(count);
  const sideHigh = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const x0 = edges.x0[i] as number;
    const y0 = edges.y0[i] as number;
    const x1 = edges.x1[i] as number;
    const y1 = edges.y1[i] as number;
    const a = x0 * dx + y0 * dy;
    const b = x1 * dx + y1 * dy;
    const c = x0 * dy - y0 * dx;
    const d = x1 * dy - y1 * dx;
    // Rounding of a turned coordinate must not part edges that touch.
    const slack = 1e-12 * (Math.abs(a) + Math.abs(b) + Math.abs(c) + Math.abs(d));
    low[i] = Math.min(a, b) - slack;
    high[i] = Math.max(a, b) + slack;
    sideLow[i] = Math.min(c, d) - slack;
    sideHigh[i] = Math.max(c, d) + slack;
  }
  const order = Uint32Array.from({ length: count }, (_, i) => i).sort((i, j) => (low[i] as number) - (low[j] as number));
  for (let m = 0; m < count; m++) {
    const i = order[m] as number;
    const end = high[i] as number;
    const left = sideLow[i] as number;
    const right = sideHigh[i] as number;
    for (let n = m + 1; n < count; n++) {
      const j = order[n] as number;
      if ((low[j] as number) > end) break;
      if ((sideLow[j] as number) > right || (sideHigh[j] as number) < left) continue;
      const at = meet(edges, rings, i, j);
      if (at !== null) return crossingOf(edges, i, j, at);
    }
  }
  return null;
}

function crossingOf(edges: Edges, i: number, j: number, at: readonly [number, number]): Crossing {
  const ringI = edges.ring[i] as number;
  const ringJ = edges.ring[j] as number;
  const edgeI = edges.edge[i] as number;
  const edgeJ = edges.edge[j] as number;
  const inOrder = ringI < ringJ || (ringI === ringJ && edgeI < edgeJ);
  return inOrder
    ? { ringA: ringI, edgeA: edgeI, ringB: ringJ, edgeB: edgeJ, at }
    : { ringA: ringJ, edgeA: edgeJ, ringB: ringI, edgeB: edgeI, at };
}

function collectEdges(rings: readonly Polygon[]): Edges {
  const count = rings.reduce((sum, ring) => sum + ring.length / 2, 0);
  const edges: Edges = {
    ring: new Int32Array(count),
    edge: new Int32Array(count),
    x0: new Float64Array(count),
    y0: new Float64Array(count),
    x1: new Float64Array(count),
    y1: new Float64Array(count),
  };
  let i = 0;
  rings.forEach((ring, r) => {
    for (let k = 0; k < ring.length; k += 2, i++) {
      const next = k + 2 < ring.length ? k + 2 : 0;
      edges.ring[i] = r;
      edges.edge[i] = k / 2;
      edges.x0[i] = ring[k] as number;
      edges.y0[i] = ring[k + 1] as number;
      edges.x1[i] = ring[next] as number;
      edges.y1[i] = ring[next + 1] as number;
    }
  });
  return edges;
}

function bestDirection(edges: Edges): readonly [number, number] {
  const extents = DIRECTIONS.map(([dx, dy]) => {
    let sum = 0;
    for (let i = 0; i < edges.x0.length; i++) {
      const along = ((edges.x1[i] as number) - (edges.x0[i] as number)) * dx + ((edges.y1[i] as number) - (edges.y0[i] as number)) * dy;
      sum += Math.abs(along);
    }
    return sum;
  });
  return DIRECTIONS[extents.indexOf(Math.min(...extents))] as readonly [number, number];
}

/** Where edges i and j meet, but for the corner that neighbours share; null where they do not. */
function meet(edges: Edges, rings: readonly Polygon[], i: number, j: number): readonly [number, number] | null {
  const ax = edges.x0[i] as number;
  const ay = edges.y0[i] as number;
  const bx = edges.x1[i] as number;
  const by = edges.y1[i] as number;
  const cx = edges.x0[j] as number;
  const cy = edges.y0[j] as number;
  const dx = edges.x1[j] as number;
  const dy = edges.y1[j] as number;
  const c = turn(ax, ay, bx, by, cx, cy);
  const d = turn(ax, ay, bx, by, dx, dy);
  if (c * d > 0) return null;
  const a = turn(cx, cy, dx, dy, ax, ay);
  const b = turn(cx, cy, dx, dy, bx, by);
  if (a * b > 0) return null;
  const shared = sharedCorner(edges, rings, i, j);
  if (shared !== null) return foldsBack(edges, i, j, shared, c === 0 && d === 0) ? shared : null;
  if (c === 0 && d === 0) return overlapOnLine(ax, ay, bx, by, cx, cy, dx, dy);
  const share = a / (a - b);
  return [ax + share * (bx - ax), ay + share * (by - ay)];
}

/** Twice the signed area of a triangle; 0 where the three places lie on a line. */
function turn(ax: number, ay: number, bx: number, by: number, px: number, py: number): number {
  return (bx - ax) * (py - ay) - (by - ay) * (px - ax);
}

/** The corner that two neighbouring edges of one ring share, or null. */
function sharedCorner(edges: Edges, rings: readonly Polygon[], i: number, j: number): readonly [number, number] | null {
  if (edges.ring[i] !== edges.ring[j]) return null;
  const count = (rings[edges.ring[i] as number] as Polygon).length / 2;
  const step = ((edges.edge[j] as number) - (edges.edge[i] as number) + count) % count;
  if (step === 1) return [edges.x1[i] as number, edges.y1[i] as number];
  if (step === count - 1) return [edges.x0[i] as number, edges.y0[i] as number];
  return null;
}

/** Whether two neighbours on one line run back over each other. */
function foldsBack(edges: Edges, i: number, j: number, shared: readonly [number, number], onLine: boolean): boolean {
  if (!onLine) return false;
  const [sx, sy] = shared;
  const ux = (edges.x0[i] as number) + (edges.x1[i] as number) - 2 * sx;
  const uy = (edges.y0[i] as number) + (edges.y1[i] as number) - 2 * sy;
  const vx = (edges.x0[j] as number) + (edges.x1[j] as number) - 2 * sx;
  const vy = (edges.y0[j] as number) + (edges.y1[j] as number) - 2 * sy;
  return ux * vx + uy * vy > 0;
}

/** A place that two edges on one line share, or null where they lie apart. */
function overlapOnLine(
  ax: number, ay: number, bx: number, by: number, cx: number, cy: number, dx: number, dy: number,
): readonly [number, number] | null {
  const within = (px: number, py: number, qx: number, qy: number, rx: number, ry: number): boolean =>
    Math.min(qx, rx) <= px && px <= Math.max(qx, rx) && Math.min(qy, ry) <= py && py <= Math.max(qy, ry);
  if (within(cx, cy, ax, ay, bx, by)) return [cx, cy];
  if (within(dx, dy, ax, ay, bx, by)) return [dx, dy];
  if (within(ax, ay, cx, cy, dx, dy)) return [ax, ay];
  return null;
}
