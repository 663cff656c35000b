import { type CausedZone, severity_m2 } from '../verdict/faults.ts';
import { bestExplanation, explainedShare, LEAST_EXPLAINED, type Trial } from '../verdict/attribution.ts';
import { representativePlaces } from '../verdict/places.ts';
import type { Cause, FaultKind, Zone } from '../verdict/verdict.ts';
import { correctedByHabit, isAsPlanned, plannedStrokes } from './changedStrokes.ts';
import { type Habit, HABITS } from './habits.ts';
import { handCause } from './handCause.ts';
import { MissingStrokes } from './missingStrokes.ts';
import { filmsAtPlaces, type PlaceFilms, valuesAt } from './placeFilms.ts';
import { changedPlan, type PlanTrial, planTrials } from './planTrials.ts';
import type { CoatSetting, CoatStrokes } from './result.ts';

/** Places that stand for one zone. */
const PLACES_PER_ZONE = 5;

/** Off square by less than this the film changes by under 3 %. Assumed: what a trained eye sees. */
const LEAST_SWING_rad = (10 * Math.PI) / 180;

/** Zones that are looked into, worst first; more than this on one panel is a coat to spray again. */
export const MOST_EXPLAINED = 100;

/** The zones of a coat and where their places lie in one list: zone i has places start[i] to start[i + 1]. */
interface Sites {
  readonly zones: readonly Zone[];
  readonly places_m: Float64Array;
  readonly start: Uint32Array;
}

/**
 * Names the cause of every zone by asking what the film would have been without it.
 *
 * At a few places of each zone the film is worked out again, stroke by stroke, with one habit of
 * the hand corrected at a time; the correction that takes the film nearest to the target, and
 * explains at least 35 % of the fault, is the cause. Of a recorded coat the film is also worked out
 * with the planned strokes laid that nobody sprayed. Where the planned coat would have been at
 * fault there too, the plan is judged in the same way: distance, mean film, edge, overlap. Where
 * nothing explains it, the cause is `unknown`.
 *
 * Cost: one path a habit and a few plans, each evaluated at `PLACES_PER_ZONE` places a zone.
 */
export function explainZones(setting: CoatSetting, strokes: CoatStrokes, zones: readonly Zone[]): CausedZone[] {
  const ordered = [...zones].sort((a, b) => severity_m2(b, setting.target) - severity_m2(a, setting.target));
  const sites = sitesOf(ordered.slice(0, MOST_EXPLAINED), setting);
  const found = filmsAtPlaces(setting, strokes, sites.places_m);
  const byHand = isAsPlanned(setting, strokes) ? new Map<Habit, PlaceFilms>() : habitFilms(setting, strokes, sites, found);
  const asPlanned = byHand.size === 0 ? found : filmsAtPlaces(setting, plannedStrokes(setting, setting.plan), sites.places_m);
  const planned = new PlannedFilms(setting, sites);
  const missing = new MissingStrokes(setting, strokes, sites.places_m);
  return ordered.map((zone, i) => {
    if (i >= sites.zones.length) return { zone, cause: unknownCause([], NaN) };
    const range: Range = [sites.start[i] as number, sites.start[i + 1] as number];
    const byHabit = causeInHand(zone, range, setting, strokes, found, byHand);
    const cause =
      missing.causeOf(zone, range, found, byHabit) ??
      byHabit ??
      causeInPlan(zone, range, setting, found, asPlanned, planned) ??
      unknownCause(strokesAt(found, range), 0);
    return { zone, cause };
  });
}

type Range = readonly [first: number, last: number];

function sitesOf(zones: readonly Zone[], { panelGrid }: CoatSetting): Sites {
  const lists = zones.map((zone) => representativePlaces(zone, panelGrid.grid, PLACES_PER_ZONE));
  const start = new Uint32Array(zones.length + 1);
  lists.forEach((list, i) => {
    start[i + 1] = (start[i] as number) + list.length / 2;
  });
  const places_m = new Float64Array(2 * (start[zones.length] as number));
  lists.forEach((list, i) => places_m.set(list, 2 * (start[i] as number)));
  return { zones, places_m, start };
}

function habitFilms(setting: CoatSetting, strokes: CoatStrokes, sites: Sites, found: PlaceFilms): Map<Habit, PlaceFilms> {
  const films = new Map<Habit, PlaceFilms>();
  if (sites.zones.length === 0) return films;
  for (const habit of HABITS) {
    const { travel, changed } = correctedByHabit(setting, strokes, habit);
    films.set(habit, filmsAtPlaces(setting, travel, sites.places_m, { films: found, changed }));
  }
  return films;
}

function causeInHand(
  zone: Zone,
  range: Range,
  setting: CoatSetting,
  strokes: CoatStrokes,
  found: PlaceFilms,
  byHand: ReadonlyMap<Habit, PlaceFilms>,
): Cause | null {
  const values = valuesAt(found, zone.kind, range, setting.target);
  const trials: Trial<Habit>[] = [...byHand].map(([name, films]) => ({
    name,
    values: valuesAt(films, zone.kind, range, setting.target),
  }));
  const causeBy = (left: readonly Trial<Habit>[]): Cause | null => {
    const best = bestExplanation(zone.kind, values, left, setting.target);
    if (best === null) return null;
    const evidence = { zone, first: range[0], last: range[1], found, corrected: byHand.get(best.name) as PlaceFilms };
    return handCause(best.name, evidence, setting, strokes, best.explains);
  };
  const cause = causeBy(trials);
  // Carrying the gun parallel to the panel also mends a distance: without a swing that is the cause.
  const isSwung = cause?.kind !== 'angle' || cause.found >= LEAST_SWING_rad;
  return isSwung ? cause : causeBy(trials.filter(({ name }) => name !== 'square-gun'));
}

/** Judges the plan, where laying exactly as planned leaves most of the fault standing. */
function causeInPlan(
  zone: Zone,
  range: Range,
  setting: CoatSetting,
  found: PlaceFilms,
  asPlanned: PlaceFilms,
  planned: PlannedFilms,
): Cause | null {
  const { target } = setting;
  const values = valuesAt(found, zone.kind, range, target);
  const plain = valuesAt(asPlanned, zone.kind, range, target);
  const handShare = explainedShare(zone.kind, values, plain, target);
  if (handShare > 1 - LEAST_EXPLAINED) return null;
  const tried = planned.trialsFor(zone.kind);
  const trials = tried.map(({ trial, films }) => ({
    name: trial.name,
    values: valuesAt(films, zone.kind, range, target),
  }));
  const best = bestExplanation(zone.kind, plain, trials, target);
  if (best !== null) {
    const { found: was, meant, unit } = (tried.find(({ trial }) => trial.name === best.name) as TriedPlan).trial;
    return { kind: best.name, strokes: [], found: was, meant, unit, explains: best.explains * (1 - handShare) };
  }
  if (zone.kind !== 'dry-spray') return null;
  return { kind: 'set-up', strokes: [], found: NaN, meant: NaN, unit: '', explains: 1 - handShare };
}

interface TriedPlan {
  readonly trial: PlanTrial;
  readonly films: PlaceFilms;
}

/** The films of changed plans at all places, each worked out when it is first asked for. */
class PlannedFilms {
  private readonly tried = new Map<boolean, readonly TriedPlan[]>();

  constructor(
    private readonly setting: CoatSetting,
    private readonly sites: Sites,
  ) {}

  trialsFor(kind: FaultKind): readonly TriedPlan[] {
    const dry = kind === 'dry-spray';
    let tried = this.tried.get(dry);
    if (tried === undefined) {
      tried = planTrials(this.setting, dry).map((trial) => ({ trial, films: this.filmsOf(trial) }));
      this.tried.set(dry, tried);
    }
    return tried;
  }

  private filmsOf(trial: PlanTrial): PlaceFilms {
    const strokes = plannedStrokes(this.setting, changedPlan(this.setting.plan, trial.change));
    return filmsAtPlaces(this.setting, strokes, this.sites.places_m);
  }
}

/** Strokes that reach a zone's places, the one that lays most at its worst place first. */
function strokesAt(films: PlaceFilms, [first, last]: Range): number[] {
  const there: [number, number][] = [];
  for (const [stroke, film] of films.byStroke) {
    if (film.subarray(first, last).some((thickness) => thickness > 0)) there.push([stroke, film[first] as number]);
  }
  return there.sort((a, b) => b[1] - a[1] || a[0] - b[0]).map(([stroke]) => stroke);
}

/** @param explains 0; NaN where no cause was sought. */
function unknownCause(strokes: readonly number[], explains: number): Cause {
  return { kind: 'unknown', strokes, found: NaN, meant: NaN, unit: '', explains };
}
