import type { FilmMoment } from '../../film/life/snapshot.ts';
import type { OtherFilm } from '../../report/reportedDebrief.ts';
import type { Path } from '../../stroke/path.ts';
import type { Stroke } from '../../stroke/stroke.ts';
import { filmFigures, inTargetFraction } from '../../verdict/figures.ts';
import { judgedFilm } from '../../verdict/judged.ts';
import { findLifeZones } from '../../verdict/lifeMaps.ts';
import type { FaultKind } from '../../verdict/verdict.ts';
import { findZones } from '../../verdict/zones.ts';
import { runLife, type CoatLife, type LifeOptions } from '../coatLife.ts';
import { layCoat, type Travel } from '../lay.ts';
import { judgedLifeOf } from '../lifeCures.ts';
import type { CoatSetting, LaidCoat } from '../result.ts';
import { settleCoat } from '../settle.ts';

/** Films beside each other are watched on cells no finer than this, so that a session is looked through in seconds, mm. */
const COARSE_CELL_MM = 4;

/** A travel's film, and what lies there at the end of the watch; null where it was not watched. */
export interface WatchedFilm extends OtherFilm {
  readonly end: FilmMoment | null;
}

/** How a travel's film is looked at. */
export interface OtherFilmOptions extends Pick<LifeOptions, 'shouldStop'> {
  /** The travel as laid on the setting's cells, and its watched life on them, where they are known already. */
  readonly known?: { readonly laid: LaidCoat; readonly life: CoatLife };
  /** How long after the gun is put away the film is watched, s; 0 leaves its life out. */
  readonly watch_s: number;
}

/** The setting on which films beside each other are watched: the same coat on coarse cells. */
export function coarseSetting(setting: CoatSetting): CoatSetting {
  const cell_mm = setting.panelGrid.grid.cellSize_m * 1e3;
  return cell_mm >= COARSE_CELL_MM ? setting : settleCoat(setting.job, setting.coat.id, { cell_mm: COARSE_CELL_MM });
}

/**
 * Lays a travel and watches its film: figures as laid on the setting's own cells, areas of faults
 * as laid there and of the film's life on `coarse`. @throws CrosscoatError `cancelled`.
 */
export function otherFilm(setting: CoatSetting, coarse: CoatSetting, travel: Travel, { watch_s, shouldStop, known }: OtherFilmOptions): WatchedFilm {
  const stop = shouldStop === undefined ? {} : { shouldStop };
  const { panelGrid, target } = setting;
  const { film, account } = known?.laid ?? layCoat(setting, travel, stop);
  const zones = [...findZones(film, panelGrid, target).zones];
  let end: FilmMoment | null = null;
  if (watch_s > 0) {
    const watched = coarse === setting ? known?.life : undefined;
    const life = watched ?? runLife(coarse, travel, { ...stop, until_s: pathTime_s(travel.path) + watch_s });
    end = life.end;
    zones.push(...findLifeZones(judgedLifeOf(life), coarse.panelGrid, coarse.target).zones);
  }
  const areas_m2: Partial<Record<FaultKind, number>> = {};
  for (const { kind, area_m2 } of zones) areas_m2[kind] = (areas_m2[kind] ?? 0) + area_m2;
  return {
    film,
    figures: filmFigures(judgedFilm(film, target), panelGrid),
    inTargetFraction: inTargetFraction(film, panelGrid, target),
    account,
    duration_s: sprayingTime_s(travel),
    areas_m2,
    end,
  };
}

/** From the first row of a path to its last, s. */
export function pathTime_s({ t_s, count }: Path): number {
  return count > 0 ? (t_s[count - 1] as number) - (t_s[0] as number) : 0;
}

/** From the first stroke's trigger to the last one's, s; 0 without strokes. */
function sprayingTime_s({ path, strokes }: Travel): number {
  const first: Stroke | undefined = strokes[0];
  const last = strokes.at(-1);
  if (first === undefined || last === undefined) return 0;
  return (path.t_s[last.lastRow] as number) - (path.t_s[first.firstRow] as number);
}
