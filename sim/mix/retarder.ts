import type { BlendPart } from '../materials/blend.ts';

/** Usual shares of retarder in the thinner, by volume. Common practice. */
export const USUAL_RETARDER_SHARES = { low: 0.05, high: 0.15 };
/** Share of the thinner beyond which a retarder is thought too much: common practice. */
export const MOST_RETARDER = 0.25;

/** How a share of retarder stands to practice. */
export type RetarderJudgement = 'none' | 'below-usual' | 'usual' | 'above-usual' | 'too-much';

/** A share of the thinner, 0 to 1, against 5 to 15 % usual and never over 25 %. */
export function judgeRetarder(fraction: number): RetarderJudgement {
  if (fraction === 0) return 'none';
  if (fraction < USUAL_RETARDER_SHARES.low) return 'below-usual';
  if (fraction <= USUAL_RETARDER_SHARES.high) return 'usual';
  return fraction <= MOST_RETARDER ? 'above-usual' : 'too-much';
}

/**
 * How much longer the solvents of one mix take to go than those of another, from their relative evaporation. Assumed: each solvent
 * leaves at its own rate after the one before, so that times add as share over rate; the film, which holds the last
 * of it back, is left out. It is about the slow end of drying, where a retarder counts.
 */
export function evaporationTimeRatio(solvents: readonly BlendPart[], than: readonly BlendPart[]): number {
  return evaporationTime(solvents) / evaporationTime(than);
}

function evaporationTime(solvents: readonly BlendPart[]): number {
  return solvents.reduce((sum, { solvent, volumeFraction }) => sum + volumeFraction / solvent.relativeEvaporation.value, 0);
}
