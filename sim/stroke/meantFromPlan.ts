import type { Path } from './path.ts';
import type { MeantStroke, Stroke } from './stroke.ts';
import { fitLine, type StrokeLine } from './strokeLine.ts';
import { smoothTrack } from './track.ts';

/** A recorded stroke more than this off a planned one's direction is not that stroke. */
const OTHER_WAY_COSINE = Math.cos(Math.PI / 4);

/**
 * Gives recorded strokes the plan's figures for what was meant. Within each pass, where the
 * recording has as many strokes as the plan, they are matched in order (or in the opposite order, if
 * that lies nearer), since a stroke far off its line is still that stroke; otherwise each takes the
 * nearest planned line. Start and end are turned to the recorded sense. A stroke that runs along no
 * planned line (more than 45° off) keeps what it had.
 * @param recorded strokes of `path`. @param planned strokes of a plan, with their places.
 */
export function meantFromPlan(path: Path, recorded: readonly Stroke[], planned: readonly Stroke[]): Stroke[] {
  const lines = recorded.map(({ firstRow, lastRow }) => fitLine(smoothTrack(path, path.t_s[firstRow] as number, path.t_s[lastRow] as number)));
  const matches = new Map<number, MeantStroke>();
  for (const pass of new Set(recorded.map((stroke) => stroke.pass))) {
    const indices = recorded.flatMap((stroke, i) => (stroke.pass === pass ? [i] : []));
    const passLines = indices.map((i) => lines[i] as StrokeLine);
    matchPass(passLines, candidatesFor(passLines, planned, pass)).forEach((meant, k) => {
      if (meant !== null) matches.set(indices[k] as number, meant);
    });
  }
  return recorded.map((stroke, i) => {
    const meant = matches.get(i);
    return meant === undefined ? stroke : { ...stroke, meant: inSense(meant, lines[i] as StrokeLine) };
  });
}

/** The planned pass of the same number if it runs the same way, else every planned stroke. */
function candidatesFor(lines: readonly StrokeLine[], planned: readonly Stroke[], pass: number): MeantStroke[] {
  const same = planned.filter((stroke) => stroke.pass === pass).map(({ meant }) => meant);
  const alike = same.length > 0 && lines.some((line) => same.some((meant) => runsAlong(line, meant)));
  return alike ? same : planned.map(({ meant }) => meant);
}

function matchPass(lines: readonly StrokeLine[], planned: readonly MeantStroke[]): (MeantStroke | null)[] {
  const nearest = () => lines.map((line) => nearestOf(line, planned));
  if (lines.length !== planned.length) return nearest();
  const reversed = [...planned].reverse();
  const ordered = totalDistance_m(lines, planned) <= totalDistance_m(lines, reversed) ? planned : reversed;
  const isInOrder = lines.every((line, i) => runsAlong(line, ordered[i] as MeantStroke));
  return isInOrder ? [...ordered] : nearest();
}

function totalDistance_m(lines: readonly StrokeLine[], planned: readonly MeantStroke[]): number {
  return lines.reduce((sum, line, i) => sum + distance_m(line, planned[i] as MeantStroke), 0);
}

function nearestOf(line: StrokeLine, planned: readonly MeantStroke[]): MeantStroke | null {
  let nearest: MeantStroke | null = null;
  let nearest_m = Infinity;
  for (const meant of planned) {
    if (!runsAlong(line, meant)) continue;
    const away_m = distance_m(line, meant);
    if (away_m >= nearest_m) continue;
    nearest = meant;
    nearest_m = away_m;
  }
  return nearest;
}

/** From the recorded stroke's middle to the planned line, held to its ends. */
function distance_m(line: StrokeLine, meant: MeantStroke): number {
  const middle = (line.from_m + line.to_m) / 2;
  const [x0, y0] = meant.start_m;
  const dx = meant.end_m[0] - x0;
  const dy = meant.end_m[1] - y0;
  const x = line.x_m + middle * line.dx - x0;
  const y = line.y_m + middle * line.dy - y0;
  const share = Math.min(1, Math.max(0, (x * dx + y * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - share * dx, y - share * dy);
}

/** Cosine between a recorded and a planned direction. */
function agreement(line: StrokeLine, meant: MeantStroke): number {
  const dx = meant.end_m[0] - meant.start_m[0];
  const dy = meant.end_m[1] - meant.start_m[1];
  return (dx * line.dx + dy * line.dy) / Math.hypot(dx, dy);
}

function runsAlong(line: StrokeLine, meant: MeantStroke): boolean {
  return Math.abs(agreement(line, meant)) > OTHER_WAY_COSINE;
}

function inSense(meant: MeantStroke, line: StrokeLine): MeantStroke {
  return agreement(line, meant) < 0 ? { ...meant, start_m: meant.end_m, end_m: meant.start_m } : meant;
}
