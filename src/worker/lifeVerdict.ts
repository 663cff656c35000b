import { judgeLife, runLife, type CoatResult, type LifeVerdict, type Recording } from '../../sim/index.ts';

/** How long after the gun is put away a film is watched that has not set by then, s. */
const LONGEST_S = 3600;

/** A coat's life judged: watched until it has set, an hour at most. */
export function lifeVerdictOf({ setting, strokes, verdict }: CoatResult, recordings: ReadonlyMap<string, Recording>, cures: boolean): LifeVerdict {
  const life = runLife(setting, strokes, { recordings });
  const watched_s = Math.min(life.end.time_s, life.sprayed_s + LONGEST_S);
  return judgeLife(life, strokes, { cures, laidFaults: verdict.faults, until_s: watched_s, recordings });
}
