import type { Job } from '../../job/schema.ts';
import type { PredictOptions } from '../window/predictPoints.ts';
import { WINDOW_FAULTS } from '../../verdict/workingWindow.ts';
import { withAxis } from '../window/sprayPoint.ts';
import { chooseTries, type ChooseOptions, type ChosenTry } from './choose.ts';
import { LAID_SPEEDS_M_S } from './fitAxes.ts';
import { fitKinds, type FitKind, type KindOptions } from './fitKinds.ts';
import type { FitTry, Weighing } from './fitTries.ts';
import { HELD_LIMITS, roomsOf, type FitLimit } from './rooms.ts';
import { FIT_SPEEDS_M_S, type FitLimits, type Wish } from './wish.ts';

/** A limit that the nearest try misses. */
export interface Obstacle {
  readonly limit: FitLimit;
  /** By how much, as a share of the limit (of 5 K for blush, of all there can be for the film). */
  readonly missedBy: number;
  /** Wet film of one coat up to which this fault does not come there, the speed alone changed; null where that was not found. */
  readonly heldWet_m: number | null;
}

/** One thing asked for less strictly. */
export type Relaxed =
  | { readonly kind: 'ignored'; readonly limit: FitLimit }
  | { readonly kind: 'coats'; readonly coatCount: number }
  | { readonly kind: 'dropped'; readonly limit: keyof FitLimits };

/** What a search without one limit finds. */
export interface Relaxation {
  readonly relaxed: Relaxed;
  /** Whether the rest of the wish is then met. */
  readonly meets: boolean;
  readonly best: ChosenTry;
}

/** The limits that a try misses, the worst first. */
export function obstaclesOf(nearest: FitTry, options: PredictOptions): Obstacle[] {
  const faults = WINDOW_FAULTS.filter((fault) => nearest.rooms[fault] < 0).map((fault) => ({ limit: fault, missedBy: -nearest.rooms[fault], heldWet_m: heldWet_m(nearest, fault, options) }));
  const held = HELD_LIMITS.filter((limit) => nearest.past[limit] > 0).map((limit) => ({ limit, missedBy: nearest.past[limit], heldWet_m: null }));
  return [...faults, ...held].sort((a, b) => b.missedBy - a.missedBy);
}

/** Speeds tried, over that of the try, to find how much film holds. */
const FASTER = [1.1, 1.25, 1.5, 2, 3, 4, 6, 9] as const;

/** Wet film at which a fault of too much film goes away as the gun goes faster: between two speeds, along a straight line in film. */
function heldWet_m({ kind, point, film, rooms }: FitTry, fault: (typeof WINDOW_FAULTS)[number], options: PredictOptions): number | null {
  if (fault === 'thin-lap' || fault === 'dry-spray') return null;
  const speeds = FASTER.map((times) => times * point.speed_m_s).filter((speed) => speed <= LAID_SPEEDS_M_S[1]);
  const films = kind.predict(speeds.map((speed) => withAxis(point, 'speed', speed)), options);
  let before = { wet_m: film.wetMean_m, room: rooms[fault] };
  for (const faster of films) {
    const here = { wet_m: faster.wetMean_m, room: roomsOf(faster, kind.setting.target)[fault] };
    if (here.room >= 0) return here.wet_m + ((before.wet_m - here.wet_m) * here.room) / (here.room - before.room);
    before = here;
  }
  return null;
}

/** More coats that are tried, and fewer. */
const COATS_MORE = [1, 2, 3, 4, 6] as const;
const COATS_FEWER = [1, 2] as const;

/** What is searched again, and how. */
export interface RelaxQuestion {
  readonly job: Job;
  readonly coatId: string;
  readonly wish: Wish;
  readonly kinds: readonly FitKind[];
  readonly nearest: FitTry;
  readonly obstacles: readonly Obstacle[];
}

/**
 * Searches again with one limit taken away at a time: each that the nearest try misses; each that the wish
 * itself sets; and with more coats or fewer until one number holds. Shallower than the search itself, so
 * its margins are the least that can be had. @throws `cancelled`.
 */
export function relaxations(question: RelaxQuestion, options: RelaxOptions): Relaxation[] {
  const { obstacles, kinds, wish, nearest } = question;
  const ignored = obstacles.map(({ limit }) => relaxation({ kind: 'ignored', limit }, kinds, { wish, ignored: new Set([limit]) }, { ...options, from: [nearest] }));
  const dropped = droppable(wish.limits ?? {}, obstacles).map((limit) => searched(question, { kind: 'dropped', limit }, { ...wish, limits: { ...wish.limits, [limit]: undefined } }, options));
  return [...ignored, ...dropped, otherCoats(question, options)].filter((one) => one !== null);
}

type RelaxOptions = PredictOptions & KindOptions;

/** Limits of the wish that are not already ignored by name. */
function droppable(limits: FitLimits, obstacles: readonly Obstacle[]): (keyof FitLimits)[] {
  const missed = (limit: FitLimit) => obstacles.some((one) => one.limit === limit);
  return (Object.keys(limits) as (keyof FitLimits)[]).filter((limit) => {
    if (limits[limit] === undefined || limits[limit] === 'either') return false;
    return !((limit === 'speed_m_s' && missed('speed')) || limit === 'mostTime_s' || limit === 'mostLiquid_m3');
  });
}

/** One number of coats that holds, or the last that was tried; null where the wish gives each coat its own film. */
function otherCoats(question: RelaxQuestion, options: RelaxOptions): Relaxation | null {
  const { wish } = question;
  const { coatCount = 1 } = wish;
  if (wish.dry_m === undefined && wish.weight_kg_m2 === undefined) return null;
  const counts = isTooLight(question) ? COATS_FEWER.map((fewer) => coatCount - fewer).filter((count) => count >= 1) : COATS_MORE.map((more) => coatCount + more);
  let last: Relaxation | null = null;
  for (const count of counts) {
    last = searched(question, { kind: 'coats', coatCount: count }, { ...wish, coatCount: count }, options);
    if (last?.meets === true) break;
  }
  return last;
}

/** Whether a coat has too little film to flow out, or for the slowest gun. */
function isTooLight({ nearest, obstacles, wish }: RelaxQuestion): boolean {
  const [, fast] = wish.limits?.speed_m_s ?? FIT_SPEEDS_M_S;
  return obstacles.some(({ limit }) => limit === 'orange-peel' || (limit === 'speed' && nearest.point.speed_m_s > fast));
}

/** A changed wish is another set of kinds. */
function searched({ job, coatId }: RelaxQuestion, relaxed: Relaxed, wish: Wish, options: RelaxOptions): Relaxation | null {
  return relaxation(relaxed, fitKinds(job, coatId, wish, options).kinds, { wish, ignored: new Set() }, options);
}

function relaxation(relaxed: Relaxed, kinds: readonly FitKind[], weighing: Weighing, options: ChooseOptions): Relaxation | null {
  const [best] = chooseTries(kinds, weighing, { ...options, most: 1, starts: 2 });
  return best === undefined ? null : { relaxed, meets: best.margin >= 0, best };
}
