import { CELSIUS_0_K } from '../base/units.ts';
import type { MomentFigures } from '../film/life/momentFigures.ts';
import type { LifeFigures, LifeVerdict } from '../verdict/lifeVerdict.ts';
import { jsonNumber, type JsonValue } from './jsonValue.ts';
import { wrapped } from './textLines.ts';
import { textTable } from './textTable.ts';
import { shown, shownNumber, shownPercent, shownTemperature, shownTemperatureStep, shownTime, shownUnit, type UnitSystem } from './units.ts';

const UM = 1e-6;
const MM = 1e-3;

/** What a report reads of a film's life: its verdict, and its figures at the times that were asked for. */
export interface ReportedLife {
  readonly verdict: LifeVerdict;
  readonly moments: readonly MomentFigures[];
}

/** Said where a film's life is read. */
export const LIFE_LIMITS =
  'The film in time is a model of an even sheet: a run’s place, length and volume are told, not its height or shape; draughts, water taken up, gradients in the film, ' +
  'soaking into the cloth and the re-dissolving of an older coat are left out; what holds a film on a slope, shuts solvent in or shows as orange peel is Assumed, not measured.';

/** What the film went through, in a few sentences and a table of the times asked for. */
export function lifeLines({ verdict, moments }: ReportedLife, system: UnitSystem): string[] {
  return [...wrapped(lifeSentence(verdict.figures, system)), ...momentTable(moments, system)];
}

/** How long the film needs, how far it ran, how smooth, how cold and how heavy it is. */
export function lifeSentence(figures: LifeFigures, system: UnitSystem): string {
  return `${[waits(figures), runs(figures, system), blush(figures, system), `ripple of ${shown(figures.peel_m, 'film', system)} left on average`, weight(figures, system)].join('; ')}.`;
}

function waits({ watched_s, sprayed_s, touchDry_s, recoat_s }: LifeFigures): string {
  const head = `In time: sprayed in ${shownTime(sprayed_s)}`;
  if (touchDry_s === null) return `${head}, not dry to touch within ${shownTime(watched_s)}`;
  return `${head}, dry to touch after ${shownTime(touchDry_s)}, ${recoat_s === null ? `not ready for another coat within ${shownTime(watched_s)}` : `ready for another coat after ${shownTime(recoat_s)}`}`;
}

function runs({ longestRun_m, ranOff_m3 }: LifeFigures, system: UnitSystem): string {
  if (!(longestRun_m > 0)) return 'nothing runs';
  return `film moves by up to ${shown(longestRun_m, 'length', system)}${ranOff_m3 > 0 ? `, ${shown(ranOff_m3, 'volume', system)} runs off` : ''}`;
}

function blush({ coldest_K, blushMargin_K }: LifeFigures, system: UnitSystem): string {
  if (!Number.isFinite(coldest_K)) return 'no film';
  return `wet film down to ${shownTemperature(coldest_K, system)}, ${shownTemperatureStep(Math.abs(blushMargin_K), system)} ${blushMargin_K < 0 ? 'below' : 'above'} the dew point`;
}

function weight({ dry_m, weight_kg_m2 }: LifeFigures, system: UnitSystem): string {
  return `${shown(dry_m, 'film', system)} dry on average, ${shown(weight_kg_m2, 'areal-weight', system)}`;
}

function momentTable(moments: readonly MomentFigures[], system: UnitSystem): string[] {
  if (moments.length === 0) return [];
  const rows = moments.map((one) => [
    shownTime(one.time_s),
    shownNumber(one.meanWet_m, 'film', system),
    shownPercent(one.solidsFraction),
    Number.isFinite(one.meanFilm_K) ? shownTemperature(one.meanFilm_K, system) : '?',
    Number.isFinite(one.leastMargin_K) ? shownTemperatureStep(one.leastMargin_K, system) : 'set',
    shown(one.longestRun_m, 'length', system),
  ]);
  return ['', ...textTable([['after', `film, ${shownUnit('film', system).name}`, 'solids', 'warmth', 'over dew point', 'longest run'], ...rows])];
}

/** A film's life as JSON; faults are written beside it by the caller. Units are in the keys, numbers finite or null. */
export function lifeJson({ verdict: { figures }, moments }: ReportedLife): { readonly [key: string]: JsonValue } {
  return {
    sprayed_s: jsonNumber(figures.sprayed_s),
    watched_s: jsonNumber(figures.watched_s),
    touchDry_s: figures.touchDry_s === null ? null : jsonNumber(figures.touchDry_s),
    recoat_s: figures.recoat_s === null ? null : jsonNumber(figures.recoat_s),
    longestRun_mm: jsonNumber(figures.longestRun_m, MM),
    ranOff_mL: jsonNumber(figures.ranOff_m3, 1e-6),
    evaporated_mL: jsonNumber(figures.evaporated_m3, 1e-6),
    ripple_um: jsonNumber(figures.peel_m, UM),
    coldestFilm_C: jsonNumber(figures.coldest_K - CELSIUS_0_K),
    blushMargin_C: jsonNumber(figures.blushMargin_K),
    dry_um: jsonNumber(figures.dry_m, UM),
    weight_g_m2: jsonNumber(figures.weight_kg_m2, 1e-3),
    at: moments.map((one) => ({
      time_s: jsonNumber(one.time_s),
      wet_um: jsonNumber(one.meanWet_m, UM),
      dry_um: jsonNumber(one.meanDry_m, UM),
      solids_percent: jsonNumber(one.solidsFraction, 0.01),
      film_C: jsonNumber(one.meanFilm_K - CELSIUS_0_K),
      blushMargin_C: jsonNumber(one.leastMargin_K),
      ran_mm2: jsonNumber(one.ranArea_m2, 1e-6),
      longestRun_mm: jsonNumber(one.longestRun_m, MM),
      running: one.isRunning,
    })),
    limits: LIFE_LIMITS,
  };
}
