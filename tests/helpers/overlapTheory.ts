import { logGamma } from '../../sim/base/special.ts';
import { evenness, type Evenness } from './coats.ts';

/** A stroke's profile with its half support, m. */
export interface StrokeOf {
  readonly film: (offset_m: number) => number;
  readonly half_m: number;
}

/** Film of endless equal strokes at `count` places of one pitch. */
export function endlessCoat(stroke: StrokeOf, pitch_m: number, count: number): Float64Array {
  const reach = Math.ceil(stroke.half_m / pitch_m) + 1;
  return Float64Array.from({ length: count }, (_, i) => {
    let film = 0;
    for (let k = -reach; k <= reach; k++) film += stroke.film(((i + 0.5) / count) * pitch_m + k * pitch_m);
    return film;
  });
}

export function endlessEvenness(stroke: StrokeOf, width_m: number, overlap: number, count = 4001): Evenness {
  return evenness(endlessCoat(stroke, (1 - overlap) * width_m, count));
}

/** Signed amplitude of the first ripple harmonic over the mean: 2 ĥ(2π/p)/ĥ(0), midpoint rule. */
export function firstHarmonic(stroke: StrokeOf, pitch_m: number, count = 20_000): number {
  let whole = 0;
  let wave = 0;
  for (let i = 0; i < count; i++) {
    const x_m = stroke.half_m * ((2 * i + 1) / count - 1);
    const film = stroke.film(x_m);
    whole += film;
    wave += film * Math.cos((2 * Math.PI * x_m) / pitch_m);
  }
  return (2 * wave) / whole;
}

/** Root of a function that changes sign between `low` and `high`. */
export function bisect(of: (x: number) => number, low: number, high: number): number {
  const rising = of(high) > of(low);
  for (let i = 0; i < 60; i++) {
    const middle = 0.5 * (low + high);
    if (of(middle) > 0 === rising) high = middle;
    else low = middle;
  }
  return 0.5 * (low + high);
}

/** Place of the least value between `low` and `high`: a scan, then a golden section around its best. */
export function findLeast(of: (x: number) => number, low: number, high: number): number {
  const scan = 40;
  let best = 0;
  for (let i = 1; i <= scan; i++) if (of(low + ((high - low) * i) / scan) < of(low + ((high - low) * best) / scan)) best = i;
  let a = low + ((high - low) * Math.max(0, best - 1)) / scan;
  let b = low + ((high - low) * Math.min(scan, best + 1)) / scan;
  const golden = (Math.sqrt(5) - 1) / 2;
  while (b - a > 1e-6) {
    const c = b - golden * (b - a);
    const d = a + golden * (b - a);
    if (of(c) < of(d)) b = d;
    else a = c;
  }
  return 0.5 * (a + b);
}

/** Bessel function of the first kind by its power series (M. Abramowitz & I.A. Stegun 1964, eq. 9.1.10), x up to about 15. */
export function besselJ(order: number, x: number): number {
  let sum = 0;
  for (let k = 0; k < 60; k++) {
    const size = Math.exp((2 * k + order) * Math.log(x / 2) - logGamma(k + 1) - logGamma(k + order + 1));
    sum += k % 2 === 0 ? size : -size;
  }
  return sum;
}

/** First positive zero of J of an order from 0.5 to 5. */
export function firstBesselZero(order: number): number {
  let low = order + 0.5;
  while (besselJ(order, low + 0.25) > 0) low += 0.25;
  return bisect((x) => besselJ(order, x), low, low + 0.25);
}
