import type { FilmMoment } from '../film/life/snapshot.ts';
import type { LivingFilm } from '../film/life/state.ts';
import type { FilmLaw } from '../film/law.ts';
import { peelAmplitude_m, weightedDrop_m3 } from '../film/level/peel.ts';
import { JUDGED_COVER } from '../verdict/judged.ts';
import type { Recording } from '../stroke/recordingReader.ts';
import { coatMoment, liveUntil, startCoat, type LivingCoat } from './livingCoat.ts';
import type { Travel } from './lay.ts';
import { recordingOf } from './recordingOf.ts';
import type { CoatSetting } from './result.ts';
import { settleCoat } from './settle.ts';
import { strokesOf } from './strokes.ts';

/** How long a coat is watched, and when it is looked at. */
export interface LifeOptions {
  /** On the film's clock, s; where not given, until the coat is dry to touch, `LONGEST_WATCH_S` at most. */
  readonly until_s?: number;
  /** Times at which the film is kept, s, rising. */
  readonly at_s?: readonly number[];
  /** Recordings already read, by id, for the coats beneath; they stand before those in the job. */
  readonly recordings?: ReadonlyMap<string, Recording>;
  /** Multiplies every step, for convergence tests; 1 where not given. */
  readonly stepScale?: number;
  /** Asked often; true ends with a `cancelled` error. */
  readonly shouldStop?: () => boolean;
}

/** A coat from trigger on to the end of its watch. */
export interface CoatLife {
  readonly setting: CoatSetting;
  readonly law: FilmLaw;
  /** The film at the end of the watch, with all that it went through. */
  readonly end: FilmMoment;
  /** The film at the times asked for. */
  readonly moments: readonly FilmMoment[];
  /** When the gun was put away. */
  readonly sprayed_s: number;
  /** When 99 % of the film had set, and when it was ready for another coat; null where that was not seen. */
  readonly touchDry_s: number | null;
  readonly recoat_s: number | null;
  /** Orange peel at the end, one amplitude a cell, m. */
  readonly peel_m: Float32Array;
}

/** A coat that has not set after three hours is a fault of the question, s: its film is left. */
export const LONGEST_WATCH_S = 3 * 3600;
/** The film is asked whether it has set this often, as a share of the time gone by, and at least every so many seconds. */
const ASK_SHARE = 0.1;
const ASK_S = 20;
/** Share of the film that must have set for the coat to count as set. */
const MOST_OF_IT = 0.99;

/**
 * Sprays a coat and watches its film. A coat that lies `over` another is laid on that coat's film as it
 * is after the stated wait; the coats beneath are sprayed first, from their own plan or recording.
 * @throws CrosscoatError for a coat beneath that cannot be settled; `cancelled`.
 */
export function runLife(setting: CoatSetting, travel: Travel, options: LifeOptions = {}): CoatLife {
  const coat = startCoat(setting, travel, filmBeneath(setting, options));
  const moments = (options.at_s ?? []).map((at_s) => {
    liveUntil(coat, at_s, options);
    return coatMoment(coat);
  });
  if (options.until_s === undefined) liveUntilSet(coat, options);
  else liveUntil(coat, options.until_s, options);
  const end = coatMoment(coat);
  return {
    setting,
    law: coat.law,
    end,
    moments,
    sprayed_s: coat.sprayed_s,
    ...dryTimes(end),
    peel_m: peelOf(setting, end),
  };
}

/** The film that a coat is laid on; null for a bare panel. */
export function filmBeneath(setting: CoatSetting, options: LifeOptions = {}): LivingFilm | null {
  const { job, coat, panelGrid } = setting;
  if (coat.over === undefined) return null;
  const under = settleCoat(job, coat.over.coat, { cell_mm: panelGrid.grid.cellSize_m * 1e3 });
  const living = startCoat(under, strokesOf(under, recordingOf(job, under.coat, options.recordings)), filmBeneath(under, options));
  liveUntil(living, living.sprayed_s + coat.over.wait_min * 60, options);
  return living.film;
}

function liveUntilSet(coat: LivingCoat, options: LifeOptions): void {
  liveUntil(coat, coat.sprayed_s, options);
  while (coat.film.time_s < LONGEST_WATCH_S) {
    liveUntil(coat, coat.film.time_s + Math.max(ASK_S, ASK_SHARE * coat.film.time_s), options);
    if (timeOfMost(coat.film.setAt_s, coat.film.landed_m) !== null) return;
  }
}

/** When a coat's film had set, and when it was ready for another, as far as it has been watched. */
export function dryTimes({ film }: FilmMoment): Pick<CoatLife, 'touchDry_s' | 'recoat_s'> {
  return { touchDry_s: timeOfMost(film.setAt_s, film.landed_m), recoat_s: timeOfMost(film.readyAt_s, film.landed_m) };
}

/** The time by which nearly all cells with film have got a mark; null where they have not. */
function timeOfMost(at_s: Float32Array, landed_m: Float32Array): number | null {
  let wetted = 0;
  for (let cell = 0; cell < at_s.length; cell++) if ((landed_m[cell] as number) > 0) wetted++;
  const times = at_s.filter((time, cell) => time >= 0 && (landed_m[cell] as number) > 0).sort();
  const rank = Math.ceil(MOST_OF_IT * wetted) - 1;
  return rank >= 0 && rank < times.length ? (times[rank] as number) : null;
}

/** Orange peel of a film by the drops that its set-up makes, one amplitude a cell, m. */
export function peelOf({ setUp, panelGrid }: CoatSetting, { film }: FilmMoment): Float32Array {
  const drop_m3 = weightedDrop_m3(setUp.drops.meanDiameter_m, setUp.drops.spreadRatio);
  return film.levelling_m4.map((levelling, cell) => {
    if ((panelGrid.cover[cell] as number) < JUDGED_COVER) return 0;
    return peelAmplitude_m(levelling, film.landed_m[cell] as number, drop_m3, film.blown_m[cell] as number);
  });
}
