import { coatMoment, copyCoat, dryTimes, liveUntil, LONGEST_WATCH_S, type FilmMoment, type LivingCoat } from '../../sim/index.ts';
import { keepStates, keptMarks_s } from './keptStates.ts';
import type { LifeReply } from './protocol.ts';

/** A coat's life, run on the worker and looked at in any order. */
export interface WatchedLife {
  /** Watches on for about `WORK_MS`. `turn` is called between pieces of work; what it throws stops the watch, which can go on later. */
  watch(turn: () => Promise<void>): Promise<Omit<LifeReply, 'version'>>;
  /** The film at a time. Its arrays are the life's own: copy them before handing them over. */
  momentAt(time_s: number, turn: () => Promise<void>): Promise<FilmMoment>;
}

/** One answer of `watch` takes about this long. */
const WORK_MS = 150;
/** Film is laid in steps of this length, so a time during the spraying is rounded up to one, s. */
const SPRAY_STEP_S = 0.25;
/** Time is carried forward in pieces, so that newer messages are read in between: the least, s, and a share of the time since the gun was put away. */
const PIECE_S = 0.5;
const PIECE_SHARE = 0.05;
/** The watch ends when this share of the film is ready for another coat, or after `LONGEST_WATCH_S`. */
const MOST_OF_IT = 0.99;

/** @param start the coat before its first stroke; it belongs to the life from then on. */
export function watchLife(start: LivingCoat, now_ms: () => number = () => performance.now()): WatchedLife {
  const { sprayed_s } = start;
  const kept = keepStates(keptMarks_s(sprayed_s, start.film.inside.length), ({ film }: LivingCoat) => film.time_s, copyCoat);
  let coat = start;
  let watched_s = 0;
  let dry: ReturnType<typeof dryTimes> | null = null;
  let last: { readonly at_s: number; readonly moment: FilmMoment } | null = null;
  kept.offer(coat);

  const step = (until_s: number): void => {
    const piece_s = Math.max(PIECE_S, PIECE_SHARE * (coat.film.time_s - sprayed_s));
    const next_s = coat.film.time_s + piece_s;
    // A piece ends where the gun is put away, which is a state worth keeping.
    liveUntil(coat, Math.min(until_s, coat.film.time_s < sprayed_s ? Math.min(next_s, sprayed_s) : next_s));
    watched_s = Math.max(watched_s, coat.film.time_s);
    kept.offer(coat);
  };

  const moveTo = async (at_s: number, turn: () => Promise<void>): Promise<void> => {
    const from = kept.before(at_s);
    if (from !== null && (coat.film.time_s > at_s || from.film.time_s > coat.film.time_s)) coat = copyCoat(from);
    while (coat.film.time_s < at_s) {
      await turn();
      step(at_s);
    }
  };

  const moment = (at_s: number): FilmMoment => {
    if (last?.at_s !== at_s) last = { at_s, moment: coatMoment(coat) };
    return last.moment;
  };

  return {
    async watch(turn) {
      const since_ms = now_ms();
      await moveTo(watched_s, turn);
      while (dry === null && now_ms() - since_ms < WORK_MS) {
        await turn();
        if (coat.film.time_s >= sprayed_s && (isReady(coat) || coat.film.time_s >= LONGEST_WATCH_S)) dry = dryTimes(moment(coat.film.time_s));
        else step(LONGEST_WATCH_S);
      }
      return { sprayed_s, watched_s, isWhole: dry !== null, touchDry_s: dry?.touchDry_s ?? null, recoat_s: dry?.recoat_s ?? null };
    },
    async momentAt(time_s, turn) {
      const at_s = time_s < sprayed_s ? Math.min(sprayed_s, SPRAY_STEP_S * Math.ceil(time_s / SPRAY_STEP_S - 1e-6)) : time_s;
      if (last?.at_s !== at_s) await moveTo(at_s, turn);
      return moment(at_s);
    },
  };
}

function isReady({ film: { landed_m, readyAt_s } }: LivingCoat): boolean {
  let wetted = 0;
  let ready = 0;
  for (let cell = 0; cell < landed_m.length; cell++) {
    if (!((landed_m[cell] as number) > 0)) continue;
    wetted++;
    if ((readyAt_s[cell] as number) >= 0) ready++;
  }
  return ready >= MOST_OF_IT * wetted;
}
