import { liveUntil, recordingOf, settleCoat, startCoat, strokesOf, type CoatSetting, type LivingCoat, type Recording } from '../../sim/index.ts';

/** The film that a coat is laid on, sprayed from its own plan or recording and left for the stated wait; null for a bare panel. */
export async function filmBeneath(
  { job, coat, panelGrid }: CoatSetting, recordings: ReadonlyMap<string, Recording>, turn: () => Promise<void>,
): Promise<LivingCoat['film'] | null> {
  if (coat.over === undefined) return null;
  const under = settleCoat(job, coat.over.coat, { cell_mm: panelGrid.grid.cellSize_m * 1e3 });
  const strokes = strokesOf(under, recordingOf(job, under.coat, recordings));
  const living = startCoat(under, strokes, await filmBeneath(under, recordings, turn));
  const until_s = living.sprayed_s + coat.over.wait_min * 60;
  while (living.film.time_s < until_s) {
    await turn();
    liveUntil(living, Math.min(until_s, living.film.time_s + Math.max(1, 0.05 * (living.film.time_s - living.sprayed_s))));
  }
  return living.film;
}
