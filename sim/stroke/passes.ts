import { median } from './median.ts';
import { axialAngle_rad, besideLine, type StrokeLine } from './strokeLine.ts';

/** Strokes more than this apart in direction belong to different passes. */
const OTHER_WAY_RAD = Math.PI / 4;
/** A stroke shorter than this share of the usual one does not start a pass by its direction. */
const SHORT_SHARE = 0.3;
/** A stroke that lies this near (in usual steps) over one laid at least so many strokes ago starts a pass. */
const OVER_STEPS = 0.5;
const OVER_STROKES = 3;

/**
 * Sorts strokes, in time, into passes: a new one starts where the direction (whatever its sense)
 * leaves that of the pass by more than 45° on a stroke of usual length, or where a stroke goes over
 * ground that the pass covered three or more strokes ago, as when a second coat begins.
 * Cost: strokes squared, a few operations each.
 * @returns the pass of each stroke, and the usual step between neighbours (median; NaN if none).
 */
export function sortIntoPasses(lines: readonly StrokeLine[]): { readonly passes: number[]; readonly step_m: number } {
  const step_m = usualStep_m(lines);
  const usualLength_m = median(lines.map(length_m));
  const passes: number[] = [];
  let pass = 0;
  let first = 0;
  lines.forEach((line, i) => {
    const reference = longest(lines, first, i);
    const turnsAway = reference !== null && axialAngle_rad(line, reference) > OTHER_WAY_RAD && length_m(line) >= SHORT_SHARE * usualLength_m;
    if (turnsAway || liesOver(lines, first, i, step_m)) {
      pass++;
      first = i;
    }
    passes.push(pass);
  });
  return { passes, step_m };
}

function length_m(line: StrokeLine): number {
  return line.to_m - line.from_m;
}

/** The longest of the first few strokes of a pass shows its direction. */
function longest(lines: readonly StrokeLine[], first: number, end: number): StrokeLine | null {
  let found: StrokeLine | null = null;
  for (let i = first; i < Math.min(end, first + OVER_STROKES); i++) {
    const line = lines[i] as StrokeLine;
    if (found === null || length_m(line) > length_m(found)) found = line;
  }
  return found;
}

function liesOver(lines: readonly StrokeLine[], first: number, i: number, step_m: number): boolean {
  const line = lines[i] as StrokeLine;
  for (let j = first; j <= i - OVER_STROKES; j++) {
    const other = lines[j] as StrokeLine;
    if (axialAngle_rad(line, other) > OTHER_WAY_RAD) continue;
    const { across_m, shared_m } = besideLine(line, other);
    if (Math.abs(across_m) < OVER_STEPS * step_m && shared_m > 0.5 * Math.min(length_m(line), length_m(other))) return true;
  }
  return false;
}

/** Median distance between strokes that follow each other side by side. */
function usualStep_m(lines: readonly StrokeLine[]): number {
  const steps: number[] = [];
  for (let i = 1; i < lines.length; i++) {
    const line = lines[i] as StrokeLine;
    const before = lines[i - 1] as StrokeLine;
    if (axialAngle_rad(line, before) > OTHER_WAY_RAD) continue;
    const { across_m, shared_m } = besideLine(line, before);
    if (shared_m > 0.5 * Math.min(length_m(line), length_m(before))) steps.push(Math.abs(across_m));
  }
  return median(steps);
}
