import type { CardReadings } from './cardReadings.ts';
import type { FitFamily } from './fanFit.ts';
import { FIT_SHAPES, type FitShape } from './fitShapes.ts';

/** Places of the numbers that a fit turns. Lengths are in half stretches of the card, films in highest readings. */
export const PEAK = 0;
export const CENTRE = 1;
/** Natural logarithm of half the width. */
export const LOG_HALF = 2;
export const FOG = 3;
export const IMBALANCE = 4;
/** As the family's `FitShape` takes it; missing where the family has none. */
export const SHAPE = 5;

/** Readings brought to order 1, and the family to fit them with. */
export interface FitModel {
  readonly family: FitFamily;
  readonly form: FitShape;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly middle_m: number;
  readonly halfSpan_m: number;
  readonly highest: number;
  readonly low: readonly number[];
  readonly high: readonly number[];
  /** Indices of the numbers that are turned; the others keep what they start with. */
  readonly free: readonly number[];
}

/** Assumed: a zero error takes at most this share of the highest reading off everywhere; fog adds any share. */
const LEAST_FOG = -0.2;
/** Film is not negative at the far edge, and not quite 0, so that the slope of the fit keeps a direction. */
const MOST_IMBALANCE = 0.98;
/**
 * Below this many readings, imbalance and fog are held at 0. Assumed: with the six numbers and the scatter taken out, four
 * readings are left to tell a lean or a fog from the fan's shape; with fewer, AICc's correction alone picks the family.
 */
export const FEWEST_FOR_LEAN = 11;

/** @param readings as `checkReadings` passes them. */
export function fitModel({ place_m, film }: CardReadings, family: FitFamily): FitModel {
  const form = FIT_SHAPES[family];
  const [first, last] = [place_m[0] as number, place_m[place_m.length - 1] as number];
  const middle_m = (first + last) / 2;
  const halfSpan_m = (last - first) / 2;
  const highest = film.reduce((most, value) => Math.max(most, value), -Infinity);
  const lean = MOST_IMBALANCE / form.reach;
  const shape = form.shape;
  const isRich = film.length >= FEWEST_FOR_LEAN;
  return {
    family, form, middle_m, halfSpan_m, highest,
    x: place_m.map((place) => (place - middle_m) / halfSpan_m),
    y: film.map((value) => value / highest),
    // A fan wider than twice the stretch read, or narrower than a hundredth of it, cannot be told from its readings.
    low: [0.01, -1.5, Math.log(0.01), LEAST_FOG, -lean, ...(shape === null ? [] : [shape.low])],
    high: [10, 1.5, Math.log(4), 1, lean, ...(shape === null ? [] : [shape.high])],
    free: [PEAK, CENTRE, LOG_HALF, ...(isRich ? [FOG] : []), ...(isRich && form.leans ? [IMBALANCE] : []), ...(shape === null ? [] : [SHAPE])],
  };
}

/** The numbers of a fit put out in full, those held at their start among them. */
export function spreadFree({ free }: FitModel, held: readonly number[], turned: readonly number[]): number[] {
  const all = held.slice();
  free.forEach((index, i) => (all[index] = turned[i] as number));
  return all;
}

/** Film at a scaled place, by all the numbers. */
export function modelFilm({ form }: FitModel, of: readonly number[]): (x: number) => number {
  const [peak, centre, logHalf, fog, imbalance, shape = 0] = of as [number, number, number, number, number, number?];
  const perHalf = Math.exp(-logHalf);
  const out = new Float64Array(3);
  return (x) => {
    const u = (x - centre) * perHalf;
    form.write(u, shape, out);
    return fog + peak * (out[0] as number) * (1 + imbalance * u);
  };
}

/** Slope of that film by every number that is free, in their order. */
export function modelSlopes({ form, free }: FitModel, of: readonly number[]): (x: number) => number[] {
  const [peak, centre, logHalf, , imbalance, shape = 0] = of as [number, number, number, number, number, number?];
  const perHalf = Math.exp(-logHalf);
  const out = new Float64Array(3);
  const all = new Float64Array(6);
  return (x) => {
    const u = (x - centre) * perHalf;
    form.write(u, shape, out);
    const value = out[0] as number;
    const lean = 1 + imbalance * u;
    const byPlace = peak * ((out[1] as number) * lean + value * imbalance);
    all[PEAK] = value * lean;
    all[CENTRE] = -byPlace * perHalf;
    all[LOG_HALF] = -byPlace * u;
    all[FOG] = 1;
    all[IMBALANCE] = peak * value * u;
    all[SHAPE] = peak * (out[2] as number) * lean;
    return free.map((index) => all[index] as number);
  };
}
