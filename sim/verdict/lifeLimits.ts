import type { LifeLimits } from './target.ts';

/** What the limits of a film's life depend on. */
export interface LifeLimitParts {
  /** Amplitude of ripple that is orange peel, m. */
  readonly peel_m: number;
  /** Wet film that just holds on an upright side, m. */
  readonly held_m: number;
  /** Solvent share with which a film is ready for another coat. */
  readonly readySolventFraction: number;
  /** Heaviest usual coat of the finish, kg/m², and the density of its solids. */
  readonly heaviestCoat_kg_m2: number;
  readonly solidsDensity_kg_m3: number;
  /** Coats that lie on each other, this one included. */
  readonly coats: number;
}

/** Film that ran this far is a run, m. Assumed: 3 mm is seen at arm's length. */
const RUN_M = 3e-3;
/** Film that gathered by less slid evenly and is no run, m. Assumed: an eighth of a usual wet coat. */
const GATHER_M = 12e-6;
/** Assumed: where a fifth or more of a coat lies on the rest that had set, the laps show. */
const LAP_FRACTION = 0.2;
/** Blister risk beyond this many of the fullest wet coats that hold upright, laid on film that is just ready. Assumed. */
const TRAPPED_RATIO = 1.1;
/** Evaporation over diffusion, E h/D, beyond which a skin shuts solvent in. Assumed: order 1 by definition, 3 where it shows. */
const SKIN = 3;
/** Weight beyond the heaviest usual coat. Assumed. */
const HEAVY_RATIO = 1.25;

/**
 * Limits of what a film may go through. All are model choices but the weight: an over-thick film warps
 * a light frame (FAA AC 43.13-1B, 2-20), and its limit is a quarter above the heaviest usual coat for
 * each coat laid.
 */
export function lifeLimits(parts: LifeLimitParts): LifeLimits {
  return {
    run_m: RUN_M,
    gather_m: GATHER_M,
    peel_m: parts.peel_m,
    lapFraction: LAP_FRACTION,
    blush_K: 0,
    trapped_m: TRAPPED_RATIO * parts.readySolventFraction * parts.held_m,
    skin: SKIN,
    thick_m: (HEAVY_RATIO * parts.coats * parts.heaviestCoat_kg_m2) / parts.solidsDensity_kg_m3,
  };
}
