import type { FitFamily } from './fanFit.ts';

/** A family's stroke profile P(u) as the fit turns it, with `shape` its one free number, if it has one. */
export interface FitShape {
  /** |u| beyond which there is no film, or none to speak of. */
  readonly reach: number;
  /** Whether a lean can be told from a shift of the middle. */
  readonly leans: boolean;
  /** Least and greatest `shape`, and where to start; null where the family has none. */
  readonly shape: { readonly low: number; readonly high: number; readonly starts: readonly number[] } | null;
  /** Standard deviation of P as a mass, in half widths. */
  readonly spread: (shape: number) => number;
  /** Writes P, dP/du and dP/dshape at u; all 0 beyond the edge. */
  readonly write: (u: number, shape: number, out: Float64Array) => void;
}

/** Least 1 - u² that a slope is taken at: a flat exponent's is endless at the very edge. */
const EDGE = 1e-9;

/**
 * The families in the form that is fitted. The exponent e = β1 - ½ of the double-beta is turned as ln e and the flat
 * top's taper as a share of the half width, so that a step means about the same anywhere. Spreads: `1/√(2e+3)` for
 * `(1-u²)^e`, `√((1 + (1-t)²)/6)` for a trapezium, `1/√6` for the triangle, `√(1/3 - 2/π²)` for cos², ½ for the Gaussian.
 *
 * A Gaussian that is moved aside differs from itself by `u P(u)`, which is what a lean adds: its lean is held at 0.
 */
export const FIT_SHAPES: Readonly<Record<FitFamily, FitShape>> = {
  'double-beta': {
    reach: 1,
    leans: true,
    shape: { low: Math.log(0.1), high: Math.log(40), starts: [0.7, 2, 5].map(Math.log) },
    spread: (shape) => 1 / Math.sqrt(2 * Math.exp(shape) + 3),
    write: writePower,
  },
  gaussian: { reach: 2, leans: false, shape: null, spread: () => 0.5, write: writeGaussian },
  parabola: { reach: 1, leans: true, shape: null, spread: () => 1 / Math.sqrt(5), write: (u, _, out) => writePower(u, 0, out) },
  triangle: { reach: 1, leans: true, shape: null, spread: () => 1 / Math.sqrt(6), write: (u, _, out) => writeFlat(u, 1, out) },
  'cosine-squared': { reach: 1, leans: true, shape: null, spread: () => Math.sqrt(1 / 3 - 2 / Math.PI ** 2), write: writeCosine },
  'flat-top': {
    reach: 1,
    leans: true,
    shape: { low: 0.01, high: 1, starts: [0.2, 0.5, 0.85] },
    spread: (shape) => Math.sqrt((1 + (1 - shape) ** 2) / 6),
    write: writeFlat,
  },
};

/** `(1-u²)^e` with e = exp(shape). */
function writePower(u: number, shape: number, out: Float64Array): void {
  const left = 1 - u * u;
  if (!(left > 0)) {
    out.fill(0);
    return;
  }
  const e = Math.exp(shape);
  const power = e * Math.log(left);
  const value = Math.exp(power);
  out[0] = value;
  out[1] = (-2 * u * e * value) / Math.max(EDGE, left);
  out[2] = power * value;
}

/** `exp(-2u²)`: u = 1 is two standard deviations, half of the stated full width. */
function writeGaussian(u: number, _: number, out: Float64Array): void {
  const value = Math.exp(-2 * u * u);
  out[0] = value;
  out[1] = -4 * u * value;
  out[2] = 0;
}

function writeCosine(u: number, _: number, out: Float64Array): void {
  const isInside = Math.abs(u) < 1;
  out[0] = isInside ? Math.cos((Math.PI * u) / 2) ** 2 : 0;
  out[1] = isInside ? (-Math.PI / 2) * Math.sin(Math.PI * u) : 0;
  out[2] = 0;
}

/** Even, falling in a straight line over `shape` half widths at each edge; the triangle where that is 1. */
function writeFlat(u: number, shape: number, out: Float64Array): void {
  const inward = 1 - Math.abs(u);
  const isTaper = inward > 0 && inward < shape;
  out[0] = isTaper ? inward / shape : inward > 0 ? 1 : 0;
  out[1] = isTaper ? -Math.sign(u) / shape : 0;
  out[2] = isTaper ? -inward / (shape * shape) : 0;
}
