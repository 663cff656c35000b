import { cellAt } from '../base/grid.ts';
import type { Film } from '../film/film.ts';
import { inTargetFraction } from '../verdict/figures.ts';
import { dryShare, judgedFilm, LAID_KINDS, marginOf } from '../verdict/judged.ts';
import type { TravelChange, Cure, Fault, FaultKind, Zone } from '../verdict/verdict.ts';
import { findZones } from '../verdict/zones.ts';
import { candidateChanges } from './candidates.ts';
import { changedStrokes } from './changedStrokes.ts';
import { type LayOptions, layCoat } from './lay.ts';
import { missingStrokes } from './missingStrokes.ts';
import { addStrokes, relayStrokes } from './relay.ts';
import type { CoatSetting, CoatStrokes } from './result.ts';
import { stopIfAsked } from './stop.ts';
import { tunedSpeed } from './tunedSpeed.ts';

/** Whole coats laid again for one verdict, at most: each costs as much as the coat itself. */
export const MOST_RERUNS = 12;

/** A cure must take away at least this share of the excess or lack at the fault's place. */
const LEAST_HELP = 0.25;

/** A fault counts as gone when its kind loses this share of the fault's own area. */
const GONE_SHARE = 0.9;

/** A kind of fault is worse when its area grows by more than this and by more than a twentieth. */
const WORSE_m2 = 1e-4;
const WORSE_SHARE = 0.05;

/** A coat as far as a cure is judged by it. */
interface Outcome {
  readonly film: Film;
  readonly area_m2: Readonly<Record<FaultKind, number>>;
  readonly inTarget: number;
}

/** Faults with their cures, and how many were not tried for want of runs. */
export interface Cured {
  readonly faults: readonly Fault[];
  readonly reruns: number;
  readonly untried: number;
}

/**
 * Tries for each fault, worst first, what its cause suggests, by laying the whole coat again with
 * the change. A change helps where it takes away a quarter or more of the fault at its worst place
 * without more of that kind, or less of the panel inside the limits; one that makes no other kind
 * worse goes before one that does, then the one with more of the panel inside the limits. A change
 * that takes the fault away whole ends the search. A change is laid once, whatever number of faults it is tried for; after `MOST_RERUNS` coats the
 * rest is left untried and counted.
 * @param film the coat as laid, with `zones` found in it.
 */
export function tryCures(
  setting: CoatSetting,
  strokes: CoatStrokes,
  film: Film,
  zones: readonly Zone[],
  faults: readonly Fault[],
  options: Pick<LayOptions, 'shouldStop'> & { readonly onProgress?: (share: number) => void },
): Cured {
  const before = outcomeOf(setting, film, zones);
  const laid = new Map<string, Outcome>();
  let untried = 0;
  const outcomeWith = (change: TravelChange): Outcome | null => {
    const key = JSON.stringify(change);
    const known = laid.get(key);
    if (known !== undefined) return known;
    if (laid.size >= MOST_RERUNS) return null;
    stopIfAsked(options.shouldStop);
    const outcome = outcomeWithChange(setting, strokes, film, change, options);
    laid.set(key, outcome);
    return outcome;
  };
  const cured = faults.map((fault, i): Fault => {
    let best: Cure | null = null;
    const changes = candidateChanges(fault, setting, strokes);
    for (let change = changes.shift(); change !== undefined; change = changes.shift()) {
      const after = outcomeWith(change);
      if (after === null) {
        untried++;
        break;
      }
      const cure = cureOf(fault, change, before, after, setting);
      const tuned = change.kind === 'even-speed' && best === null ? tunedSpeed(fault, cure, setting.target) : null;
      if (tuned !== null) changes.push(tuned);
      if (!helps(fault, cure, setting)) continue;
      if (best === null || isBetter(cure, best)) best = cure;
      if (mends(fault, cure)) break;
    }
    options.onProgress?.((i + 1) / faults.length);
    return { ...fault, cure: best };
  });
  return { faults: cured, reruns: laid.size, untried };
}

function outcomeWithChange(setting: CoatSetting, strokes: CoatStrokes, film: Film, change: TravelChange, options: Pick<LayOptions, 'shouldStop'>): Outcome {
  const after = filmWithChange(setting, strokes, film, change, options);
  return outcomeOf(setting, after, findZones(after, setting.panelGrid, setting.target).zones);
}

function filmWithChange(setting: CoatSetting, strokes: CoatStrokes, film: Film, change: TravelChange, options: Pick<LayOptions, 'shouldStop'>): Film {
  if (change.kind === 'add-strokes') return addStrokes(setting, film, missingStrokes(setting, strokes, change.strokes), options);
  const travel = changedStrokes(setting, strokes, change);
  return change.kind === 'plan' ? layCoat(setting, travel, options).film : relayStrokes(setting, film, strokes, travel, change.strokes, options);
}

function outcomeOf(setting: CoatSetting, film: Film, zones: readonly Zone[]): Outcome {
  const area_m2 = noAreas();
  for (const zone of zones) area_m2[zone.kind] += zone.area_m2;
  return { film, area_m2, inTarget: inTargetFraction(film, setting.panelGrid, setting.target) };
}

function cureOf(fault: Fault, change: TravelChange, before: Outcome, after: Outcome, setting: CoatSetting): Cure {
  return {
    change,
    worst: valueAt(fault, after.film, setting),
    areaBefore_m2: before.area_m2[fault.kind],
    areaAfter_m2: after.area_m2[fault.kind],
    inTargetBefore: before.inTarget,
    inTargetAfter: after.inTarget,
    worsens: LAID_KINDS.filter((kind) => isWorse(before.area_m2[kind], after.area_m2[kind])),
  };
}

/** The judged value at the place of the fault's worst zone. */
function valueAt(fault: Fault, film: Film, { target }: CoatSetting): number {
  const [x, y] = (fault.zones[0] as Zone).at_m;
  const cell = cellAt(film.grid, x, y);
  if (fault.kind === 'dry-spray') return dryShare(film.arrivedDry_m[cell] as number, film.wet_m[cell] as number);
  return judgedFilm(film, target)[cell] as number;
}

/** No area of any kind of fault. */
export function noAreas(): Record<FaultKind, number> {
  return { holiday: 0, 'thin-lap': 0, 'heavy-spot': 0, 'dry-spray': 0, run: 0, 'orange-peel': 0, 'dry-lap': 0, blush: 0, blister: 0, pinhole: 0, 'over-thick': 0 };
}

/** Whether a kind of fault has grown by more than its noise. */
export function isWorse(before_m2: number, after_m2: number): boolean {
  return after_m2 - before_m2 > Math.max(WORSE_m2, WORSE_SHARE * before_m2);
}

function helps(fault: Fault, cure: Cure, { target }: CoatSetting): boolean {
  const was = (fault.zones[0] as Zone).margin;
  const left = marginOf(fault.kind, cure.worst, target);
  return left <= (1 - LEAST_HELP) * was && cure.areaAfter_m2 <= cure.areaBefore_m2 && cure.inTargetAfter >= cure.inTargetBefore;
}

/** Whether nothing better need be looked for. */
function mends(fault: Fault, cure: Cure): boolean {
  return cure.worsens.length === 0 && cure.areaBefore_m2 - cure.areaAfter_m2 >= GONE_SHARE * fault.area_m2;
}

function isBetter(cure: Cure, than: Cure): boolean {
  if (cure.worsens.length !== than.worsens.length) return cure.worsens.length < than.worsens.length;
  return cure.inTargetAfter > than.inTargetAfter;
}
