import type { PredictOptions } from '../window/predictPoints.ts';
import { FIT_AXES, onAxes, type FitAxis, type FitPlace } from './fitAxes.ts';
import type { FitKind } from './fitKinds.ts';
import { tryPlaces, type FitTry, type Weighing } from './fitTries.ts';

/** Values of each axis that are tried first, the ends among them: 240 places a kind. */
const SCAN_COUNTS: Readonly<Record<FitAxis, number>> = { distance: 5, overlap: 4, fluid: 4, thinner: 3 };
/** Rounds of refining, at most: from a third of an axis a step is halved nine times to less than any knob's. */
const MOST_ROUNDS = 14;

/** Tries a coarse grid of one kind. */
export function scanKind(kind: FitKind, weighing: Weighing, options: PredictOptions): FitTry[] {
  const values = (axis: FitAxis) => evenValues(kind.axes[axis].low, kind.axes[axis].high, SCAN_COUNTS[axis]);
  const [distances, overlaps, fluids, thinners] = [values('distance'), values('overlap'), values('fluid'), values('thinner')];
  const places = distances.flatMap((distance) => overlaps.flatMap((overlap) => fluids.flatMap((fluid) => thinners.map((thinner) => ({ distance, overlap, fluid, thinner })))));
  return tryPlaces(kind, places, weighing, options);
}

function evenValues(low: number, high: number, count: number): number[] {
  if (!(high > low)) return [low];
  return Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));
}

/** Directions in which a round looks: along each axis, and along all of them at once. */
const LOOKS: readonly FitPlace[] = [
  ...FIT_AXES.flatMap((axis) => [-1, 1].map((way) => ({ distance: 0, overlap: 0, fluid: 0, thinner: 0, [axis]: way }))),
  ...[-1, 1].flatMap((distance) => [-1, 1].flatMap((overlap) => [-1, 1].flatMap((fluid) => [-1, 1].map((thinner) => ({ distance, overlap, fluid, thinner }))))),
];

/** How a walk tries places, where it may go, and how far it looks at first. */
export interface Walk<T extends FitTry> {
  /** @param best the best so far: tries that cannot be better may be left out. */
  readonly tryAll: (places: readonly FitPlace[], best: T) => readonly T[];
  readonly allowed: (one: FitTry) => boolean;
  /** In shares of the half distance between the places of a scan. */
  readonly reach: number;
}

/**
 * Walks from a try to better ones: looks round about, goes to the best, looks half as far where none is
 * better, until every step is less than a knob's. Ends at a hilltop of its own, not surely the highest.
 * @returns every try made, the start first; the hilltop is the best of the allowed.
 */
export function refine<T extends FitTry>(start: T, { tryAll, allowed, reach: share }: Walk<T>): T[] {
  const { axes } = start.kind;
  const seen = new Set<string>();
  const tries = [start];
  let best = start;
  let reach = FIT_AXES.map((axis) => (share * (axes[axis].high - axes[axis].low)) / (2 * (SCAN_COUNTS[axis] - 1)));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const fresh = tryAll(unseen(LOOKS.map((look) => onAxes(axes, lookedAt(best.place, look, reach))), seen), best);
    tries.push(...fresh);
    const better = fresh.filter((one) => allowed(one) && one.score > best.score).sort((a, b) => b.score - a.score)[0];
    if (better !== undefined) best = better;
    else if (FIT_AXES.every((axis, i) => (reach[i] as number) <= axes[axis].step)) break;
    else reach = reach.map((far, i) => (far === 0 ? 0 : Math.max(axes[FIT_AXES[i] as FitAxis].step, far / 2)));
  }
  return tries;
}

function lookedAt(from: FitPlace, look: FitPlace, reach: readonly number[]): FitPlace {
  const at = (axis: FitAxis, i: number) => from[axis] + look[axis] * (reach[i] as number);
  return { distance: at('distance', 0), overlap: at('overlap', 1), fluid: at('fluid', 2), thinner: at('thinner', 3) };
}

function unseen(places: readonly FitPlace[], seen: Set<string>): FitPlace[] {
  return places.filter((place) => {
    const key = FIT_AXES.map((axis) => place[axis]).join(' ');
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
