import type { TaskSpec } from '../../job/session.ts';
import type { OtherFilm } from '../../report/reportedDebrief.ts';
import type { Stroke, StrokeMeasures } from '../../stroke/stroke.ts';
import type { StrokeTrace } from '../../stroke/traces.ts';
import { JUDGED_COVER, judgedFilm } from '../../verdict/judged.ts';
import type { SessionFigures } from '../../verdict/score.ts';
import type { Fault, FaultKind } from '../../verdict/verdict.ts';
import type { CoatSetting, CoatStrokes, LaidCoat } from '../result.ts';

/** What a session is marked from. */
export interface SessionParts {
  readonly task: TaskSpec;
  readonly setting: CoatSetting;
  readonly strokes: CoatStrokes;
  readonly traces: readonly StrokeTrace[];
  readonly laid: LaidCoat;
  /** Of the film as laid and of its life. */
  readonly faults: readonly Fault[];
  readonly sprayed: OtherFilm;
  readonly planned: OtherFilm;
}

/** Tilt is judged by what is exceeded for this share of the time. */
const TILT_RANK = 0.95;
/**
 * A stroke's end is right where fluid comes on, or goes off, outside the edge by up to this, m.
 * Assumed: twice the 50 to 100 mm of common practice, less what is plainly wasted.
 */
const FARTHEST_LEAD_M = 0.15;
/** Places are good to about half a millimetre, and a plan may open on the edge itself, m. */
const EDGE_SLACK_M = 1e-3;
/** The gun moves at a trigger point where it has this share of the speed that was meant. Assumed. */
const MOVING_SHARE = 0.5;
/** A trigger point's speed is read this long inside the stroke, clear of the smoothing, s. */
const END_S = 0.05;

/** The figures of a session by measure: those of the hand from its traces, those of the film from its verdicts. */
export function sessionFigures(parts: SessionParts): SessionFigures {
  const { strokes, traces, laid, faults, sprayed, planned, task, setting } = parts;
  return {
    distance: rootMeanSquare(traces, strokes.strokes, ({ distance_m }, k, { meant }) => (distance_m[k] as number) - meant.distance_m),
    speed: rootMeanSquare(traces, strokes.strokes, ({ speed_m_s }, k, { meant }) => (speed_m_s[k] as number) / meant.speed_m_s - 1),
    angle: ranked(traces.flatMap(({ tilt_rad }) => [...tilt_rad])),
    overlap: overlapError(strokes),
    trigger: rightEnds(traces, strokes),
    stops: traces.length === 0 ? null : strokes.measures.reduce((sum, { stops }) => sum + stops.reduce((all, stop) => all + stop.duration_s, 0), 0),
    coverage: coverage(setting, laid),
    evenness: sprayed.figures.mean_m > 0 ? sprayed.figures.cv : null,
    runs: areaShare('run', faults, setting),
    'dry-laps': areaShare('dry-lap', faults, setting),
    dust: areaShare('dry-spray', faults, setting),
    paint: beyond(laid.account.sprayed_m3, planned.account.sprayed_m3),
    time: traces.length === 0 ? null : beyond(sprayed.duration_s, planned.duration_s + task.wait_s),
  };
}

/** How far a stroke is off what was meant, of one measure of the hand; NaN for a measure of the film.  */
export function strokeError(measure: keyof SessionFigures, trace: StrokeTrace, stroke: Stroke, measures: StrokeMeasures): number {
  switch (measure) {
    case 'distance':
      return rootMeanSquare([trace], [stroke], ({ distance_m }, k) => (distance_m[k] as number) - stroke.meant.distance_m) ?? NaN;
    case 'speed':
      return rootMeanSquare([trace], [stroke], ({ speed_m_s }, k) => (speed_m_s[k] as number) / stroke.meant.speed_m_s - 1) ?? NaN;
    case 'angle':
      return ranked([...trace.tilt_rad]) ?? NaN;
    case 'overlap':
      return Math.abs((measures.overlap?.meanFraction ?? NaN) - stroke.meant.overlapFraction);
    case 'stops':
      return measures.stops.reduce((sum, { duration_s }) => sum + duration_s, 0);
    case 'trigger':
      return endsOf(trace, stroke, measures).filter((isRight) => !isRight).length;
    case 'coverage':
    case 'evenness':
    case 'runs':
    case 'dry-laps':
    case 'dust':
    case 'paint':
    case 'time':
      return NaN;
  }
}

type ErrorAt = (trace: StrokeTrace, sample: number, stroke: Stroke) => number;

/** Root mean square over the time with fluid on; null without strokes. @param strokes by the traces' order. */
function rootMeanSquare(traces: readonly StrokeTrace[], strokes: readonly Stroke[], errorAt: ErrorAt): number | null {
  let squares = 0;
  let time_s = 0;
  traces.forEach((trace, i) => {
    for (let k = 0; k < trace.t_s.length; k++) {
      const error = errorAt(trace, k, strokes[i] as Stroke);
      // Where nobody can say what was meant there is no error.
      if (Number.isNaN(error)) continue;
      squares += error * error * trace.step_s;
      time_s += trace.step_s;
    }
  });
  return time_s > 0 ? Math.sqrt(squares / time_s) : null;
}

function ranked(values: number[]): number | null {
  if (values.length === 0) return null;
  values.sort((a, b) => a - b);
  return values[Math.floor(TILT_RANK * (values.length - 1))] as number;
}

function overlapError({ strokes, measures }: CoatStrokes): number | null {
  const errors = measures.flatMap(({ overlap }, i) => (overlap === null ? [] : [overlap.meanFraction - (strokes[i] as Stroke).meant.overlapFraction])).filter(Number.isFinite);
  return errors.length === 0 ? null : Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);
}

/** Share of the stroke ends at an edge that are right; null where no stroke meets an edge. */
function rightEnds(traces: readonly StrokeTrace[], { strokes, measures }: CoatStrokes): number | null {
  const ends = traces.flatMap((trace, i) => endsOf(trace, strokes[i] as Stroke, measures[i] as StrokeMeasures));
  return ends.length === 0 ? null : ends.filter((isRight) => isRight).length / ends.length;
}

/** For each end of a stroke that meets an edge, whether the fluid came on or went off outside it with the gun moving. */
function endsOf(trace: StrokeTrace, { meant }: Stroke, { triggerOn_m, triggerOff_m }: StrokeMeasures): boolean[] {
  const last = trace.t_s.length - 1;
  const inside = Math.min(last, Math.round(END_S / trace.step_s));
  const isRight = (outside_m: number, sample: number) =>
    outside_m >= -EDGE_SLACK_M && outside_m <= FARTHEST_LEAD_M && (trace.speed_m_s[sample] as number) >= MOVING_SHARE * meant.speed_m_s;
  return [
    ...(triggerOn_m === null ? [] : [isRight(triggerOn_m, inside)]),
    ...(triggerOff_m === null ? [] : [isRight(triggerOff_m, last - inside)]),
  ];
}

/** Share of the judged area with at least the thinnest film that the target allows. */
function coverage({ panelGrid, target }: CoatSetting, { film }: LaidCoat): number {
  const value_m = judgedFilm(film, target);
  const least_m = target.minFraction * target.thickness_m;
  let area = 0;
  let covered = 0;
  panelGrid.cover.forEach((share, cell) => {
    if (share < JUDGED_COVER) return;
    area += share;
    if ((value_m[cell] as number) >= least_m) covered += share;
  });
  return area > 0 ? covered / area : 0;
}

function areaShare(kind: FaultKind, faults: readonly Fault[], { panel }: CoatSetting): number {
  return faults.reduce((sum, fault) => sum + (fault.kind === kind ? fault.area_m2 : 0), 0) / panel.area_m2;
}

/** By what share a value lies beyond another; 0 below it. */
function beyond(value: number, meant: number): number | null {
  return meant > 0 ? Math.max(0, value / meant - 1) : null;
}
