/** Evenness at one overlap. */
export interface OverlapPoint {
  readonly overlapFraction: number;
  readonly cv: number;
}

/** SVG path of variation against overlap. @param x, y from a share to a place in the picture. */
export function overlapPath(points: readonly OverlapPoint[], x: (overlap: number) => number, y: (cv: number) => number): string {
  return points.map(({ overlapFraction, cv }, i) => `${i === 0 ? 'M' : 'L'}${x(overlapFraction).toFixed(1)},${y(cv).toFixed(1)}`).join('');
}

/** Top of the scale: what the film varies by at a quarter of overlap or more, so that bare lanes do not press the rest flat. */
export function overlapTop(points: readonly OverlapPoint[], limit: number): number {
  const most = Math.max(limit * 2, ...points.filter(({ overlapFraction }) => overlapFraction >= 0.25).map(({ cv }) => cv));
  return Math.ceil(most * 20) / 20;
}
