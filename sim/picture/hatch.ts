import type { FaultKind } from '../verdict/verdict.ts';

/** Pixels from one hatch line to the next. */
const PITCH = 8;

/** Steps of a repeating pattern for a place that may be negative. */
function phase(place: number): number {
  return ((place % PITCH) + PITCH) % PITCH;
}

/**
 * Whether the hatching of a fault inks a pixel; `x` right, `y` down.
 *
 * Each kind has its own figure, so that faults are told apart without colour: holiday an upright
 * grid, thin lap lines falling to the left, heavy spot crossed slanting lines, dry spray dots.
 */
export function isHatched(kind: FaultKind, x: number, y: number): boolean {
  switch (kind) {
    case 'holiday':
      return phase(x) === 0 || phase(y) === 0;
    case 'thin-lap':
      return phase(x + y) === 0;
    case 'heavy-spot':
      return phase(x + y) === 0 || phase(x - y) === 0;
    case 'dry-spray':
      return phase(x) < 2 && phase(y) < 2;
  }
}

/** What each fault's hatching looks like, for a legend in words. */
export const HATCH_WORDS: Readonly<Record<FaultKind, string>> = {
  holiday: 'upright grid',
  'thin-lap': 'slanting lines',
  'heavy-spot': 'crossed slanting lines',
  'dry-spray': 'dots',
};
