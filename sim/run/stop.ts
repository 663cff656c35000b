import { CrosscoatError } from '../base/errors.ts';

/** Ends a run with a `cancelled` error where `shouldStop` says so. */
export function stopIfAsked(shouldStop: (() => boolean) | undefined): void {
  if (shouldStop?.() === true) throw new CrosscoatError('cancelled', 'run: stopped on request; nothing was judged');
}
