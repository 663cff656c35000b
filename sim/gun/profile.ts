import { beta, erf } from '../base/special.ts';
import { interpolateEven } from '../base/interpolate.ts';
import type { Profile, SetUp } from './setUp.ts';

/**
 * A fan's flux pattern as a formula: `peak · across(u) · along(y²/(halfDepth² chordSquared(u)))`,
 * u = x/halfLength, for |u| <= 1; its integral over the plane is 1 - cutFraction.
 */
export interface FanShape {
  readonly halfLength_m: number;
  readonly halfDepth_m: number;
  /** 1/m². */
  readonly peak_m2: number;
  /** Exponent-free functions of -1 <= u <= 1 and 0 <= w <= 1; along(0) = 1. */
  readonly across: (u: number) => number;
  readonly along: (w: number) => number;
  readonly chordSquared: (u: number) => number;
  /** ∫ along(t²) dt from -1 to 1. */
  readonly alongIntegral: number;
  readonly cutFraction: number;
}

/** A Gaussian fan's full width is this many standard deviations, and its support is cut at as many to each side. */
const GAUSSIAN_WIDTH_SIGMAS = 4;
const GAUSSIAN_CUT_SIGMAS = 4;
/** Assumed: exponent along the travel of the fans that state only a stroke profile. A stroke does not depend on it; a held burst does. */
const STROKE_FAMILY_BETA2 = 3;
/** Assumed: the same for the parabola, which is a double-beta fan with beta1 = 3/2. */
const PARABOLA_BETA2 = 2;

/**
 * The flux pattern of a fan.
 *
 * Double-beta: `T = T_max (1-x²/a²)^(β1-1) (1 - y²/(b²(1-x²/a²)))^(β2-1)` inside the ellipse, so
 * that a stroke square to the fan has the profile `(1-x²/a²)^(β1-½)` (Zhang Yonggui and others,
 * "New model for air spray gun of robotic spray-painting", Chin. J. Mech. Eng. 2006, from memory;
 * in use in "Optimization of Elliptical Double-Beta Spray Gun Model Under the Control of Fan Air
 * Pressure", Coatings 15(5) 581, 2025). Parabola: the same with β1 = 3/2 (and β2 = 2, assumed).
 * Gaussian: standard deviations a quarter of width and depth, support cut at 4 of them.
 * Triangle, cosine squared, flat top and table state the stroke's profile P(u); the flux is
 * P(u) (1 - y²/b²)² on a rectangle.
 *
 * @param fan checked by `makeSetUp`: beta1, beta2 >= 1, taper at most half the width.
 */
export function fanShape(fan: SetUp['fan']): FanShape {
  const a = fan.width_m / 2;
  const b = fan.depth_m / 2;
  const { profile } = fan;
  switch (profile.family) {
    case 'double-beta':
      return doubleBetaShape(a, b, profile.beta1, profile.beta2);
    case 'parabola':
      return doubleBetaShape(a, b, 1.5, PARABOLA_BETA2);
    case 'gaussian':
      return gaussianShape(fan.width_m, fan.depth_m);
    case 'triangle':
      return strokeShape(a, b, (u) => 1 - Math.abs(u), 1);
    case 'cosine-squared':
      return strokeShape(a, b, (u) => Math.cos((Math.PI * u) / 2) ** 2, 1);
    case 'flat-top':
      return flatTopShape(a, b, profile.taper_m / a);
    case 'table':
      return tableShape(b, profile);
  }
}

/** `x^p` with 0^0 = 1, so that an even fan (exponent 0) reaches its edge. */
function betaFactor(base: number, exponent: number): number {
  return exponent === 0 ? 1 : Math.pow(Math.max(0, base), exponent);
}

function doubleBetaShape(a: number, b: number, beta1: number, beta2: number): FanShape {
  const alongIntegral = beta(0.5, beta2);
  return {
    halfLength_m: a,
    halfDepth_m: b,
    peak_m2: 1 / (a * b * alongIntegral * beta(0.5, beta1 + 0.5)),
    across: (u) => betaFactor(1 - u * u, beta1 - 1),
    along: (w) => betaFactor(1 - w, beta2 - 1),
    chordSquared: (u) => Math.max(0, 1 - u * u),
    alongIntegral,
    cutFraction: 0,
  };
}

function gaussianShape(width_m: number, depth_m: number): FanShape {
  const sigmaX_m = width_m / GAUSSIAN_WIDTH_SIGMAS;
  const sigmaY_m = depth_m / GAUSSIAN_WIDTH_SIGMAS;
  const exponent = (GAUSSIAN_CUT_SIGMAS * GAUSSIAN_CUT_SIGMAS) / 2;
  const keptOneWay = erf(GAUSSIAN_CUT_SIGMAS / Math.SQRT2);
  return {
    halfLength_m: GAUSSIAN_CUT_SIGMAS * sigmaX_m,
    halfDepth_m: GAUSSIAN_CUT_SIGMAS * sigmaY_m,
    peak_m2: 1 / (2 * Math.PI * sigmaX_m * sigmaY_m),
    across: (u) => Math.exp(-exponent * u * u),
    along: (w) => Math.exp(-exponent * w),
    chordSquared: () => 1,
    alongIntegral: (Math.sqrt(2 * Math.PI) / GAUSSIAN_CUT_SIGMAS) * keptOneWay,
    cutFraction: 1 - keptOneWay * keptOneWay,
  };
}

/** A fan that states its stroke profile, with `integral` = ∫ across du from -1 to 1. */
function strokeShape(a: number, b: number, across: (u: number) => number, integral: number): FanShape {
  const alongIntegral = beta(0.5, STROKE_FAMILY_BETA2);
  return {
    halfLength_m: a,
    halfDepth_m: b,
    peak_m2: 1 / (a * b * alongIntegral * integral),
    across,
    along: (w) => betaFactor(1 - w, STROKE_FAMILY_BETA2 - 1),
    chordSquared: () => 1,
    alongIntegral,
    cutFraction: 0,
  };
}

function flatTopShape(a: number, b: number, taper: number): FanShape {
  const across = (u: number) => (taper === 0 ? 1 : Math.min(1, Math.max(0, (1 - Math.abs(u)) / taper)));
  return strokeShape(a, b, across, 2 - taper);
}

function tableShape(b: number, profile: Extract<Profile, { family: 'table' }>): FanShape {
  const { place_m, film } = profile;
  const a = Math.max(Math.abs(place_m[0] as number), Math.abs(place_m[place_m.length - 1] as number));
  let area = 0;
  for (let i = 1; i < place_m.length; i++) {
    area += 0.5 * ((film[i] as number) + (film[i - 1] as number)) * ((place_m[i] as number) - (place_m[i - 1] as number));
  }
  return strokeShape(a, b, (u) => filmAt(place_m, film, u * a), area / a);
}

/** Linear between uneven places, nothing outside them. */
function filmAt(place_m: readonly number[], film: readonly number[], at_m: number): number {
  const last = place_m.length - 1;
  if (at_m < (place_m[0] as number) || at_m > (place_m[last] as number)) return 0;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((place_m[middle] as number) <= at_m) low = middle;
    else high = middle;
  }
  const start = place_m[low] as number;
  const values = [film[low] as number, film[high] as number];
  return interpolateEven(values, start, (place_m[high] as number) - start, at_m);
}
