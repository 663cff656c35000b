/**
 * A line without the points that lie within `near_m` of the last one kept; both ends stay. A
 * recorded stroke has a point each 10 ms, far more than a screen can show.
 */
export function thinLine(line: Float64Array, near_m: number): Float64Array {
  const kept: number[] = [];
  let x = NaN;
  let y = NaN;
  const last = line.length - 2;
  for (let i = 0; i <= last; i += 2) {
    const [nextX, nextY] = [line[i] as number, line[i + 1] as number];
    if (i !== 0 && i !== last && Math.hypot(nextX - x, nextY - y) < near_m) continue;
    kept.push(nextX, nextY);
    [x, y] = [nextX, nextY];
  }
  return Float64Array.from(kept);
}
