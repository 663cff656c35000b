import type { FaultKind } from '../verdict/verdict.ts';

/** Pixels from one hatch line to the next. */
const PITCH = 8;

/** Steps of a repeating pattern for a place that may be negative. */
function phase(place: number): number {
  return ((place % PITCH) + PITCH) % PITCH;
}

/** A ring of about three pixels across. */
function isRing(x: number, y: number): boolean {
  const away = Math.hypot(x - 3, y - 3);
  return away > 1.5 && away < 2.6;
}

/**
 * Whether the hatching of a fault inks a pixel; `x` right, `y` down.
 *
 * Each kind has its own figure, so that faults are told apart without colour; `HATCH_WORDS` says which.
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
    case 'run':
      return phase(x) === 0;
    case 'orange-peel':
      return phase(x) === phase(y) || (phase(x) + 4) % PITCH === phase(y) || phase(x + y) === 0;
    case 'dry-lap':
      return phase(y) === 0;
    case 'blush':
      return phase(x - y) === 0;
    case 'blister':
      return isRing(phase(x), phase(y));
    case 'pinhole':
      return phase(x) === 0 && phase(y) === 0;
    case 'over-thick':
      return phase(y) < 3;
  }
}

/** What each fault's hatching looks like, for a legend in words. */
export const HATCH_WORDS: Readonly<Record<FaultKind, string>> = {
  holiday: 'upright grid',
  'thin-lap': 'lines slanting to the left',
  'heavy-spot': 'crossed slanting lines',
  'dry-spray': 'dots',
  run: 'upright lines',
  'orange-peel': 'a net',
  'dry-lap': 'level lines',
  blush: 'lines slanting to the right',
  blister: 'rings',
  pinhole: 'points',
  'over-thick': 'broad level bars',
};
