import type { Target } from '../../verdict/target.ts';
import { WINDOW_FAULTS, type PointFilm, type WindowFault } from '../../verdict/workingWindow.ts';

/** What a point may be past beside the faults of the window: limits of the wish, and more film than one coat should have. */
export const HELD_LIMITS = ['speed', 'time', 'liquid', 'over-thick'] as const;
export type HeldLimit = (typeof HELD_LIMITS)[number];
/** What can stand in the way of a wish. */
export type FitLimit = WindowFault | HeldLimit;

/** By fault, the room that is left as a share of all there can be: 1 at most, 0 at the limit, negative past it. */
export type Rooms = Readonly<Record<WindowFault, number>>;

/** Limits of film so near the target that only a perfect film keeps them still count for this much room. Assumed: a hundredth, what a film gauge tells apart. */
const LEAST_WHOLE = 0.01;

/**
 * The slack of a film in shares of what the best film would have: an even film at the target is 1 - 1/1.2
 * away from a heavy spot at 120 %, so that counts as the whole room, while no run at all is the whole
 * room to a run. So that rooms may be held against each other. None counts for more than 1: much room
 * to one fault buys nothing at another.
 */
export function roomsOf({ slack }: PointFilm, { minFraction, maxFraction }: Target): Rooms {
  const room = (fault: WindowFault, whole = 1) => Math.min(1, slack[fault] / Math.max(whole, LEAST_WHOLE));
  return {
    'thin-lap': room('thin-lap', 1 / minFraction - 1),
    'heavy-spot': room('heavy-spot', 1 - 1 / maxFraction),
    run: room('run'),
    'dry-spray': room('dry-spray'),
    'orange-peel': room('orange-peel'),
    blush: room('blush'),
  };
}

/** The fault with the least room, those left out not counted. */
export function nearestFault(rooms: Rooms, ignored: ReadonlySet<FitLimit> = new Set()): WindowFault {
  return WINDOW_FAULTS.filter((fault) => !ignored.has(fault)).reduce((nearest, fault) => (rooms[fault] < rooms[nearest] ? fault : nearest));
}

/** Steps of a hand's axis that are the whole room: 50 mm of distance, a fifth of the speed. Assumed: a hand that strays farther needs practice, not another set-up. */
const WHOLE_STEPS = 2;

/** So many steps of a hand's axis as a room. */
export function handShare(steps: number): number {
  return Math.min(1, steps / WHOLE_STEPS);
}
