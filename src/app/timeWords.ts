import { shown, shownTemperature, shownTemperatureStep, type MomentFigures, type UnitSystem } from '../../sim/index.ts';
import type { LifeReply } from '../worker/protocol.ts';

/** A time on the film's clock: `45 s`, `2 min 10 s`, `1 h 2 min`. */
export function clockText(time_s: number): string {
  const seconds = Math.round(time_s);
  if (seconds < 60) return `${seconds} s`;
  if (seconds < 3600) return seconds % 60 === 0 ? `${seconds / 60} min` : `${Math.floor(seconds / 60)} min ${seconds % 60} s`;
  const minutes = Math.round(time_s / 60);
  return minutes % 60 === 0 ? `${minutes / 60} h` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}

/** What the film is like at one time, and how long it still needs: one line. */
export function momentLine(time_s: number, figures: MomentFigures, life: LifeReply, system: UnitSystem): string {
  const head = clockText(time_s);
  if (!(figures.meanWet_m > 0)) return `${head}: no film yet`;
  const film = `${shown(figures.meanWet_m, 'film', system)} ${waits(life.touchDry_s, time_s) === 0 ? 'of film' : 'wet'} on average`;
  return `${head}: ${film}, ${warmthWords(figures, system)}, ${runWords(figures, system)}; ${waitWords(life, time_s)}`;
}

function warmthWords({ meanFilm_K, leastMargin_K }: MomentFigures, system: UnitSystem): string {
  const warmth = `film ${shownTemperature(meanFilm_K, system)}`;
  if (Number.isNaN(leastMargin_K)) return warmth;
  if (leastMargin_K < 0) return `${warmth}, at its coldest ${shownTemperatureStep(-leastMargin_K, system)} below the dew point`;
  return `${warmth}, at its coldest ${shownTemperatureStep(leastMargin_K, system)} above the dew point`;
}

function runWords({ ranArea_m2, longestRun_m, isRunning }: MomentFigures, system: UnitSystem): string {
  if (!(ranArea_m2 > 0)) return 'nothing has run';
  const runs = `runs over ${shown(ranArea_m2, 'area', system)}, the longest ${shown(longestRun_m, 'length', system)}`;
  return isRunning ? `${runs}, still moving` : runs;
}

function waitWords({ touchDry_s, recoat_s, watched_s }: LifeReply, time_s: number): string {
  const [touch, recoat] = [waits(touchDry_s, time_s), waits(recoat_s, time_s)];
  const touchText = touch === null ? `not dry to touch everywhere within ${clockText(watched_s)}` : touch === 0 ? 'dry to touch' : `dry to touch in about ${aboutText(touch)}`;
  const recoatText = recoat === null ? `not ready for another coat everywhere within ${clockText(watched_s)}` : recoat === 0 ? 'ready for another coat' : `recoat in about ${aboutText(recoat)}`;
  return `${touchText}, ${recoatText}`;
}

/** Seconds still to wait, 0 when it is past, null when it was not seen. */
function waits(at_s: number | null, time_s: number): number | null {
  return at_s === null ? null : Math.max(0, at_s - time_s);
}

/** The model is not sure to the second. */
function aboutText(wait_s: number): string {
  if (wait_s < 90) return `${Math.max(10, 10 * Math.round(wait_s / 10))} s`;
  const minutes = Math.round(wait_s / 60);
  return minutes < 120 ? `${minutes} min` : `${(minutes / 60).toFixed(1)} h`;
}
