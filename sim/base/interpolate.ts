/**
 * Linear interpolation in a table of evenly spaced nodes; the ends are held outside.
 * @param table values at `start + i * step`, at least one. @returns NaN for a NaN place.
 */
export function interpolateEven(
  table: ArrayLike<number>,
  start: number,
  step: number,
  at: number,
): number {
  const last = table.length - 1;
  const place = (at - start) / step;
  if (place <= 0) return table[0] as number;
  if (place >= last) return table[last] as number;
  const i = Math.floor(place);
  const share = place - i;
  return (table[i] as number) * (1 - share) + (table[i + 1] as number) * share;
}
