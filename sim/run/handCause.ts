import type { PlaceFilms } from './placeFilms.ts';
import type { Path } from '../stroke/path.ts';
import { aimOf, poseOfRow } from '../stroke/path.ts';
import type { Stroke, StrokeMeasures } from '../stroke/stroke.ts';
import type { Cause, CauseKind, Zone } from '../verdict/verdict.ts';
import { isLack } from '../verdict/judged.ts';
import { meantLead_m } from './changedStrokes.ts';
import type { CoatSetting, CoatStrokes } from './result.ts';
import type { Habit } from './habits.ts';
import { fanWidthRatio } from './fan.ts';
import { offsetToLine_m } from './meantLines.ts';
import { overlapAt } from './overlapAt.ts';

/** A stroke is named beside the chief one where it does at least this share of its harm. */
const NAMED_SHARE = 0.5;

/** An overlap off by less than this is as meant. */
const LEAST_OVERLAP_ERROR = 0.02;

const CAUSE_OF: Readonly<Record<Habit, CauseKind>> = {
  'no-stops': 'stop',
  'even-speed': 'speed',
  'square-gun': 'angle',
  'even-distance': 'distance',
  'trigger-past-edge': 'trigger',
  'move-strokes': 'overlap',
};

/** A zone, its places in the films, and the films before and after the habit was corrected. */
export interface ZoneEvidence {
  readonly zone: Zone;
  /** The zone's places in the films: the first is its worst place. */
  readonly first: number;
  readonly last: number;
  readonly found: PlaceFilms;
  readonly corrected: PlaceFilms;
}

/**
 * The cause that a habit's correction points to: the strokes whose film changed most at the
 * zone's places, and what the hand did there against what was meant.
 */
export function handCause(
  habit: Habit,
  evidence: ZoneEvidence,
  setting: CoatSetting,
  strokes: CoatStrokes,
  explains: number,
): Cause {
  if (habit === 'move-strokes') return placingCause(evidence, setting, strokes, explains);
  const named = harmfulStrokes(evidence);
  const chief = named[0];
  const figures = chief === undefined ? NO_FIGURE : figuresOf(habit, chief, evidence, setting, strokes);
  return { kind: CAUSE_OF[habit], strokes: named, ...figures, explains };
}

type Figures = Pick<Cause, 'found' | 'meant' | 'unit'>;
const NO_FIGURE: Figures = { found: NaN, meant: NaN, unit: '' };

/** Strokes by how much of the fault goes when they are corrected, the chief one first. */
function harmfulStrokes(evidence: ZoneEvidence): number[] {
  const harms: [number, number][] = [];
  for (const stroke of strokesThere(evidence)) {
    const harm = harmOf(stroke, evidence);
    if (harm > 0) harms.push([stroke, harm]);
  }
  harms.sort((a, b) => b[1] - a[1] || a[0] - b[0]);
  const most = harms[0]?.[1] ?? 0;
  return harms.filter(([, harm]) => harm >= NAMED_SHARE * most).map(([stroke]) => stroke);
}

/** Strokes that reach one of the zone's places, before or after the correction. */
function strokesThere({ found, corrected, first, last }: ZoneEvidence): Set<number> {
  const there = new Set<number>();
  for (const films of [found, corrected]) {
    for (const [stroke, film] of films.byStroke) {
      for (let i = first; i < last; i++) {
        if ((film[i] as number) > 0) there.add(stroke);
      }
    }
  }
  return there;
}

function harmOf(stroke: number, { zone, found, corrected, first, last }: ZoneEvidence): number {
  const before = found.byStroke.get(stroke);
  const after = corrected.byStroke.get(stroke);
  const sign = isLack(zone.kind) ? -1 : 1;
  let harm = 0;
  for (let i = first; i < last; i++) {
    const change = (before?.[i] ?? 0) - (after?.[i] ?? 0);
    // A dry arrival may go with more or less film: any change of the film counts there.
    harm += zone.kind === 'dry-spray' ? Math.abs(change) : sign * change;
  }
  return harm;
}

function figuresOf(
  habit: Exclude<Habit, 'move-strokes'>,
  chief: number,
  evidence: ZoneEvidence,
  setting: CoatSetting,
  strokes: CoatStrokes,
): Figures {
  const stroke = strokes.strokes[chief] as Stroke;
  const measures = strokes.measures[chief] as StrokeMeasures;
  const { at_m } = evidence.zone;
  switch (habit) {
    case 'no-stops':
      return { found: nearestStop_s(measures, at_m), meant: 0, unit: 's' };
    case 'even-speed':
      return { found: localSpeed_m_s(chief, stroke, evidence), meant: stroke.meant.speed_m_s, unit: 'm/s' };
    case 'square-gun':
      return { found: nearestAim(strokes.path, stroke, at_m).tilt_rad, meant: 0, unit: 'rad' };
    case 'even-distance':
      return { found: nearestAim(strokes.path, stroke, at_m).slant_m, meant: stroke.meant.distance_m, unit: 'm' };
    case 'trigger-past-edge':
      return triggerFigures(measures, at_m, setting);
  }
}

function nearestStop_s(measures: StrokeMeasures, at_m: readonly [number, number]): number {
  let duration = NaN;
  let nearest = Infinity;
  for (const stop of measures.stops) {
    const away = between(stop.at_m, at_m);
    if (away >= nearest) continue;
    nearest = away;
    duration = stop.duration_s;
  }
  return duration;
}

/** Film goes as 1/v, so the speed at the worst place follows from the films at the meant and the found speed. */
function localSpeed_m_s(chief: number, stroke: Stroke, { found, corrected, first, last }: ZoneEvidence): number {
  const before = found.byStroke.get(chief);
  const after = corrected.byStroke.get(chief);
  for (let i = first; i < last; i++) {
    const film = before?.[i] ?? 0;
    const even = after?.[i] ?? 0;
    if (film > 0 && even > 0) return (stroke.meant.speed_m_s * even) / film;
  }
  return NaN;
}

/** The aim of that row of a stroke whose aim point comes nearest to a place. */
function nearestAim(path: Path, stroke: Stroke, at_m: readonly [number, number]): ReturnType<typeof aimOf> {
  let best = aimOf(poseOfRow(path, stroke.firstRow));
  let nearest = between([best.x_m, best.y_m], at_m);
  for (let row = stroke.firstRow + 1; row <= stroke.lastRow; row++) {
    const aim = aimOf(poseOfRow(path, row));
    const away = between([aim.x_m, aim.y_m], at_m);
    if (away >= nearest) continue;
    nearest = away;
    best = aim;
  }
  return best;
}

function triggerFigures(measures: StrokeMeasures, at_m: readonly [number, number], setting: CoatSetting): Figures {
  const atStart = between(measures.start_m, at_m) <= between(measures.end_m, at_m);
  const found = atStart ? measures.triggerOn_m : measures.triggerOff_m;
  return { found: found ?? NaN, meant: meantLead_m(setting), unit: 'm' };
}

/**
 * A stroke that runs beside its meant line. Where a lap between two strokes is off at the zone's
 * worst place, the overlap is the cause; where none is, the outermost stroke is off the edge that it should fill.
 */
function placingCause(evidence: ZoneEvidence, setting: CoatSetting, strokes: CoatStrokes, explains: number): Cause {
  const sign = isLack(evidence.zone.kind) ? 1 : -1;
  let lap: Cause | null = null;
  let worst = LEAST_OVERLAP_ERROR;
  for (const index of strokesThere(evidence)) {
    const measures = strokes.measures[index] as StrokeMeasures;
    if (measures.overlap === null) continue;
    const found = overlapAt(strokes, measures, measures.overlap.neighbour, evidence.zone.at_m, fanWidthRatio(setting.setUp, setting.plan.distance_m));
    const meant = meantOverlap(strokes, index, setting);
    const error = sign * (meant - found);
    if (!(error > worst)) continue;
    worst = error;
    lap = { kind: 'overlap', strokes: [index], found, meant, unit: 'fraction', explains };
  }
  return lap ?? edgeCause(evidence, setting, strokes, explains);
}

function meantOverlap(strokes: CoatStrokes, index: number, { plan }: CoatSetting): number {
  const { overlapFraction } = (strokes.strokes[index] as Stroke).meant;
  return Number.isFinite(overlapFraction) ? overlapFraction : plan.overlapFraction;
}

/** How far the outermost stroke's middle runs from its meant line, as a first stroke's place from the edge. */
function edgeCause(evidence: ZoneEvidence, setting: CoatSetting, strokes: CoatStrokes, explains: number): Cause {
  const there = [...strokesThere(evidence)];
  const outermost = there.filter((index) => isOutermost(strokes, index));
  const [chief] = (outermost.length > 0 ? outermost : there).sort((a, b) => offLine_m(strokes, b) - offLine_m(strokes, a));
  const meant = setting.plan.firstStroke_m;
  if (chief === undefined) return { kind: 'edge', strokes: [], found: NaN, meant, unit: 'm', explains };
  return { kind: 'edge', strokes: [chief], found: meant + offLine_m(strokes, chief), meant, unit: 'm', explains };
}

/** Whether a stroke begins or ends its pass. */
function isOutermost(strokes: CoatStrokes, index: number): boolean {
  const pass = strokes.strokes[index]?.pass;
  return strokes.strokes[index - 1]?.pass !== pass || strokes.strokes[index + 1]?.pass !== pass;
}

/** Distance between the middle of a stroke as laid and its meant line, m; 0 where no line is known. */
function offLine_m(strokes: CoatStrokes, index: number): number {
  return Math.hypot(...offsetToLine_m(strokes.strokes[index] as Stroke, strokes.measures[index] as StrokeMeasures));
}

function between(a: readonly [number, number], b: readonly [number, number]): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
