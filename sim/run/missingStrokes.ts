import { pathFrom, type Pose, poseAt } from '../stroke/path.ts';
import type { MeantStroke, Stroke, StrokeMeasures } from '../stroke/stroke.ts';
import { explainedShare, LEAST_EXPLAINED, PREFERENCE } from '../verdict/attribution.ts';
import type { Cause, Zone } from '../verdict/verdict.ts';
import { plannedStrokes } from './changedStrokes.ts';
import { fanDepth_m } from './fan.ts';
import type { Travel } from './lay.ts';
import { filmsAtPlaces, type PlaceFilms, valuesAt } from './placeFilms.ts';
import type { CoatSetting, CoatStrokes } from './result.ts';

/** Ends of two lines nearer than this are one line's. */
const SAME_LINE_m = 1e-6;

/** The gun moves on for this long after the fluid stops, and stands so long before the next part. */
const RUN_OUT_s = 0.1;

/** What of a plan nobody sprayed, as a travel of its own, its strokes numbered from 0. */
export interface MissingTravel extends Travel {
  /** Index in the plan of each stroke of the travel; a planned stroke that broke off twice stands here twice. */
  readonly planned: readonly number[];
  /** Share of each planned stroke's line that was sprayed, 0 to 1, beside `planned`. */
  readonly sprayedShare: readonly number[];
}

/** A stretch of a planned stroke, m of travel from where its fluid opens. */
type Span = readonly [from_m: number, to_m: number];

/**
 * The strokes of a recorded coat's plan that no recorded stroke was matched to, and the stretches
 * of the others that lie open between two recorded strokes of the same line (a trigger let go in
 * mid-stroke, or seconds missing in the file) over more than the fan's depth. Ends of a line are left out: there
 * the trigger opened late or closed early. Nothing is missing in a coat laid by its plan.
 * @param chosen planned strokes to keep; all where not given.
 */
export function missingStrokes(setting: CoatSetting, strokes: CoatStrokes, chosen?: readonly number[]): MissingTravel {
  const rows: Pose[] = [];
  const parts: Stroke[] = [];
  const planned: number[] = [];
  const sprayedShare: number[] = [];
  const plan = strokes.source === 'plan' ? null : plannedStrokes(setting, setting.plan);
  for (const stroke of plan?.strokes ?? []) {
    if (chosen !== undefined && !chosen.includes(stroke.index)) continue;
    const length_m = lengthOf(stroke.meant);
    const open = openSpans(stroke, strokes, leastGap_m(setting));
    const open_m = open.reduce((sum, [from_m, to_m]) => sum + to_m - from_m, 0);
    for (const span of open) {
      const firstRow = rows.length;
      rows.push(...posesOf(plan as Travel, stroke, span, setting.spray.triggerLag_s, rows.at(-1)?.t_s ?? 0));
      parts.push({ ...stroke, index: parts.length, firstRow, lastRow: firstRow + 1 });
      planned.push(stroke.index);
      sprayedShare.push(1 - open_m / length_m);
    }
  }
  return { path: pathFrom(rows), strokes: parts, planned, sprayedShare };
}

/** Shorter openings are closed by the fan itself. */
function leastGap_m({ setUp, plan }: CoatSetting): number {
  return fanDepth_m(setUp, plan.distance_m);
}

/** The whole line where nobody sprayed it, else what lies open between the recorded strokes of it. */
function openSpans({ meant }: Stroke, strokes: CoatStrokes, leastGap_m: number): Span[] {
  const sprayed = strokes.strokes
    .filter((stroke) => stroke.meant.source === 'plan' && isSameLine(stroke.meant, meant))
    .map(({ index }) => sprayedSpan(strokes.measures[index] as StrokeMeasures, meant))
    .sort((a, b) => a[0] - b[0]);
  const length_m = lengthOf(meant);
  const [first] = sprayed;
  if (first === undefined) return [[0, length_m]];
  const open: Span[] = [];
  let reached_m = first[1];
  for (const [from_m, to_m] of sprayed.slice(1)) {
    const span: Span = [Math.max(0, reached_m), Math.min(length_m, from_m)];
    if (span[1] - span[0] > leastGap_m) open.push(span);
    reached_m = Math.max(reached_m, to_m);
  }
  return open;
}

function isSameLine(a: MeantStroke, b: MeantStroke): boolean {
  const along = Math.max(apart_m(a.start_m, b.start_m), apart_m(a.end_m, b.end_m));
  const against = Math.max(apart_m(a.start_m, b.end_m), apart_m(a.end_m, b.start_m));
  return Math.min(along, against) < SAME_LINE_m;
}

/** Where a recorded stroke lies along a planned line. */
function sprayedSpan(measures: StrokeMeasures, meant: MeantStroke): Span {
  const length_m = lengthOf(meant);
  const dx = (meant.end_m[0] - meant.start_m[0]) / length_m;
  const dy = (meant.end_m[1] - meant.start_m[1]) / length_m;
  const along = ([x, y]: readonly [number, number]): number => (x - meant.start_m[0]) * dx + (y - meant.start_m[1]) * dy;
  const ends = [along(measures.start_m), along(measures.end_m)] as const;
  return [Math.min(...ends), Math.max(...ends)];
}

/** Opening, closing, the fluid's last and the run-out of a stretch of a planned stroke, some time after what was laid before. */
function posesOf({ path }: Travel, stroke: Stroke, [from_m, to_m]: Span, lag_s: number, after_s: number): Pose[] {
  const first_s = path.t_s[stroke.firstRow] as number;
  const opens_s = first_s + from_m / stroke.meant.speed_m_s;
  const closes_s = first_s + to_m / stroke.meant.speed_m_s;
  const shift_s = after_s + RUN_OUT_s - opens_s;
  const times = [opens_s, closes_s, closes_s + lag_s + RUN_OUT_s];
  return times.map((t_s, i) => ({ ...poseAt(path, t_s), t_s: t_s + shift_s, trigger: i === 0 ? 1 : 0 }));
}

function lengthOf({ start_m, end_m }: MeantStroke): number {
  return apart_m(start_m, end_m);
}

function apart_m(a: readonly [number, number], b: readonly [number, number]): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** Asks of zones whether strokes that nobody sprayed are their cause: by laying those too. */
export class MissingStrokes {
  private readonly missing: MissingTravel;
  private readonly films: PlaceFilms | null;

  constructor(
    private readonly setting: CoatSetting,
    strokes: CoatStrokes,
    places_m: Float64Array,
  ) {
    this.missing = missingStrokes(setting, strokes);
    this.films = this.missing.strokes.length === 0 ? null : filmsAtPlaces(setting, this.missing, places_m);
  }

  /**
   * The missing strokes as the cause of a zone, or null. They go before the hand's best habit unless
   * that explains more; before a stroke's place in any case, since moving a stroke into the bare lane
   * mends it as well.
   */
  causeOf(zone: Zone, range: readonly [number, number], found: PlaceFilms, byHabit: Cause | null): Cause | null {
    if (this.films === null || zone.kind === 'dry-spray') return null;
    const { target } = this.setting;
    const values = valuesAt(found, zone.kind, range, target);
    const added = valuesAt(this.films, zone.kind, range, target);
    const explains = explainedShare(zone.kind, values, values.map((value, i) => value + (added[i] as number)), target);
    const isPlacing = byHabit?.kind === 'overlap' || byHabit?.kind === 'edge';
    const rival = byHabit === null || isPlacing ? 0 : byHabit.explains;
    if (explains < LEAST_EXPLAINED || explains + PREFERENCE < rival) return null;
    const parts = partsAt(this.films, range);
    const strokes = [...new Set(parts.map((part) => this.missing.planned[part] as number))];
    const sprayed = Math.max(...parts.map((part) => this.missing.sprayedShare[part] as number));
    return { kind: 'missing-stroke', strokes, found: sprayed, meant: 1, unit: 'fraction', explains };
  }
}

/** The parts that would lay film at a zone's places, the one that would lay most there first. */
function partsAt({ byStroke }: PlaceFilms, range: readonly [number, number]): number[] {
  const laid = [...byStroke].map(([part, film]) => [part, film.subarray(...range).reduce((sum, one) => sum + one, 0)] as const);
  const most = Math.max(...laid.map(([, sum]) => sum));
  return laid
    .filter(([, sum]) => sum > LEAST_PART * most)
    .sort((a, b) => b[1] - a[1] || a[0] - b[0])
    .map(([part]) => part);
}

/** A missing stroke that would lay less than this share of what the chief one would is not named. */
const LEAST_PART = 0.1;
