import { checkRange } from '../base/check.ts';
import { median } from './median.ts';
import { aimOf, type Path, poseOfRow, rowAt } from './path.ts';
import { type LaidPath, PathDraft } from './pathDraft.ts';
import { findStops } from './stops.ts';
import type { Stroke } from './stroke.ts';
import { smoothTrack, type Track } from './track.ts';

/** Rows that would stand nearer than this to the one before are left out. */
const LEAST_STEP_S = 0.005;

/**
 * The path with the chosen strokes at an even aim speed: their rows keep their places and get new
 * times by the smoothed travel, rows that would crowd (a stop's) are left out, later rows move in
 * time. The trigger keeps its places. @throws `range` for a speed outside 0.01 to 5 m/s.
 */
export function evenSpeed(laid: LaidPath, chosen: readonly number[], speed_m_s: number): LaidPath {
  checkRange({ name: 'evenSpeed: speed', value: speed_m_s, low: 0.01, high: 5, unit: 'm/s', advice: 'give a travel speed such as 0.3 m/s' });
  const draft = new PathDraft(laid);
  for (const index of chosen) {
    const stroke = laid.strokes[index] as Stroke;
    const track = trackOf(laid.path, stroke);
    const travelled = travelledAt(track);
    let owed_s = 0;
    for (let row = stroke.firstRow + 1; row <= stroke.lastRow; row++) {
      const step_m = travelled(laid.path.t_s[row] as number) - travelled(laid.path.t_s[row - 1] as number);
      owed_s += step_m / speed_m_s;
      if (owed_s < LEAST_STEP_S && row < stroke.lastRow) {
        draft.drop(row);
        continue;
      }
      draft.steps_s[row] = owed_s;
      owed_s = 0;
    }
  }
  return draft.finish();
}

/**
 * The path with the stops of the chosen strokes taken out: the rows of each stop go, and the way
 * across it is travelled at the stroke's median speed.
 */
export function withoutStops(laid: LaidPath, chosen: readonly number[]): LaidPath {
  const draft = new PathDraft(laid);
  for (const index of chosen) {
    const stroke = laid.strokes[index] as Stroke;
    const track = trackOf(laid.path, stroke);
    const stops = findStops(track);
    const speed_m_s = movingSpeed_m_s(track, stroke);
    for (const stop of stops) {
      const before = Math.max(stroke.firstRow, rowAt(laid.path, stop.start_s));
      const after = Math.min(stroke.lastRow, rowAt(laid.path, stop.start_s + stop.duration_s) + 1);
      for (let row = before + 1; row < after; row++) draft.drop(row);
      const way_m = apart_m(laid.path, before, after);
      draft.steps_s[after] = Math.max(LEAST_STEP_S, way_m / speed_m_s);
    }
  }
  return draft.finish();
}

function trackOf(path: Path, stroke: Stroke): Track {
  return smoothTrack(path, path.t_s[stroke.firstRow] as number, path.t_s[stroke.lastRow] as number);
}

/** Length travelled from the track's start to a time, by the smoothed speed. */
function travelledAt(track: Track): (t_s: number) => number {
  const lengths = new Float64Array(track.count);
  const speed = (i: number) => Math.hypot(track.vx_m_s[i] as number, track.vy_m_s[i] as number);
  for (let i = 1; i < track.count; i++) lengths[i] = (lengths[i - 1] as number) + ((speed(i - 1) + speed(i)) / 2) * track.step_s;
  return (t_s) => {
    const place = Math.min(track.count - 1, Math.max(0, (t_s - track.start_s) / track.step_s));
    const i = Math.min(track.count - 2, Math.floor(place));
    return (lengths[i] as number) + (place - i) * ((lengths[i + 1] as number) - (lengths[i] as number));
  };
}

/** Median speed of the moving samples; what was meant where it never moved. */
function movingSpeed_m_s(track: Track, stroke: Stroke): number {
  const moving = Array.from(track.vx_m_s, (vx, i) => Math.hypot(vx, track.vy_m_s[i] as number)).filter((speed) => speed > 0.05);
  return moving.length > 0 ? median(moving) : Math.max(0.05, Number.isFinite(stroke.meant.speed_m_s) ? stroke.meant.speed_m_s : 0);
}

function apart_m(path: Path, a: number, b: number): number {
  const from = aimOf(poseOfRow(path, a));
  const to = aimOf(poseOfRow(path, b));
  return Math.hypot(to.x_m - from.x_m, to.y_m - from.y_m);
}
