import { checkRange } from '../base/check.ts';

/**
 * How a film hides what lies beneath it, by two streams of light (P. Kubelka and F. Munk, Zeitschrift
 * für technische Physik 12, 1931), in the hyperbolic form (P. Kubelka, Journal of the Optical
 * Society of America 38, 1948; both from memory). One wavelength stands for all: light or dark, not hue.
 * It does not hold for flakes, as in aluminium: `aluminiumLight.ts`.
 */
export interface FilmOptics {
  /** K: light taken up, 1/m of dry film, 0 or more. */
  readonly absorption_1_m: number;
  /** S: light thrown back, 1/m of dry film, 0 or more. */
  readonly scatter_1_m: number;
}

/** Contrast at which a film is said to hide: 0.98, ISO 6504-1:2019. */
export const HIDING_CONTRAST = 0.98;
/** What the white half of a contrast chart throws back: about 0.80, ISO 6504-1:2019. */
export const CHART_WHITE = 0.8;
/** No film of paint is thicker; what does not hide by then never does. */
const THICKEST_M = 0.1;

/** K of a colour from what a film of it throws back when more film changes nothing: K = S (1 - R∞)²/(2 R∞). */
export function absorption_1_m(scatter_1_m: number, infiniteReflectance: number): number {
  return (scatter_1_m * (1 - infiniteReflectance) ** 2) / (2 * infiniteReflectance);
}

/**
 * Optics of a colour as a job states it.
 * @param infiniteReflectance R∞, above 0 and up to 1, without the shine of the surface.
 * @throws CrosscoatError `range`.
 */
export function colourOptics(infiniteReflectance: number, scatter_1_m: number): FilmOptics {
  checkRange({ name: 'colourOptics: reflectance', value: infiniteReflectance, low: 1e-4, high: 1, advice: 'give the share of light that a thick film throws back' });
  checkRange({ name: 'colourOptics: scatter', value: scatter_1_m, low: 1, high: 1e8, unit: '1/m', advice: 'give the scattering of the dry film; 100 000 1/m for a white of good hiding' });
  return { absorption_1_m: absorption_1_m(scatter_1_m, infiniteReflectance), scatter_1_m };
}

/** R∞ = a - b: what a film throws back that is so thick that more changes nothing; 0 where nothing scatters. */
export function infiniteReflectance({ absorption_1_m: K, scatter_1_m: S }: FilmOptics): number {
  if (S === 0) return 0;
  const k = K / S;
  // The same as a - b, without the difference of two near numbers.
  return 1 / (1 + k + Math.sqrt(k * (k + 2)));
}

/**
 * Share of light that a dry film throws back over a ground. S = 0: Rg e^(-2KX). K = 0 and X = 0 are
 * the limits of the one formula, which is written with u = tanh(bSX)/b so that none of them divides by zero.
 * @param ground what the ground throws back, 0 (black) to 1.
 */
export function filmReflectance({ absorption_1_m: K, scatter_1_m: S }: FilmOptics, film_m: number, ground: number): number {
  if (S === 0) return ground * Math.exp(-2 * K * film_m);
  const k = K / S;
  const b = Math.sqrt(k * (k + 2));
  const u = b === 0 ? S * film_m : Math.tanh(b * S * film_m) / b;
  return ((1 - ground * (1 + k)) * u + ground) / ((1 + k - ground) * u + 1);
}

/** Contrast ratio over black and over the white of a chart, 0 to 1. */
export function contrastRatio(optics: FilmOptics, film_m: number, white = CHART_WHITE): number {
  return filmReflectance(optics, film_m, 0) / filmReflectance(optics, film_m, white);
}

/** The darker of two over the lighter: 1 where they cannot be told apart. */
export function contrastBetween(one: number, other: number): number {
  return one === other ? 1 : Math.min(one, other) / Math.max(one, other);
}

/**
 * Contrast of a film over one ground with the same colour so thick that nothing shows through: the
 * test of hiding over a known colour, which asks less than a chart of black and white.
 */
export function contrastOver(optics: FilmOptics, film_m: number, ground: number): number {
  return contrastBetween(filmReflectance(optics, film_m, ground), infiniteReflectance(optics));
}

/**
 * Least dry film that hides what is beneath, m, by bisection to 1e-12 m; 0 where bare ground looks
 * the same, Infinity where 0.1 m would not do.
 * @param ground what the colour beneath throws back; null where it is not known: a chart's black and white.
 */
export function hidingFilm_m(optics: FilmOptics, ground: number | null): number {
  const contrast = (film_m: number): number => (ground === null ? contrastRatio(optics, film_m) : contrastOver(optics, film_m, ground));
  if (contrast(0) >= HIDING_CONTRAST) return 0;
  if (!(contrast(THICKEST_M) >= HIDING_CONTRAST)) return Infinity;
  let [low, high] = [0, THICKEST_M];
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (contrast(middle) >= HIDING_CONTRAST) high = middle;
    else low = middle;
  }
  return high;
}

/** Whole coats that bring a film, at least 0; Infinity where it never hides. @param coat_m dry film of one coat, above 0. */
export function coatsToHide(film_m: number, coat_m: number): number {
  // A film that a whole number of coats brings exactly asks for no more by a rounding.
  return Math.max(0, Math.ceil(film_m / coat_m - 1e-9));
}

/** Two colours both ways round: the order that takes less film on top is the trade's "lighter first, the darker over it". */
export interface HidingOrder {
  /** Dry film of the first that hides the second, m. */
  readonly firstOnTop_m: number;
  /** Dry film of the second that hides the first, m. */
  readonly secondOnTop_m: number;
}

/** Films that two colours need over each other. */
export function hidingOrder(first: FilmOptics, second: FilmOptics): HidingOrder {
  return {
    firstOnTop_m: hidingFilm_m(first, infiniteReflectance(second)),
    secondOnTop_m: hidingFilm_m(second, infiniteReflectance(first)),
  };
}

/** Share of outside light that a glossy film throws back at its face. From memory: J. L. Saunderson, JOSA 32, 1942; 0.04 in ISO 18314-2. */
export const SURFACE_K1 = 0.04;
/** Share of inside light that the face throws back inward. From memory: same; 0.6 in ISO 18314-2. */
export const SURFACE_K2 = 0.6;

/** What is seen of a film with a glossy face: k1 + (1 - k1)(1 - k2) R/(1 - k2 R). */
export function seenReflectance(inside: number): number {
  return SURFACE_K1 + ((1 - SURFACE_K1) * (1 - SURFACE_K2) * inside) / (1 - SURFACE_K2 * inside);
}
