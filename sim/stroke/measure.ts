import { checkRange } from '../base/check.ts';
import type { Panel } from '../panel/panel.ts';
import { courseOf, type Course } from './course.ts';
import type { Lateral } from './lateral.ts';
import { median } from './median.ts';
import { neighbourOf, overlapBetween } from './overlap.ts';
import type { Path } from './path.ts';
import { findStops } from './stops.ts';
import { type Span, stripSpans, turnPanel } from './strip.ts';
import type { Stroke, StrokeMeasures } from './stroke.ts';
import type { StrokeLine } from './strokeLine.ts';
import type { Track } from './track.ts';

/** What technique is measured from. */
export interface MeasuredSession {
  readonly path: Path;
  readonly strokes: readonly Stroke[];
  readonly panel: Panel;
  /** Full fan width per m of gun distance: width / distance at which it was read. */
  readonly fanWidthPerDistance: number;
  /** From trigger to fluid, both ways. */
  readonly triggerLag_s: number;
}

/** Share of the pitch over the full fan where no overlap is known: half, as common practice has it. */
const USUAL_OVERLAP = 0.5;

/**
 * Technique measures of each stroke, over the time in which fluid flows (trigger rows shifted by
 * the lag). Speed, distance and tilt are of the smoothed course (see `smoothTrack`), weighted by
 * time; `low` and `high` are its extremes. Overlap is with the nearest earlier stroke of the pass
 * beside it, within the panel. Trigger points are measured along the stroke's line against the
 * first and last point of the panel within half a pitch of it (so that a stroke along an edge, or
 * over a slanted one, has its edge where a plan has it); null where no part of the panel lies
 * there, or the trigger moved more than a fan width inside it (a join, not an edge).
 *
 * Places are good to about 0.5 mm, speeds to about 2 % for a sensor's noise of 1 mm at 100 Hz.
 * Cost: rows, and strokes squared for the neighbours (a few operations each).
 * @throws `range` for a fan width of 0 or less, or a lag below 0.
 */
export function measureStrokes(session: MeasuredSession): StrokeMeasures[] {
  const { path, strokes, fanWidthPerDistance, triggerLag_s } = session;
  checkRange({ name: 'measureStrokes: fan width per distance', value: fanWidthPerDistance, low: 0.01, high: 20, advice: 'give the fan width over the distance at which it was read' });
  checkRange({ name: 'measureStrokes: trigger lag', value: triggerLag_s, low: 0, high: 1, unit: 's', advice: 'check the set-up' });
  const courses = strokes.map((stroke) => courseOf(path, stroke, triggerLag_s));
  const laterals = courses.map(({ lateral }) => lateral);
  const passes = strokes.map(({ pass }) => pass);
  const meantOverlaps = strokes.map(({ meant }) => meant.overlapFraction).filter((overlap) => !Number.isNaN(overlap));
  const usualOverlap = meantOverlaps.length > 0 ? median(meantOverlaps) : USUAL_OVERLAP;
  return strokes.map((stroke, i) => {
    const { track, lateral } = courses[i] as Course;
    const kinematics = measureTravel(track, lateral.line);
    const width_m = fanWidthPerDistance * kinematics.distance.mean_m;
    const own = panelSpans(session.panel, lateral.line, width_m * (1 - usualOverlap));
    const neighbour = neighbourOf(i, laterals, passes, width_m);
    const within: Span = [own[0]?.[0] ?? -Infinity, own.at(-1)?.[1] ?? Infinity];
    return {
      stroke: stroke.index,
      pass: stroke.pass,
      ...kinematics,
      overlap: neighbour < 0 ? null : overlapBetween(lateral, laterals[neighbour] as Lateral, neighbour, fanWidthPerDistance, stroke.meant.overlapFraction, within),
      ...triggerPoints(track, lateral.line, own, width_m),
      stops: findStops(track),
    };
  });
}

type Travel = Pick<StrokeMeasures, 'start_s' | 'duration_s' | 'start_m' | 'end_m' | 'length_m' | 'direction_rad' | 'speed' | 'distance' | 'tilt'>;

function measureTravel(track: Track, line: StrokeLine): Travel {
  const last = track.count - 1;
  const speeds = track.vx_m_s.map((vx, i) => Math.hypot(vx, track.vy_m_s[i] as number));
  const speed = spreadOf(speeds);
  const distance = spreadOf(track.slant_m);
  const tilt = spreadOf(track.tilt_rad);
  const duration_s = last * track.step_s;
  return {
    start_s: track.start_s,
    duration_s,
    start_m: [track.x_m[0] as number, track.y_m[0] as number],
    end_m: [track.x_m[last] as number, track.y_m[last] as number],
    length_m: speed.mean * duration_s,
    direction_rad: Math.atan2(line.dy, line.dx),
    speed: { mean_m_s: speed.mean, cv: speed.cv, low_m_s: speed.low, high_m_s: speed.high },
    distance: { mean_m: distance.mean, cv: distance.cv, low_m: distance.low, high_m: distance.high },
    tilt: { mean_rad: tilt.mean, worst_rad: tilt.high },
  };
}

/** Mean and spread of evenly timed samples, the two end ones at half weight (trapezoid rule). */
function spreadOf(values: Float64Array): { readonly mean: number; readonly cv: number; readonly low: number; readonly high: number } {
  const last = values.length - 1;
  let sum = 0;
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i <= last; i++) {
    const value = values[i] as number;
    sum += i === 0 || i === last ? value / 2 : value;
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  const mean = sum / last;
  let squares = 0;
  for (let i = 0; i <= last; i++) squares += ((values[i] as number) - mean) ** 2 * (i === 0 || i === last ? 0.5 : 1);
  return { mean, cv: mean === 0 ? 0 : Math.sqrt(squares / last) / mean, low, high };
}

/** The panel under a strip `width_m` wide along the line, measured from the line's own place. */
function panelSpans(panel: Panel, line: StrokeLine, width_m: number): Span[] {
  const turned = turnPanel(panel, Math.atan2(line.dy, line.dx));
  const centre_m = line.y_m * line.dx - line.x_m * line.dy;
  const origin_m = line.x_m * line.dx + line.y_m * line.dy;
  return stripSpans(turned, centre_m - width_m / 2, centre_m + width_m / 2).map(([from, to]) => [from - origin_m, to - origin_m]);
}

function triggerPoints(track: Track, line: StrokeLine, spans: readonly Span[], width_m: number): Pick<StrokeMeasures, 'triggerOn_m' | 'triggerOff_m'> {
  const along = (i: number) => ((track.x_m[i] as number) - line.x_m) * line.dx + ((track.y_m[i] as number) - line.y_m) * line.dy;
  const open_m = along(0);
  const close_m = along(track.count - 1);
  const entry = spans.find(([, to]) => to > open_m);
  const exit = spans.filter(([from]) => from < close_m).at(-1);
  const edgeOrNull = (outside_m: number) => (outside_m < -width_m ? null : outside_m);
  return {
    triggerOn_m: entry === undefined ? null : edgeOrNull(entry[0] - open_m),
    triggerOff_m: exit === undefined ? null : edgeOrNull(close_m - exit[1]),
  };
}
