import type { LifeLimits } from '../../sim/verdict/target.ts';

/** Limits of a film's life for targets made by hand: of the usual size, none near what a film as laid is judged by. */
export const LIFE_LIMITS: LifeLimits = {
  run_m: 3e-3,
  gather_m: 12e-6,
  peel_m: 1.2e-6,
  lapFraction: 0.2,
  blush_K: 0,
  trapped_m: 22e-6,
  skin: 3,
  thick_m: 37e-6,
};
