import { livePatch, type Patch, type PatchLife } from './patch.ts';

/** How a film's life depends on how much of it there is: lives of one patch, film rising, and the film that just holds. */
export interface FilmLadder {
  readonly rungs: readonly PatchLife[];
  /** Film that moves as far as a run before it sets, m; Infinity where no film that was tried does. */
  readonly holdUp_m: number;
}

/** From rung to rung the film grows by this. */
const STEP = Math.SQRT2;
/** Rungs below the film as planned: half of it is the thinnest that a 95 % interval comes to. */
const BELOW = 2;
/** Rungs above it, and below it where even half of it runs: eight times as much film, or a sixteenth, is no coat. */
const MOST_ABOVE = 6;
const MOST_BELOW = 8;
/** The film that just holds is found to about a hundredth: film moves about as its cube, so the distance is right to this. */
const MOVE_SHARE = 0.03;
const MOST_TRIALS = 5;

/**
 * Lives of a patch from half its film upward until it runs, or downward until it holds. The film that
 * just holds is the one that moves by `run_m` before it sets, sprayed in the same strokes: on a panel
 * it need not gather to a run then, so the margin taken from it is on the safe side.
 * @throws CrosscoatError `cancelled`.
 */
export function filmLadder(patch: Patch, run_m: number, shouldStop?: () => boolean): FilmLadder {
  const live = (ratio: number) => livePatch(patch, ratio, shouldStop);
  const runs = ({ film_m, run_m: moved_m }: PatchLife) => film_m > 0 && moved_m > run_m;
  const own = live(1);
  const lower: PatchLife[] = [];
  for (let rung = 1; rung <= BELOW || (runs(lower[0] ?? own) && rung <= MOST_BELOW); rung++) lower.unshift(live(STEP ** -rung));
  const lives = [...lower, own];
  for (let rung = 1; rung <= MOST_ABOVE && own.film_m > 0 && !runs(lives[lives.length - 1] ?? own); rung++) lives.push(live(STEP ** rung));
  const { tried, holdUp_m } = holdTrials(lives, run_m, (film_m) => live(film_m / own.film_m));
  return { rungs: [...lives, ...tried].sort((a, b) => a.film_m - b.film_m), holdUp_m };
}

/** Closes in on the film that moves by `run_m`, between the last rung that holds and the first that does not. */
function holdTrials(lives: readonly PatchLife[], run_m: number, live: (film_m: number) => PatchLife): { readonly tried: readonly PatchLife[]; readonly holdUp_m: number } {
  const tried: PatchLife[] = [];
  const above = lives.findIndex((life) => life.run_m > run_m);
  if (above < 0) return { tried, holdUp_m: Infinity };
  let high = lives[above] as PatchLife;
  let low = lives[above - 1];
  if (low === undefined) return { tried, holdUp_m: high.film_m };
  while (tried.length < MOST_TRIALS) {
    const life = live(filmMoving(run_m, low, high));
    tried.push(life);
    if (Math.abs(life.run_m / run_m - 1) < MOVE_SHARE) return { tried, holdUp_m: life.film_m };
    if (life.run_m > run_m) high = life;
    else low = life;
  }
  return { tried, holdUp_m: filmMoving(run_m, low, high) };
}

/** Film that moves by a distance, by a straight line through the cube roots: a film moves about as its cube. */
function filmMoving(run_m: number, low: PatchLife, high: PatchLife): number {
  const share = (Math.cbrt(run_m) - Math.cbrt(low.run_m)) / (Math.cbrt(high.run_m) - Math.cbrt(low.run_m));
  return low.film_m + share * (high.film_m - low.film_m);
}

/** One mark of the ladder's lives at a film, on straight lines between rungs, the ends held. */
export function ladderAt({ rungs }: FilmLadder, film_m: number, mark: (life: PatchLife) => number): number {
  const above = rungs.findIndex((rung) => rung.film_m >= film_m);
  if (above < 0) return mark(rungs[rungs.length - 1] as PatchLife);
  const high = rungs[above] as PatchLife;
  const low = rungs[above - 1];
  if (low === undefined || !(high.film_m > low.film_m)) return mark(high);
  const share = (film_m - low.film_m) / (high.film_m - low.film_m);
  return mark(low) + share * (mark(high) - mark(low));
}
