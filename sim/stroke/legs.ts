import type { Track } from './track.ts';

/** Assumed: going back less than this is a wobble, not a new stroke. */
const BACK_M = 0.025;
/** A stroke bent farther than this, and than a quarter of its chord, is two strokes round a corner. */
const BENT_M = 0.1;
const BENT_SHARE = 0.25;
/** Heading more than 60° off the stroke belongs to the turn. */
const TURN_COSINE = 0.5;

/**
 * The samples at which a held trigger goes from one stroke to the next: where the travel goes back
 * by more than 25 mm (the cut lies in the middle of the turn), and at corners where a stroke bends
 * by more than 100 mm and a quarter of its chord. Cost: the samples, once; twice more for bends.
 * @returns cuts rising, without the ends.
 */
export function legCuts(track: Track): number[] {
  const turns = turningCuts(track);
  const ends = [0, ...turns, track.count - 1];
  const cuts = new Set(turns);
  for (let i = 0; i + 1 < ends.length; i++) addCorners(track, ends[i] as number, ends[i + 1] as number, cuts);
  return [...cuts].sort((a, b) => a - b);
}

function turningCuts(track: Track): number[] {
  const cuts: number[] = [];
  let start = 0;
  let far = 0;
  let reach_m = 0;
  for (let i = 1; i < track.count; i++) {
    const distance_m = apart_m(track, start, i);
    if (distance_m >= reach_m) {
      reach_m = distance_m;
      far = i;
      continue;
    }
    if (reach_m < BACK_M || goneBack_m(track, start, far, i) < BACK_M) continue;
    start = turnMiddle(track, start, far, i);
    cuts.push(start);
    far = start;
    reach_m = 0;
    i = start;
  }
  return cuts;
}

function apart_m(track: Track, a: number, b: number): number {
  return Math.hypot((track.x_m[b] as number) - (track.x_m[a] as number), (track.y_m[b] as number) - (track.y_m[a] as number));
}

/** How far sample `i` lies behind the farthest one, along the way from the start to it. */
function goneBack_m(track: Track, start: number, far: number, i: number): number {
  const dx = (track.x_m[far] as number) - (track.x_m[start] as number);
  const dy = (track.y_m[far] as number) - (track.y_m[start] as number);
  const back = ((track.x_m[far] as number) - (track.x_m[i] as number)) * dx + ((track.y_m[far] as number) - (track.y_m[i] as number)) * dy;
  return back / Math.hypot(dx, dy);
}

/** Middle of the samples round the farthest one that head neither onward nor back. */
function turnMiddle(track: Track, start: number, far: number, noticed: number): number {
  const late = start + Math.floor((far - start) * 0.8);
  const dx = (track.x_m[late] as number) - (track.x_m[start] as number);
  const dy = (track.y_m[late] as number) - (track.y_m[start] as number);
  const length = Math.hypot(dx, dy);
  const heading = (i: number) => {
    const vx = track.vx_m_s[i] as number;
    const vy = track.vy_m_s[i] as number;
    return (vx * dx + vy * dy) / (length * Math.hypot(vx, vy));
  };
  let before = far;
  while (before > late && !(heading(before) > TURN_COSINE)) before--;
  let after = far;
  while (after < noticed && !(heading(after) < -TURN_COSINE)) after++;
  return Math.max(start + 1, (before + after) >> 1);
}

/** Cuts a leg at its farthest place from the chord for as long as it bends too much. */
function addCorners(track: Track, from: number, to: number, cuts: Set<number>): void {
  const open: [number, number][] = [[from, to]];
  for (let leg = open.pop(); leg !== undefined; leg = open.pop()) {
    const [a, b] = leg;
    const corner = farthestFromChord(track, a, b);
    if (corner === a) continue;
    cuts.add(corner);
    open.push([a, corner], [corner, b]);
  }
}

/** The sample farthest from the chord, or `a` where the leg is straight enough. */
function farthestFromChord(track: Track, a: number, b: number): number {
  const x0 = track.x_m[a] as number;
  const y0 = track.y_m[a] as number;
  const dx = (track.x_m[b] as number) - x0;
  const dy = (track.y_m[b] as number) - y0;
  const chord_m = Math.hypot(dx, dy);
  let worst_m = Math.max(BENT_M, BENT_SHARE * chord_m);
  let corner = a;
  for (let i = a + 1; i < b; i++) {
    const away_m = Math.abs(((track.y_m[i] as number) - y0) * dx - ((track.x_m[i] as number) - x0) * dy) / chord_m;
    if (!(away_m > worst_m)) continue;
    worst_m = away_m;
    corner = i;
  }
  return corner;
}
