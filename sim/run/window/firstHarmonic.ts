import { pitchAt, type StrokeShape } from './lapRipple.ts';
import { signChange } from './signChange.ts';

/** Overlaps in which a change of sign is sought, and the step of the search. */
const MOST_OVERLAP = 0.8;
const STEP = 0.005;
/** Even places of a stroke in its transform (midpoint rule): the share's own smoothness sets the error. */
const TRANSFORM_PLACES = 4000;
/** Beyond its zero a harmonic must swing to this share of the mean within so many steps; a smaller one is what a tail leaves where it was cut. */
const LEAST_SWING = 1e-3;
const SWING_STEPS = 20;
/** A fan whose two sides differ by more than this of its middle is lopsided. */
const LOPSIDED = 1e-6;

/**
 * The least overlap at which the first harmonic of the ripple is 0, to 1e-9: the cosine transform of the
 * stroke at one wave a pitch changes its sign (for a double-beta fan at 2πa/p = j, the first zero of the
 * Bessel function of order β1). Null for a lopsided fan, whose harmonic turns without ever being 0, and
 * for one whose harmonic only dies away up to `MOST_OVERLAP`, as a bell's does.
 */
export function overlapWithoutFirstHarmonic(shape: StrokeShape): number | null {
  if (isLopsided(shape)) return null;
  const shares = Float64Array.from({ length: TRANSFORM_PLACES }, (_, i) => shape.shareAt(placeOf(i)));
  const harmonic = (overlap: number) => cosineTransform(shares, (2 * Math.PI) / pitchAt(shape, overlap));
  const count = Math.round(MOST_OVERLAP / STEP);
  const harmonics = Array.from({ length: count + 1 }, (_, i) => harmonic(i * STEP));
  for (let i = 0; i < count; i++) {
    if ((harmonics[i] as number) * (harmonics[i + 1] as number) > 0) continue;
    const swings = harmonics.slice(i + 1, i + 1 + SWING_STEPS).some((each) => Math.abs(each) > LEAST_SWING);
    if (swings) return signChange(harmonic, i * STEP, (i + 1) * STEP);
  }
  return null;
}

/** Middle of one of `TRANSFORM_PLACES` even pieces from -1 to 1. */
function placeOf(i: number): number {
  return (2 * i + 1) / TRANSFORM_PLACES - 1;
}

function cosineTransform(shares: Float64Array, wave: number): number {
  return (2 * shares.reduce((sum, share, i) => sum + share * Math.cos(wave * placeOf(i)), 0)) / TRANSFORM_PLACES;
}

function isLopsided({ shareAt }: StrokeShape): boolean {
  const sides = Array.from({ length: 64 }, (_, i) => (i + 0.5) / 64);
  return sides.some((u) => Math.abs(shareAt(u) - shareAt(-u)) > LOPSIDED * Math.max(shareAt(0), shareAt(u)));
}
