import type { FilmMap } from './cardPhoto.ts';
import { levelWidth } from './levelWidth.ts';
import { evenPlace, evenPolynomial, polynomialAt } from './polynomial.ts';
import { boxOf, type FilmMoments, filmMoments, type FilmSums, filmSums, type SpotFrame } from './spotFrame.ts';
import { PLACES, readingBox, readingsOf, type ReadSpot } from './spotReadings.ts';

/** Exponent along the travel that the model gives a fan whose depth alone is stated. */
const BETA2 = 3;
/** Assumed: places with less film than this share of the peak say nothing of the centre line. */
const CENTRE_LINE_RATIO = 0.1;
/** Assumed: a spot rounder than this has no long axis to speak of. */
const ROUND_RATIO = 0.8;

/**
 * The fan of a standing gun's burst. Its long axis is the spot's first principal axis (second moments of film);
 * film summed along the short axis is the profile of a stroke, which for the double-beta fan is `(1-u²)^(β1-½)`.
 *
 * Depth: at u that fan's variance along the short axis is `b²(1-u²)/(2β2+1)`, and the mean of 1-u² over its film
 * is `(2β1+1)/(2β1+2)`; so `b² = variance (2β2+1)(2β1+2)/(2β1+1)`, the variance taken about the bent centre line.
 * Bend: how far the quadratic centre line stands off its middle at the ends, over the depth.
 *
 * @param isSpot by cell: what belongs to the spot. @param isClean by cell: what is no blot.
 */
export function burstSpot(map: FilmMap, isSpot: Uint8Array, isClean: Uint8Array): ReadSpot {
  const moments = filmMoments(map, isSpot);
  const frame: SpotFrame = { middleX_m: moments.x_m, middleY_m: moments.y_m, angle_rad: longAxis(moments) };
  const around = boxOf(map, isSpot, frame);
  const box = readingBox(around, [around.low[1], around.high[1]], map, frame);
  const sums = filmSums(map, isClean, frame, box, PLACES);
  const { width_m, exponent } = levelWidth(sums.film, sums.step_m);
  const { bend_per_m, variance_m2 } = centreLine(filmSums(map, isSpot, frame, box, PLACES));
  const beta1 = exponent + 0.5;
  const depth_m = 2 * Math.sqrt((variance_m2 * (2 * BETA2 + 1) * (2 * beta1 + 2)) / (2 * beta1 + 1));
  const roundness = axesRatio(moments);
  return {
    spot: { width_m, depth_m, angle_rad: frame.angle_rad, bendFraction: (bend_per_m * (width_m / 2) ** 2) / depth_m, widthVariationFraction: null },
    readings: readingsOf(sums, box),
    doubts: roundness > ROUND_RATIO ? [`the spot is nearly round (its axes as ${roundness.toFixed(2)} to 1), so that its long axis is uncertain`] : [],
  };
}

/** Pointing right or up, so that a spot laid along either side of a card has its ends named alike whichever way it leans. */
function longAxis({ xx_m2, xy_m2, yy_m2 }: FilmMoments): number {
  const angle_rad = Math.atan2(2 * xy_m2, xx_m2 - yy_m2) / 2;
  return angle_rad > -Math.PI / 4 ? angle_rad : angle_rad + Math.PI;
}

/** Short principal axis over the long one. */
function axesRatio({ xx_m2, xy_m2, yy_m2 }: FilmMoments): number {
  const half = Math.hypot(xx_m2 - yy_m2, 2 * xy_m2) / 2;
  const mean = (xx_m2 + yy_m2) / 2;
  return Math.sqrt(Math.max(0, mean - half) / (mean + half));
}

/** The quadratic through the film's middle at each place, weighted by film: its second coefficient, and the film's variance about it. */
function centreLine({ step_m, film, first, second }: FilmSums): { bend_per_m: number; variance_m2: number } {
  const least = CENTRE_LINE_RATIO * film.reduce((most, value) => Math.max(most, value), 0);
  const isSaying = film.map((value) => (value >= least ? 1 : 0));
  const line = evenPolynomial(film.map((value, i) => value * (isSaying[i] as number)), first.map((value, i) => value * (isSaying[i] as number)), 2);
  let [spread, mass] = [0, 0];
  for (let i = 0; i < film.length; i++) {
    const line_m = polynomialAt(line, evenPlace(i, film.length));
    spread += (second[i] as number) - 2 * line_m * (first[i] as number) + line_m * line_m * (film[i] as number);
    mass += film[i] as number;
  }
  const half_m = ((film.length - 1) * step_m) / 2;
  return { bend_per_m: (line[2] as number) / (half_m * half_m), variance_m2: Math.max(0, spread / mass) };
}
