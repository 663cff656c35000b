import { interpolateEven } from '../base/interpolate.ts';
import type { Footprint } from '../gun/spray.ts';

/** Overlaps tried. Below a tenth no fan with tapering edges lays an even film. */
const LEAST_OVERLAP = 0.1;
const MOST_OVERLAP = 0.8;
const COARSE_STEP = 0.01;
const FINE_STEP = 0.0025;
/** Places in one pitch at which the film is summed: the CV is then good to about 0.001. */
const PLACES = 96;
/** Even nodes of the stroke's profile, -1 to 1. */
const NODES = 513;
/** A film as even as this needs no more overlap. Assumed: a fiftieth, below what a wet comb reads. */
const FLAT_CV = 0.02;
/** How much more overlap is worth a still better film once it is half as uneven as that. */
const LOOK_AHEAD = 0.03;

/**
 * The film that one square stroke leaves across the fan, any unit, at `u` of the half support
 * (-1 to 1, nothing outside): the footprint summed along its short axis,
 * `across(u) · sqrt(chordSquared(u))`.
 */
export function strokeAcross({ across, chordSquared }: Footprint, u: number): number {
  if (!(u >= -1 && u <= 1)) return 0;
  const step = 2 / (across.length - 1);
  const chord = interpolateEven(chordSquared, -1, step, u);
  return interpolateEven(across, -1, step, u) * Math.sqrt(Math.max(0, chord));
}

/** `strokeAcross` at `NODES` even places. */
function strokeProfile(footprint: Footprint): Float64Array {
  return new Float64Array(NODES).map((_, i) => strokeAcross(footprint, (2 * i) / (NODES - 1) - 1));
}

/** CV over one pitch, in half supports, of equal strokes side by side. */
function cvAtPitch(profile: Float64Array, pitch: number): number {
  const reach = Math.ceil(1 / pitch) + 1;
  const step = 2 / (NODES - 1);
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < PLACES; i++) {
    const at = (i / PLACES) * pitch;
    let film = 0;
    for (let k = -reach; k <= reach; k++) {
      const u = at + k * pitch;
      if (u > -1 && u < 1) film += interpolateEven(profile, -1, step, u);
    }
    sum += film;
    squares += film * film;
  }
  const mean = sum / PLACES;
  return Math.sqrt(Math.max(0, squares / PLACES - mean * mean)) / mean;
}

function pitchOf({ width_m, halfLength_m }: Footprint, overlapFraction: number): number {
  return ((1 - overlapFraction) * width_m) / halfLength_m;
}

/**
 * Coefficient of variation of the film of many parallel strokes, all alike, at one overlap.
 * @param overlapFraction of the stated full width, from 0 to below 1.
 */
export function overlapCv(footprint: Footprint, overlapFraction: number): number {
  return cvAtPitch(strokeProfile(footprint), pitchOf(footprint, overlapFraction));
}

/**
 * The overlap that suits a fan: the least one at which the film's evenness is at its best (a local
 * minimum of the CV against overlap, found to 0.25 %) with a CV of at most 2 %; where the CV only
 * falls (a long-tailed fan), the first at which it has come to 1 %; where no overlap from 10 to
 * 80 % does either, the one of least CV.
 *
 * More overlap than this costs strokes and lays hardly a better film.
 */
export function flattestOverlap(footprint: Footprint): number {
  const profile = strokeProfile(footprint);
  const cv = (overlap: number) => cvAtPitch(profile, pitchOf(footprint, overlap));
  let best = LEAST_OVERLAP;
  let bestCv = Infinity;
  let enough = NaN;
  for (let overlap = LEAST_OVERLAP; overlap <= MOST_OVERLAP; overlap += COARSE_STEP) {
    const here = cv(overlap);
    if (here >= bestCv && bestCv <= FLAT_CV) break;
    if (overlap > enough + LOOK_AHEAD) return enough;
    if (here >= bestCv) continue;
    best = overlap;
    bestCv = here;
    if (here <= FLAT_CV / 2 && Number.isNaN(enough)) enough = overlap;
  }
  for (let overlap = best - COARSE_STEP; overlap <= best + COARSE_STEP; overlap += FINE_STEP) {
    const here = cv(overlap);
    if (here >= bestCv) continue;
    best = overlap;
    bestCv = here;
  }
  return best;
}
