import { FAILURE_STEP_M, nextAroundFailure, shown, shownPlace, type JudgedSurvey, type Panel, type UnitSystem } from '../../../sim/index.ts';

/** A spot that fails, and where to read on around it. */
export interface FailedSpot {
  readonly name: string;
  readonly words: string;
}

const DIRECTION_WORDS = ['to the right', 'up to the right', 'up', 'up to the left', 'to the left', 'down to the left', 'down', 'down to the right'];

/** Spots that fail, each with the next place in every direction, so that the failed area can be bounded. */
export function failedSpots({ spots, readings }: JudgedSurvey, panel: Panel, system: UnitSystem): FailedSpot[] {
  const step_m = FAILURE_STEP_M[system === 'us' ? 'ft2' : 'm2'];
  const placed = new Map(readings.map(({ index, at_m }) => [index, at_m]));
  return spots.filter(({ answer }) => answer === 'fail').map(({ name, readings: own }) => {
    const places = own.map((index) => placed.get(index) ?? null).filter((at) => at !== null);
    if (places.length === 0) return { name, words: 'its readings have no place, so no places around it can be named' };
    const middle = [0, 1].map((axis) => places.reduce((sum, at) => sum + (at[axis] as number), 0) / places.length) as [number, number];
    const next = nextAroundFailure(middle, [0, 0, panel.width_m, panel.height_m], step_m);
    const reach = shown(step_m, 'length', system);
    if (next.length === 0) return { name, words: `at ${shownPlace(middle, system)}; a step of ${reach} leads off the panel in every direction, so the whole panel is in question` };
    return { name, words: `at ${shownPlace(middle, system)}: read a spot ${next.map(({ direction, at_m }) => `${DIRECTION_WORDS[direction] ?? ''} (${shownPlace(at_m, system)})`).join(', ')}; and on in steps of ${reach} until two in a row hold` };
  });
}
