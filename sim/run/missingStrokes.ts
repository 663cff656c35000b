import { explainedShare, LEAST_EXPLAINED, PREFERENCE } from '../verdict/attribution.ts';
import type { Cause, Zone } from '../verdict/verdict.ts';
import { plannedStrokes } from './changedStrokes.ts';
import type { Travel } from './lay.ts';
import { filmsAtPlaces, type PlaceFilms, valuesAt } from './placeFilms.ts';
import type { CoatSetting, CoatStrokes } from './result.ts';
import type { MeantStroke, Stroke } from '../stroke/stroke.ts';

/** Ends of two lines nearer than this are one line's. */
const SAME_LINE_m = 1e-6;

/**
 * The strokes of a recorded coat's plan that no recorded stroke was matched to, with the plan's own
 * path and indices; none for a coat laid by its plan.
 */
export function missingStrokes(setting: CoatSetting, strokes: CoatStrokes): Travel {
  const planned = plannedStrokes(setting, setting.plan);
  if (strokes.source === 'plan') return { path: planned.path, strokes: [] };
  const laid = strokes.strokes.map(({ meant }) => meant).filter(({ source }) => source === 'plan');
  return { path: planned.path, strokes: planned.strokes.filter(({ meant }) => !laid.some((other) => isSameLine(meant, other))) };
}

function isSameLine(a: MeantStroke, b: MeantStroke): boolean {
  const apart = (p: readonly [number, number], q: readonly [number, number]): number => Math.hypot(p[0] - q[0], p[1] - q[1]);
  const along = Math.max(apart(a.start_m, b.start_m), apart(a.end_m, b.end_m));
  const against = Math.max(apart(a.start_m, b.end_m), apart(a.end_m, b.start_m));
  return Math.min(along, against) < SAME_LINE_m;
}

/** Asks of zones whether strokes that nobody sprayed are their cause: by laying those too. */
export class MissingStrokes {
  private readonly films: PlaceFilms | null;

  constructor(
    private readonly setting: CoatSetting,
    strokes: CoatStrokes,
    places_m: Float64Array,
  ) {
    const missing = missingStrokes(setting, strokes);
    this.films = missing.strokes.length === 0 ? null : filmsAtPlaces(setting, missing, places_m);
  }

  /** @param explained the share that the hand's best habit explains; a missing stroke goes before it unless it explains more. */
  causeOf(zone: Zone, range: readonly [number, number], found: PlaceFilms, explained: number): Cause | null {
    if (this.films === null || zone.kind === 'dry-spray') return null;
    const { target } = this.setting;
    const values = valuesAt(found, zone.kind, range, target);
    const added = valuesAt(this.films, zone.kind, range, target);
    const explains = explainedShare(zone.kind, values, values.map((value, i) => value + (added[i] as number)), target);
    if (explains < LEAST_EXPLAINED || explains + PREFERENCE < explained) return null;
    const strokes = [...this.films.byStroke].filter(([, film]) => film.subarray(...range).some((thickness) => thickness > 0)).map(([stroke]) => stroke);
    return { kind: 'missing-stroke', strokes, found: NaN, meant: NaN, unit: '', explains };
  }
}

/** The planned strokes of these indices, as a travel of the plan. */
export function strokesOfPlan(setting: CoatSetting, indices: readonly number[]): Travel {
  const { path, strokes } = plannedStrokes(setting, setting.plan);
  return { path, strokes: indices.map((index) => strokes[index]).filter((stroke): stroke is Stroke => stroke !== undefined) };
}
