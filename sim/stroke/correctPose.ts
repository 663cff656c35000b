import { checkRange } from '../base/check.ts';
import { lateralOf } from './lateral.ts';
import { neighbourOf } from './overlap.ts';
import { aimOf, type Pose } from './path.ts';
import { type LaidPath, PathDraft } from './pathDraft.ts';
import type { Stroke } from './stroke.ts';
import { fitLine, type StrokeLine } from './strokeLine.ts';
import { smoothTrack } from './track.ts';

/** Before the trigger and after it the change holds for this long (the fluid's lag and run-out lie in it) … */
const HELD_S = 0.25;
/** … and fades over this long, so that the gun does not jump. */
const FADE_S = 0.3;
/** Neither takes more than this share of the turn, so that the next stroke's run-in keeps its place. */
const TURN_SHARE = 1 / 3;

/** The path with the chosen strokes at an even slant distance, aim and tilt kept. @throws `range` outside 0.02 to 1 m. */
export function evenDistance(laid: LaidPath, chosen: readonly number[], distance_m: number): LaidPath {
  checkRange({ name: 'evenDistance: distance', value: distance_m, low: 0.02, high: 1, unit: 'm', advice: 'give a gun distance such as 0.2 m' });
  return withPoses(laid, chosen, (pose) => aimedAt({ ...pose, z_m: distance_m * Math.cos(pose.pitch_rad) * Math.cos(pose.yaw_rad) }, aimOf(pose)));
}

/** The path with the gun square on the chosen strokes: tilt taken out, aim point and the nozzle's height kept. */
export function squareGun(laid: LaidPath, chosen: readonly number[]): LaidPath {
  return withPoses(laid, chosen, (pose) => aimedAt({ ...pose, pitch_rad: 0, yaw_rad: 0 }, aimOf(pose)));
}

/**
 * The path with each chosen stroke laid straight beside its neighbour (the nearest earlier stroke of
 * its pass, after that one's own move), on its own side of it, so that they overlap as given. A
 * stroke without a neighbour stays. Strokes after it do not follow unless they are chosen too.
 * @param fanWidthPerDistance full fan width per m of gun distance. @throws `range` for an overlap outside 0 to 0.95.
 */
export function moveStrokes(laid: LaidPath, chosen: readonly number[], overlapFraction: number, fanWidthPerDistance: number): LaidPath {
  checkRange({ name: 'moveStrokes: overlap', value: overlapFraction, low: 0, high: 0.95, advice: 'give a fraction from 0 to 0.95' });
  const { path, strokes } = laid;
  const passes = strokes.map(({ pass }) => pass);
  const distances: number[] = [];
  const laterals = strokes.map(({ firstRow, lastRow }) => {
    const track = smoothTrack(path, path.t_s[firstRow] as number, path.t_s[lastRow] as number);
    distances.push(track.slant_m.reduce((sum, slant) => sum + slant, 0) / track.count);
    return lateralOf(track, fitLine(track));
  });
  const draft = new PathDraft(laid);
  for (const index of [...chosen].sort((a, b) => a - b)) {
    const distance_m = distances[index] as number;
    const neighbour = neighbourOf(index, laterals, passes, fanWidthPerDistance * distance_m);
    const own = laterals[index];
    const beside = laterals[neighbour]?.line;
    if (own === undefined || beside === undefined) continue;
    const width_m = (fanWidthPerDistance * (distance_m + (distances[neighbour] as number))) / 2;
    const side = Math.sign(leftOf(beside, own.line.x_m, own.line.y_m)) || 1;
    const target_m = side * (1 - overlapFraction) * width_m;
    changePoses(draft, laid, index, (pose) => {
      const aim = aimOf(pose);
      const across_m = target_m - leftOf(beside, aim.x_m, aim.y_m);
      return { ...pose, x_m: pose.x_m - across_m * beside.dy, y_m: pose.y_m + across_m * beside.dx };
    });
    laterals[index] = { ...own, line: movedLine(own.line, beside, target_m) };
  }
  return draft.finish();
}

/** How far a place lies to the left of a line. */
function leftOf(line: StrokeLine, x_m: number, y_m: number): number {
  return (y_m - line.y_m) * line.dx - (x_m - line.x_m) * line.dy;
}

/** `line` turned parallel to `beside` and set at `across_m` from it. */
function movedLine(line: StrokeLine, beside: StrokeLine, across_m: number): StrokeLine {
  const shift_m = across_m - leftOf(beside, line.x_m, line.y_m);
  const sense = Math.sign(line.dx * beside.dx + line.dy * beside.dy) || 1;
  return { ...line, x_m: line.x_m - shift_m * beside.dy, y_m: line.y_m + shift_m * beside.dx, dx: sense * beside.dx, dy: sense * beside.dy };
}

/** Sets the nozzle's foot so that the gun aims at a place. */
function aimedAt(pose: Pose, aim: { readonly x_m: number; readonly y_m: number }): Pose {
  const reach = aimOf({ ...pose, x_m: 0, y_m: 0 });
  return { ...pose, x_m: aim.x_m - reach.x_m, y_m: aim.y_m - reach.y_m };
}

function withPoses(laid: LaidPath, chosen: readonly number[], change: (pose: Pose) => Pose): LaidPath {
  const draft = new PathDraft(laid);
  for (const index of chosen) changePoses(draft, laid, index, change);
  return draft.finish();
}

/** Changes the poses of one stroke, fading out in the turns before and after, never into another stroke. */
function changePoses(draft: PathDraft, laid: LaidPath, index: number, change: (pose: Pose) => Pose): void {
  const { path, strokes } = laid;
  const { firstRow, lastRow } = strokes[index] as Stroke;
  const start_s = path.t_s[firstRow] as number;
  const end_s = path.t_s[lastRow] as number;
  const lowest = strokes[index - 1]?.lastRow ?? -1;
  const highest = strokes[index + 1]?.firstRow ?? path.count;
  const alter = (row: number, outside_s: number, turn_s: number): boolean => {
    const held_s = Math.min(HELD_S, TURN_SHARE * turn_s);
    const fade_s = Math.min(FADE_S, TURN_SHARE * turn_s);
    const share = outside_s <= held_s ? 1 : 1 - (outside_s - held_s) / fade_s;
    if (!(share > 0)) return false;
    const pose = draft.poses[row] as Pose;
    draft.poses[row] = mixed(pose, change(pose), share);
    return true;
  };
  const time = (row: number) => path.t_s[row] as number;
  const turnBefore_s = lowest < 0 ? Infinity : start_s - time(lowest);
  const turnAfter_s = highest === path.count ? Infinity : time(highest) - end_s;
  for (let row = firstRow; row <= lastRow; row++) alter(row, 0, 0);
  for (let row = firstRow - 1; row > lowest && alter(row, start_s - time(row), turnBefore_s); row--);
  for (let row = lastRow + 1; row < highest && alter(row, time(row) - end_s, turnAfter_s); row++);
}

function mixed(a: Pose, b: Pose, share: number): Pose {
  const mix = (from: number, to: number) => from + share * (to - from);
  return {
    ...a,
    x_m: mix(a.x_m, b.x_m),
    y_m: mix(a.y_m, b.y_m),
    z_m: mix(a.z_m, b.z_m),
    pitch_rad: mix(a.pitch_rad, b.pitch_rad),
    yaw_rad: mix(a.yaw_rad, b.yaw_rad),
  };
}
