import type { Warning } from '../base/errors.ts';
import { legCuts } from './legs.ts';
import { median } from './median.ts';
import { type Path, rowAt } from './path.ts';
import { sortIntoPasses } from './passes.ts';
import type { Stroke } from './stroke.ts';
import { fitLine, type StrokeLine } from './strokeLine.ts';
import { smoothTrack, type Track } from './track.ts';
import { triggerRuns } from './triggerRuns.ts';

/** A stroke found, before it has a pass and a meaning. */
interface Found {
  readonly firstRow: number;
  readonly lastRow: number;
  readonly line: StrokeLine;
  readonly distance_m: number;
  readonly speed_m_s: number;
}

/**
 * Finds the strokes of a path: one for each time that the trigger is held (chatter closed, see
 * `triggerRuns`), cut where the travel turns back or round a corner with fluid on (see `legCuts`).
 * A pause with fluid on stays inside its stroke; `measureStrokes` shows it as a stop. Places are
 * smoothed over 0.1 s first, so that a sensor's noise of some mm at 100 to 1000 Hz makes no turns.
 *
 * `meant` is what the session itself shows: medians of the strokes' mean distance and median speed;
 * speed NaN below 0.01 m/s; overlap from the median step between neighbours where `fanWidthPerDistance` is given, else NaN.
 * `meantFromPlan` puts a plan's figures in their place. Linear in rows; strokes squared for passes.
 * @param options.fanWidthPerDistance full fan width per m of gun distance.
 */
export function segmentPath(path: Path, options: { readonly fanWidthPerDistance?: number } = {}): { readonly strokes: readonly Stroke[]; readonly warnings: readonly Warning[] } {
  const { runs, warnings } = triggerRuns(path);
  const found: Found[] = [];
  for (const run of runs) {
    const track = smoothTrack(path, path.t_s[run.firstRow] as number, path.t_s[run.lastRow] as number);
    const ends = [0, ...legCuts(track), track.count - 1];
    let firstRow = run.firstRow;
    for (let i = 0; i + 1 < ends.length; i++) {
      const isLast = i + 2 === ends.length;
      const cut = ends[i + 1] as number;
      const lastRow = isLast ? run.lastRow : nearestRow(path, track.start_s + cut * track.step_s);
      if (lastRow <= firstRow) continue;
      found.push(describe(track, ends[i] as number, cut, firstRow, lastRow));
      firstRow = lastRow;
    }
  }
  if (found.length === 0) {
    return { strokes: [], warnings: [...warnings, { code: 'no-strokes', text: 'The trigger never opens long enough for a stroke; nothing is laid', place: {} }] };
  }
  return { strokes: asStrokes(found, options.fanWidthPerDistance ?? NaN), warnings };
}

function nearestRow(path: Path, t_s: number): number {
  const row = rowAt(path, t_s);
  const next = Math.min(row + 1, path.count - 1);
  return (path.t_s[next] as number) - t_s < t_s - (path.t_s[row] as number) ? next : row;
}

function describe(track: Track, first: number, last: number, firstRow: number, lastRow: number): Found {
  const speeds: number[] = [];
  let slant = 0;
  for (let i = first; i <= last; i++) {
    speeds.push(Math.hypot(track.vx_m_s[i] as number, track.vy_m_s[i] as number));
    slant += track.slant_m[i] as number;
  }
  return { firstRow, lastRow, line: fitLine(track, first, last), distance_m: slant / (last - first + 1), speed_m_s: median(speeds) };
}

/** The slowest travel that a plan may ask for. */
const LEAST_MEANT_M_S = 0.01;

function asStrokes(found: readonly Found[], fanWidthPerDistance: number): Stroke[] {
  const { passes, step_m } = sortIntoPasses(found.map(({ line }) => line));
  const distance_m = median(found.map((stroke) => stroke.distance_m));
  const median_m_s = median(found.map((stroke) => stroke.speed_m_s));
  // A session of standing bursts shows no speed that anyone could have meant.
  const speed_m_s = median_m_s >= LEAST_MEANT_M_S ? median_m_s : NaN;
  const overlapFraction = 1 - step_m / (fanWidthPerDistance * distance_m);
  return found.map(({ firstRow, lastRow }, index) => {
    const pass = passes[index] as number;
    const isFirst = index === 0 || passes[index - 1] !== pass;
    return {
      index,
      pass,
      firstRow,
      lastRow,
      meant: { source: 'median', distance_m, speed_m_s, overlapFraction: isFirst ? NaN : overlapFraction, start_m: [NaN, NaN], end_m: [NaN, NaN] },
    };
  });
}
