import type { FitTry } from './fitTries.ts';

/** In what two ways to lay a coat differ in kind. */
export const FIT_DIFFERENCES = ['set-up', 'mix', 'passes', 'fluid', 'thinner', 'distance'] as const;
export type FitDifference = (typeof FIT_DIFFERENCES)[number];

/** Fluid or thinner by more than a quarter, distance by more than 15 %: another way to work, not the same one trimmed. Assumed. */
const OTHER_AMOUNT = 0.25;
const OTHER_DISTANCE = 0.15;

/** What differs in kind between two tries; empty where one is the other, trimmed. */
export function differences(a: FitTry, b: FitTry): FitDifference[] {
  const differs: Readonly<Record<FitDifference, boolean>> = {
    'set-up': a.kind.setUpId !== b.kind.setUpId,
    mix: a.kind.mixId !== b.kind.mixId,
    passes: a.kind.cross !== b.kind.cross,
    fluid: apart(a.place.fluid, b.place.fluid) > OTHER_AMOUNT,
    thinner: apart(a.place.thinner, b.place.thinner) > OTHER_AMOUNT,
    distance: apart(a.place.distance, b.place.distance) > OTHER_DISTANCE,
  };
  return FIT_DIFFERENCES.filter((difference) => differs[difference]);
}

/** The larger over the smaller, less one; 0 for two nothings. */
function apart(a: number, b: number): number {
  const [low, high] = [Math.min(a, b), Math.max(a, b)];
  return high > low ? high / low - 1 : 0;
}
