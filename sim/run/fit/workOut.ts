import { CrosscoatError } from '../../base/errors.ts';
import type { Job } from '../../job/schema.ts';
import type { PredictOptions } from '../window/predictPoints.ts';
import { checkWish } from './checkWish.ts';
import { chooseTries, type ChosenTry } from './choose.ts';
import { fitKinds, type FitKind, type KindOptions } from './fitKinds.ts';
import { obstaclesOf, relaxations, type Obstacle, type Relaxed } from './obstacles.ts';
import { checkProposal, drawProposal, type CheckedProposal, type Drawn, type Proposal } from './proposal.ts';
import type { Wish } from './wish.ts';

/** How a wish is worked out. */
export interface WorkOutOptions extends PredictOptions, KindOptions {
  /** Whether the proposals are laid and watched by the direct model; true where not given. */
  readonly check?: boolean;
  /** Whether, where nothing meets the wish, limits are taken away one at a time; true where not given. */
  readonly relax?: boolean;
  /** Share of the work done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
}

/** What a relaxed limit gives. */
export interface RelaxedAnswer {
  readonly relaxed: Relaxed;
  readonly meets: boolean;
  /** The least room to what still counts; the proposal's own counts everything. */
  readonly margin: number;
  readonly proposal: Proposal;
}

/** Set-ups and plans for a wish, or why there are none. */
export interface WorkedOut {
  readonly coatId: string;
  readonly coatName: string;
  readonly wish: Wish;
  /** What the wish asks of one coat. */
  readonly target: Proposal['target'];
  readonly coatCount: number;
  /** Meeting the wish, best first, differing in kind; none where nothing meets it. */
  readonly proposals: readonly (Proposal | CheckedProposal)[];
  /** Where nothing meets it: the try that misses least, the limits that it misses, and what each gives if taken away. */
  readonly nearest: Proposal | null;
  readonly obstacles: readonly Obstacle[];
  readonly relaxations: readonly RelaxedAnswer[];
  /** Set-ups that could not be used, and why. */
  readonly leftOut: readonly string[];
}

/** Shares of the work that are done after the search, and after drawing. */
const SEARCHED_SHARE = 0.6;
/** Times that limits of time and liquid are held tighter, because whole strokes take more than was estimated. */
const MOST_TIGHTENED = 3;

/**
 * Works out how to lay a wished film in so many coats: set-up, mix, fluid, thinner, distance, overlap,
 * single or cross, with the speed that lays it. Among all that keeps to the limits, the answers have the
 * most room to every fault and for the hand (see `roomsOf`, `handRooms`), up to what is enough; then less
 * time and less loss decide. Predicted in the middle of a large panel (`predictorFor`), drawn on the panel
 * itself, and laid and watched there once.
 *
 * Left out: what lies beneath (but for the last check), waits between coats, the room's air, which stays as
 * it is. A search of a few thousand points: the best that it finds, not surely the best there is.
 * @throws CrosscoatError for an impossible wish, saying what to give instead; `cancelled`.
 */
export function workOut(job: Job, coatId: string, wish: Wish, options: WorkOutOptions = {}): WorkedOut {
  checkWish(job, coatId, wish);
  const { kinds, leftOut } = fitKinds(job, coatId, wish, options);
  const chosen = chooseDrawn(job, coatId, wish, kinds, { ...options, onProgress: (share) => options.onProgress?.(SEARCHED_SHARE * share) });
  const best = chosen[0] as DrawnTry;
  const meets = best.drawn.proposal.margin >= 0;
  const { coatName, target } = { coatName: best.one.kind.setting.coat.name, target: best.drawn.proposal.target };
  const found = { coatId, coatName, wish, target, coatCount: wish.coatCount ?? 1, leftOut };
  if (!meets) return { ...found, proposals: [], nearest: best.drawn.proposal, ...inTheWay(job, coatId, wish, kinds, { ...best.one, past: best.drawn.proposal.past }, options) };
  const proposals = chosen.map(({ drawn }, i) => {
    const proposal = options.check === false ? drawn.proposal : checkProposal(drawn, coatId, options);
    options.onProgress?.(SEARCHED_SHARE + ((1 - SEARCHED_SHARE) * (i + 1)) / chosen.length);
    return proposal;
  });
  return { ...found, proposals, nearest: null, obstacles: [], relaxations: [] };
}

interface DrawnTry {
  readonly one: ChosenTry;
  readonly drawn: Drawn;
}

/** Chooses and draws; where whole strokes take more time or liquid than was estimated and is allowed, chooses again with so much less allowed. */
function chooseDrawn(job: Job, coatId: string, wish: Wish, kinds: readonly FitKind[], options: WorkOutOptions): DrawnTry[] {
  let held = wish;
  for (let round = 0; ; round++) {
    const chosen = chooseTries(kinds, { wish: held, ignored: new Set() }, options);
    const [best] = chosen;
    if (best === undefined) throw unlaid(kinds);
    const drawn = chosen.map((one) => ({ one, drawn: drawProposal(job, coatId, one, best, wish) }));
    const over = Math.max(...drawn.map(({ drawn: { proposal } }) => Math.max(proposal.past.time, proposal.past.liquid)));
    if (best.margin < 0 || over === 0) return drawn;
    if (round === MOST_TIGHTENED) return keepers(drawn).map((one, _, [first = one]) => ({ one, drawn: drawProposal(job, coatId, one, first, wish) }));
    held = tighter(held, 1 + over);
  }
}

/** Only those whose drawn plan keeps every limit; the first, as the nearest try, where none does. */
function keepers(drawn: readonly DrawnTry[]): ChosenTry[] {
  const within = drawn.filter(({ drawn: { proposal } }) => proposal.margin >= 0);
  return (within.length > 0 ? within : drawn.slice(0, 1)).map(({ one }) => one);
}

function tighter(wish: Wish, by: number): Wish {
  const { mostTime_s, mostLiquid_m3, ...limits } = wish.limits ?? {};
  const less = (most: number | undefined) => (most === undefined ? undefined : most / by);
  return { ...wish, limits: { ...limits, mostTime_s: less(mostTime_s), mostLiquid_m3: less(mostLiquid_m3) } };
}

function unlaid(kinds: readonly FitKind[]): CrosscoatError {
  const [kind] = kinds;
  const film_um = kind === undefined ? NaN : kind.setting.target.thickness_m * 1e6;
  return new CrosscoatError('range', `fit: no speed from 0.01 to 5 m/s lays a coat of ${Number(film_um.toPrecision(3))} µm ${kind?.setting.target.film ?? ''} with any set-up allowed (the film is out of all proportion to what the guns throw); wish for another film or number of coats, or allow other fluid rates`);
}

function inTheWay(job: Job, coatId: string, wish: Wish, kinds: readonly FitKind[], nearest: ChosenTry, options: WorkOutOptions): Pick<WorkedOut, 'obstacles' | 'relaxations'> {
  const obstacles = obstaclesOf(nearest, options);
  if (options.relax === false) return { obstacles, relaxations: [] };
  const found = relaxations({ job, coatId, wish, kinds, nearest, obstacles }, options);
  return { obstacles, relaxations: found.map(({ relaxed, meets, best }) => ({ relaxed, meets, margin: best.margin, proposal: drawProposal(job, coatId, best, best, wishOf(wish, relaxed)).proposal })) };
}

function wishOf(wish: Wish, relaxed: Relaxed): Wish {
  return relaxed.kind === 'coats' ? { ...wish, coatCount: relaxed.coatCount } : wish;
}
