import type { ShapeSpec } from '../../sim/index.ts';

/** How an outline or a hole can be stated. */
export type ShapeKind = 'rectangle' | 'points' | 'circle' | 'path';

export function shapeKind(shape: ShapeSpec): ShapeKind {
  if ('rectangle_mm' in shape) return 'rectangle';
  if ('points_mm' in shape) return 'points';
  return 'circle_mm' in shape ? 'circle' : 'path';
}

/** A shape of another kind about as large as the one it replaces. */
export function newShape(kind: ShapeKind, width_mm: number, height_mm: number): ShapeSpec {
  const [w, h] = [Math.max(1, Math.round(width_mm)), Math.max(1, Math.round(height_mm))];
  switch (kind) {
    case 'rectangle':
      return { rectangle_mm: [w, h] };
    case 'points':
      return { points_mm: [[0, 0], [w, 0], [w, h], [0, h]] };
    case 'circle':
      return { circle_mm: [w / 2, h / 2, Math.min(w, h)] };
    case 'path':
      return { path_mm: `M 0 0 H ${w} V ${h} H 0 Z` };
  }
}

/** Corners as text, one a line: `x, y`. */
export function pointsText(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y]) => `${x}, ${y}`).join('\n');
}

/** Corners from text, or which line is wrong and why. Empty lines are passed over. */
export function readPoints(text: string): { readonly points: [number, number][] } | { readonly problem: string } {
  const points: [number, number][] = [];
  for (const [i, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue;
    const parts = line.trim().split(/[\s,;]+/);
    const [x, y] = parts.map(Number);
    if (parts.length !== 2 || x === undefined || y === undefined || !Number.isFinite(x) || !Number.isFinite(y)) {
      return { problem: `Line ${i + 1}, "${line.trim()}", is not two numbers; give x, y in mm` };
    }
    points.push([x, y]);
  }
  if (points.length < 3) return { problem: `${points.length} corners make no outline; give at least 3, one a line` };
  return { points };
}
