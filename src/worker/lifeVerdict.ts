import { judgeLife, runLife, type CoatLife, type CoatResult, type LifeVerdict, type Recording } from '../../sim/index.ts';

/** How long after the gun is put away a film is watched that has not set by then, s. */
const LONGEST_S = 3600;

/** Judges a coat's life: watched until it has set, an hour at most. The last coat's life is kept, since it is judged without cures first. */
export function makeLifeJudge(recordings: ReadonlyMap<string, Recording>): (result: CoatResult, cures: boolean) => LifeVerdict {
  let last: { readonly of: CoatResult; readonly life: CoatLife } | null = null;
  return (result, cures) => {
    const { setting, strokes, verdict } = result;
    if (last?.of !== result) last = { of: result, life: runLife(setting, strokes, { recordings }) };
    const { life } = last;
    const watched_s = Math.min(life.end.time_s, life.sprayed_s + LONGEST_S);
    return judgeLife(life, strokes, { cures, laidFaults: verdict.faults, until_s: watched_s, recordings });
  };
}
