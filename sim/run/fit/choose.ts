import type { PredictOptions } from '../window/predictPoints.ts';
import { differences } from './differences.ts';
import type { FitKind } from './fitKinds.ts';
import { refine, scanKind } from './fitSearch.ts';
import type { FitPlace } from './fitAxes.ts';
import { scoreOf, tryPlaces, type FitTry, type Weighing } from './fitTries.ts';
import { COUNTED_STEPS, handRooms, leastHandRoom, type HandRoom } from './handRoom.ts';

/** A try with the room that it leaves a hand. */
export interface ChosenTry extends FitTry {
  readonly hand: readonly HandRoom[];
  /** The margin before the hand is asked. */
  readonly unaided: number;
  /** The least of that and the hand's rooms. */
  readonly margin: number;
}

/** How many are shown. */
const MOST_SHOWN = 3;
/** Kinds that are refined for the first choice and for each further one. */
const FIRST_STARTS = 6;
const FURTHER_STARTS = 3;
/** Tries whose room for the hand is looked at, beside the hilltops; and how many of all are walked on from with it. */
const FINALISTS = 4;
const POLISHED = 2;

/** How far a search goes. */
export interface ChooseOptions extends PredictOptions {
  /** How many choices that differ in kind; `MOST_SHOWN`. */
  readonly most?: number;
  /** Kinds that are refined for the first choice; `FIRST_STARTS`. */
  readonly starts?: number;
  /** Places of these kinds, known from an earlier search, that are tried as well. */
  readonly from?: readonly Pick<FitTry, 'kind' | 'place'>[];
  /** Share of the search that is done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
}

/**
 * The ways to lay a coat with the greatest margin that differ in kind, best first: each kind is scanned, the
 * most hopeful are refined, the best is chosen; then the same among those that differ from all chosen.
 * Only the first may miss the wish (negative margin): it is then the nearest try.
 * @returns one at least, but none where no speed of the model lays the film.
 */
export function chooseTries(kinds: readonly FitKind[], weighing: Weighing, options: ChooseOptions = {}): ChosenTry[] {
  const most = options.most ?? MOST_SHOWN;
  const pool: FitTry[] = (options.from ?? []).flatMap(({ kind, place }) => tryPlaces(kind, [place], weighing, options));
  kinds.forEach((kind, i) => {
    pool.push(...scanKind(kind, weighing, options));
    options.onProgress?.((0.4 * (i + 1)) / kinds.length);
  });
  const chosen: ChosenTry[] = [];
  while (chosen.length < most) {
    const next = chooseNext(pool, chosen, weighing, options);
    options.onProgress?.(0.4 + (0.6 * (chosen.length + 1)) / most);
    if (next === null || (chosen.length > 0 && next.margin < 0)) break;
    chosen.push(next);
    if (next.margin < 0) break;
  }
  return chosen.sort(byScore);
}

/** The best try that differs from all chosen. What is tried on the way joins the pool. */
function chooseNext(pool: FitTry[], chosen: readonly FitTry[], weighing: Weighing, options: ChooseOptions): ChosenTry | null {
  const allowed = (one: FitTry) => chosen.every((other) => differences(one, other).length > 0);
  const starts = bestOfKinds(pool.filter(allowed)).slice(0, chosen.length === 0 ? (options.starts ?? FIRST_STARTS) : FURTHER_STARTS);
  for (const start of starts) {
    const tryAll = (places: readonly FitPlace[]) => tryPlaces(start.kind, places, weighing, options);
    pool.push(...refine(start, { tryAll, allowed, reach: 1 }));
  }
  const open = pool.filter(allowed);
  const finalists = new Set([...bestOfKinds(open).slice(0, starts.length), ...open.sort(byScore).slice(0, FINALISTS)]);
  const withHands = [...finalists].map((one) => withHand(one, weighing, options, COUNTED_STEPS));
  const polished = bestOfKinds(withHands).slice(0, POLISHED).flatMap((start) => polish(start, allowed, weighing, options));
  const [best] = polished.filter(allowed).sort(byScore);
  return best === undefined ? null : withHand({ ...best, margin: best.unaided }, weighing, options);
}

/**
 * Walks on with the room for the hand counted. It can only take from a score, so tries are looked at in the
 * order of their scores without it, until none is left that could be better than the best with it.
 */
function polish(start: ChosenTry, allowed: (one: FitTry) => boolean, weighing: Weighing, options: PredictOptions): ChosenTry[] {
  const tryAll = (places: readonly FitPlace[], { score }: ChosenTry) => {
    const found: ChosenTry[] = [];
    let best = score;
    for (const one of tryPlaces(start.kind, places, weighing, options).filter(allowed).sort(byScore)) {
      if (one.score <= best) break;
      const full = withHand(one, weighing, options, COUNTED_STEPS);
      found.push(full);
      best = Math.max(best, full.score);
    }
    return found;
  };
  return refine(start, { tryAll, allowed, reach: 0.5 });
}

function withHand(one: FitTry, weighing: Weighing, options: PredictOptions, far?: readonly number[]): ChosenTry {
  const hand = handRooms(one, weighing, options, far);
  const margin = Math.min(one.margin, leastHandRoom(hand));
  return { ...one, hand, unaided: one.margin, margin, score: scoreOf(margin, one) };
}

/** The best try of each kind, best first. */
function bestOfKinds<T extends FitTry>(tries: readonly T[]): T[] {
  const best = new Map<FitKind, T>();
  for (const one of tries) {
    const known = best.get(one.kind);
    if (known === undefined || one.score > known.score) best.set(one.kind, one);
  }
  return [...best.values()].sort(byScore);
}

function byScore(a: FitTry, b: FitTry): number {
  return b.score - a.score;
}
