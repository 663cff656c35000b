import { landedFilm } from '../landedFilm.ts';
import type { Film } from '../../film/film.ts';
import { PEEL_BANDS_M } from '../../film/level/peel.ts';
import type { FilmMoment } from '../../film/life/snapshot.ts';
import type { LessonFigures } from '../../report/reportedDemonstration.ts';
import { filmFigures, inTargetFraction } from '../../verdict/figures.ts';
import { dryShare, isLack, JUDGED_COVER } from '../../verdict/judged.ts';
import { findLifeZones, lifeValues, type JudgedLife } from '../../verdict/lifeMaps.ts';
import type { FaultKind, Zone } from '../../verdict/verdict.ts';
import { findZones } from '../../verdict/zones.ts';
import { dryTimes, peelOf, type CoatLife } from '../coatLife.ts';
import { judgedLifeOf } from '../lifeCures.ts';
import type { CoatSetting } from '../result.ts';

/** A side's film at one time, judged. */
export interface JudgedMoment {
  readonly moment: FilmMoment;
  /** The film as it had landed by then. */
  readonly landed: Film;
  readonly peel_m: Float32Array;
  readonly figures: LessonFigures;
  readonly faults: readonly FaultKind[];
}

/** Share of the film that has less ripple than the figure that is told. */
const PEEL_RANK = 0.95;
/** A ripple goes on levelling until the film is dry, and is no fault before. */
const LEVELS: FaultKind = 'orange-peel';

/**
 * The figures and faults of a coat's film at one time. What is still to be sprayed is not missed yet, and
 * what still levels is not peel yet.
 * @param lost_m3 by the whole coat's strokes.
 */
export function judgeMoment(setting: CoatSetting, { law, sprayed_s }: Pick<CoatLife, 'law' | 'sprayed_s'>, moment: FilmMoment, lost_m3: number): JudgedMoment {
  const { panelGrid, target } = setting;
  const landed = landedFilm(moment);
  const peel_m = peelOf(setting, moment);
  const life = judgedLifeOf({ end: moment, peel_m, law });
  const dry = dryTimes(moment);
  const zones = [...findZones(landed, panelGrid, target).zones, ...findLifeZones(life, panelGrid, target).zones];
  const isSprayed = moment.time_s >= sprayed_s;
  const isDry = isSprayed && dry.touchDry_s !== null;
  const judged = zones.filter(({ kind }) => (kind === LEVELS ? isDry : isSprayed || kind === 'blush' || !isLack(kind)));
  const laid = filmFigures(landed.wet_m, panelGrid);
  const ripple_m = ranked(peel_m, landed.wet_m);
  return {
    moment,
    landed,
    peel_m,
    faults: [...new Set(judged.map(({ kind }) => kind))],
    figures: {
      heaviest_m: laid.max_m,
      thinnest_m: laid.min_m,
      mean_m: laid.mean_m,
      meanDry_m: filmFigures(landed.dry_m, panelGrid).mean_m,
      cv: laid.cv,
      inTargetFraction: inTargetFraction(landed, panelGrid, target),
      longestRun_m: longestRun_m(zones, life, setting),
      peel_m: ripple_m,
      peelWord: isDry ? peelWord(ripple_m) : 'still levelling',
      dryFraction: mostDry(landed, panelGrid.cover),
      blushMargin_K: lowest(moment.film.margin_K),
      trappedFraction: shareOfSums(moment.film.trapped_m, landed.wet_m),
      touchDry_s: isDry ? dry.touchDry_s : null,
      lost_m3,
    },
  };
}

/** From where a run began to its lowest place, or the mean way of its film where that is longer. */
function longestRun_m(zones: readonly Zone[], life: JudgedLife, { target }: CoatSetting): number {
  const runs = zones.filter(({ kind }) => kind === 'run');
  if (runs.length === 0) return 0;
  const values = lifeValues('run', life, target);
  const farthest = runs.flatMap(({ cells }) => [...cells]).reduce((most, cell) => Math.max(most, values[cell] as number), 0);
  return runs.reduce((most, { run }) => Math.max(most, run?.length_m ?? 0), farthest);
}

function peelWord(ripple_m: number): LessonFigures['peelWord'] {
  const [slight, peel] = PEEL_BANDS_M;
  if (ripple_m > peel) return 'orange peel';
  return ripple_m > slight ? 'slight' : 'smooth';
}

/** The amplitude that all but a few cells have less of. */
function ranked(values: Float32Array, landed_m: Float32Array): number {
  const some = values.filter((_, cell) => (landed_m[cell] as number) > 0).sort();
  return some.length === 0 ? 0 : (some[Math.min(some.length - 1, Math.floor(PEEL_RANK * some.length))] as number);
}

function mostDry({ wet_m, arrivedDry_m }: Film, cover: Float32Array): number {
  let most = 0;
  for (let cell = 0; cell < wet_m.length; cell++) {
    if ((cover[cell] as number) < JUDGED_COVER) continue;
    most = Math.max(most, dryShare(arrivedDry_m[cell] as number, wet_m[cell] as number));
  }
  return most;
}

function lowest(margin_K: Float32Array): number {
  let low = Infinity;
  for (const margin of margin_K) if (margin < low) low = margin;
  return low === Infinity ? NaN : low;
}

function shareOfSums(part: Float32Array, whole: Float32Array): number {
  let parts = 0;
  let all = 0;
  for (let cell = 0; cell < whole.length; cell++) {
    parts += part[cell] as number;
    all += whole[cell] as number;
  }
  return all > 0 ? parts / all : 0;
}
