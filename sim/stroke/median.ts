/** The middle value of `values` (the mean of the two middle ones of an even count); NaN for none. */
export function median(values: readonly number[]): number {
  if (values.length === 0) return NaN;
  const sorted = Float64Array.from(values).sort();
  const middle = sorted.length >> 1;
  const upper = sorted[middle] as number;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] as number) + upper) / 2;
}
