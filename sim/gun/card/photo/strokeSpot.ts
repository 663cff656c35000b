import type { FilmMap } from './cardPhoto.ts';
import { levelWidth } from './levelWidth.ts';
import { evenPlace, evenPolynomial, polynomialAt } from './polynomial.ts';
import { boxOf, filmMoments, type FilmSums, filmSums, type FrameBox, type SpotFrame } from './spotFrame.ts';
import { PLACES, readingBox, readingsOf, type ReadSpot } from './spotReadings.ts';

/** Assumed: this much of the stroke's length, in its middle, was sprayed with the trigger full on and the hand in steady travel. */
const MIDDLE_RATIO = 0.6;
/** Slices along it whose widths are compared. */
const SLICES = 12;
/** Assumed: a stroke that runs more askew than this was not sprayed along the side that is said. */
const MOST_ASKEW_RAD = (10 * Math.PI) / 180;
/** Assumed: a stroke shorter than this share of its width has no even middle. */
const LEAST_LENGTH_RATIO = 0.75;
/** Assumed: film along a stroke of steady speed varies by less than this (standard deviation over mean). */
const MOST_UNEVEN = 0.15;

/**
 * The fan of a straight stroke: the mean film along its travel over its middle part (weighted to its middle), square to its centre line, which
 * may run a little askew on the card. Flutter is the standard deviation of the slices' widths (root of the film's second
 * moment) about a straight line through them, since a hand that drifts nearer or farther is no flutter; the picture's
 * grain is in it.
 *
 * Places rise upward for a stroke along x and to the right for one along y.
 *
 * @param isSpot by cell: what belongs to the spot. @param isClean by cell: what is no blot.
 */
export function strokeSpot(map: FilmMap, isSpot: Uint8Array, isClean: Uint8Array, along: 'x' | 'y'): ReadSpot {
  const { travel, middle } = travelFrame(map, isSpot, along);
  const slices = filmSums(map, isSpot, travel, middle, SLICES);
  // Left of the travel for a stroke to the right; right of it for one upward.
  const toAcross = along === 'x' ? Math.PI / 2 : -Math.PI / 2;
  const frame: SpotFrame = { ...travel, angle_rad: travel.angle_rad + toAcross };
  const half_m = (middle.high[0] - middle.low[0]) / 2;
  const around = boxOf(map, isSpot, frame);
  const box = readingBox(around, [-half_m, half_m], map, frame);
  const sums = filmSums(map, isClean, frame, box, PLACES, 'fading');
  const { width_m } = levelWidth(sums.film, sums.step_m);
  const askew_rad = travel.angle_rad - (along === 'x' ? 0 : Math.PI / 2);
  const length_m = (2 * half_m) / MIDDLE_RATIO;
  return {
    spot: { width_m, depth_m: null, angle_rad: frame.angle_rad, bendFraction: null, widthVariationFraction: widthVariation(slices) },
    readings: readingsOf(sums, box),
    doubts: [
      ...(Math.abs(askew_rad) > MOST_ASKEW_RAD ? [`the stroke runs ${((Math.abs(askew_rad) * 180) / Math.PI).toFixed(0)}° askew of the side it is said to run along; look whether it ran along the other`] : []),
      ...(unevenness(slices.film) > MOST_UNEVEN ? [`film along the middle of the stroke varies by ${(100 * unevenness(slices.film)).toFixed(0)} %, more than a steady stroke's; say whether it is a burst`] : []),
      ...(length_m < LEAST_LENGTH_RATIO * width_m ? [`the stroke is ${(length_m * 1000).toFixed(0)} mm long on the card and ${(width_m * 1000).toFixed(0)} mm wide, too short for an even middle; say whether it is a burst`] : []),
    ],
  };
}

/** A frame with x along the stroke's centre line and its middle in the stroke's, and the box of the stroke's middle part in it. */
function travelFrame(map: FilmMap, isSpot: Uint8Array, along: 'x' | 'y'): { travel: SpotFrame; middle: FrameBox } {
  const { x_m, y_m } = filmMoments(map, isSpot);
  const stated: SpotFrame = { middleX_m: x_m, middleY_m: y_m, angle_rad: along === 'x' ? 0 : Math.PI / 2 };
  const around = boxOf(map, isSpot, stated);
  const part = middlePart(around);
  const { film, first } = filmSums(map, isSpot, stated, part, PLACES);
  const [offset_m, slope_m] = evenPolynomial(film, first, 1) as [number, number];
  const half_m = (part.high[0] - part.low[0]) / 2;
  const forward_m = part.low[0] + half_m;
  const [cos, sin] = [Math.cos(stated.angle_rad), Math.sin(stated.angle_rad)];
  const travel: SpotFrame = {
    middleX_m: x_m + forward_m * cos - offset_m * sin,
    middleY_m: y_m + forward_m * sin + offset_m * cos,
    angle_rad: stated.angle_rad + Math.atan(slope_m / half_m),
  };
  const width_m = around.high[1] - around.low[1];
  return { travel, middle: { low: [-half_m, -width_m], high: [half_m, width_m] } };
}

function middlePart({ low, high }: FrameBox): FrameBox {
  const cut_m = ((1 - MIDDLE_RATIO) / 2) * (high[0] - low[0]);
  return { low: [low[0] + cut_m, low[1]], high: [high[0] - cut_m, high[1]] };
}

/** Standard deviation over mean. */
function unevenness(film: Float64Array): number {
  const mean = film.reduce((sum, value) => sum + value, 0) / film.length;
  return Math.sqrt(film.reduce((sum, value) => sum + (value - mean) ** 2, 0) / film.length) / mean;
}

function widthVariation({ film, first, second }: FilmSums): number {
  const widths = film.map((mass, i) => Math.sqrt(Math.max(0, (second[i] as number) / mass - ((first[i] as number) / mass) ** 2)));
  const line = evenPolynomial(new Float64Array(widths.length).fill(1), widths, 1);
  const squares = widths.reduce((sum, width, i) => sum + (width - polynomialAt(line, evenPlace(i, widths.length))) ** 2, 0);
  return Math.sqrt(squares / (widths.length - 2)) / (line[0] as number);
}
