import { limitOf } from './judged.ts';
import type { Target } from './target.ts';
import type { FaultKind } from './verdict.ts';

/**
 * Least share of a fault that a habit must explain to be named its cause. Assumed: about a third;
 * below it the reader would be sent after something that leaves most of the fault standing.
 */
export const LEAST_EXPLAINED = 0.35;

/**
 * How much more a later trial must explain to be preferred over an earlier, more particular one.
 * Evening the speed also takes out a stop: where both mend the place, the stop is the cause.
 */
export const PREFERENCE = 0.1;

/** What one correction would leave at a zone's places. */
export interface Trial<Name extends string> {
  readonly name: Name;
  /** Judged value (film m, or dry share) at each place, with the correction. */
  readonly values: Float64Array;
}

/** The trial that explains a zone best. */
export interface Explanation<Name extends string> {
  readonly name: Name;
  /** Share of the excess or lack that goes with the correction, 0 to 1. */
  readonly explains: number;
}

/**
 * What a value of this kind should be: the target film; for dry spray half the limit, since no
 * less is asked than to be well inside it.
 */
export function aimOf(kind: FaultKind, target: Target): number {
  return kind === 'dry-spray' ? limitOf(kind, target) / 2 : target.thickness_m;
}

/**
 * Share of a fault that a correction takes away: 1 - Σ|corrected - aim| / Σ|found - aim| over the
 * zone's places, held to 0 to 1. A film that goes as far past the target on the other side
 * explains nothing; for dry spray any share below the aim is as good as the aim.
 */
export function explainedShare(
  kind: FaultKind,
  found: Float64Array,
  corrected: Float64Array,
  target: Target,
): number {
  const aim = aimOf(kind, target);
  let before = 0;
  let after = 0;
  for (let i = 0; i < found.length; i++) {
    before += distanceTo(aim, found[i] as number, kind);
    after += distanceTo(aim, corrected[i] as number, kind);
  }
  if (!(before > 0)) return 0;
  return Math.min(1, Math.max(0, 1 - after / before));
}

function distanceTo(aim: number, value: number, kind: FaultKind): number {
  return kind === 'dry-spray' ? Math.max(0, value - aim) : Math.abs(value - aim);
}

/**
 * The trial to name: the one that explains most, but an earlier one in the list keeps its place
 * unless a later one explains `PREFERENCE` more.
 * @param trials the most particular first. @returns null where none explains `LEAST_EXPLAINED`.
 */
export function bestExplanation<Name extends string>(
  kind: FaultKind,
  found: Float64Array,
  trials: readonly Trial<Name>[],
  target: Target,
): Explanation<Name> | null {
  let best: Explanation<Name> | null = null;
  for (const trial of trials) {
    const explains = explainedShare(kind, found, trial.values, target);
    if (explains < LEAST_EXPLAINED) continue;
    if (best === null || explains > best.explains + PREFERENCE) best = { name: trial.name, explains };
  }
  return best;
}
