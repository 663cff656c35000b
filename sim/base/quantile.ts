/**
 * The value below which a share of a law's draws lies, estimated from sorted draws: rank `share (n + 1)`, linear between
 * ranks, the ends held (R.J. Hyndman and Y. Fan, "Sample quantiles in statistical packages", The American Statistician
 * 50(4), 361-365, 1996, type 6, from memory).
 * @param sorted rising, at least one. @param share from 0 to 1.
 */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const last = sorted.length - 1;
  const rank = Math.min(last, Math.max(0, share * (sorted.length + 1) - 1));
  const below = Math.floor(rank);
  const low = sorted[below] as number;
  return low + (rank - below) * ((sorted[Math.min(last, below + 1)] as number) - low);
}
