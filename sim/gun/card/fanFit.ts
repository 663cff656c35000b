import type { Warning } from '../../base/errors.ts';
import type { CardReadings } from './cardReadings.ts';

/** The families of stroke profiles that readings are fitted with. */
export const FIT_FAMILIES = ['double-beta', 'gaussian', 'parabola', 'triangle', 'cosine-squared', 'flat-top'] as const;
export type FitFamily = (typeof FIT_FAMILIES)[number];

/** The numbers of a fit that are given an interval. */
export type FittedNumber = 'width' | 'beta1' | 'taper' | 'offset' | 'imbalance' | 'fog';

/**
 * One family fitted to readings across the fan: `film(x) = fog + peak · P(u) (1 + imbalance · u)`, with
 * u = (x - offset)/(width/2) and P the family's stroke profile, 1 at its highest. Plain data, so that it can be posted;
 * `fittedFilm` draws it.
 */
export interface FanFit {
  readonly family: FitFamily;
  /** Full width as the family states it (a Gaussian's is 4 standard deviations). */
  readonly width_m: number;
  /** Exponent of the double-beta fan, its stroke being `(1-u²)^(beta1-½)`; null for the others. */
  readonly beta1: number | null;
  /** Width of each tapered edge of the flat top; null for the others. */
  readonly taper_m: number | null;
  /** Place of the fan's middle on the readings' own scale. */
  readonly offset_m: number;
  /** Positive where the film is heavier toward larger places; -1 to 1, and -½ to ½ for the Gaussian. */
  readonly imbalance: number;
  /** Film everywhere on the card, in the readings' unit; below 0 it is a zero error of what was read with. */
  readonly fog: number;
  /** Film that the fan alone leaves in its middle, in the readings' unit. */
  readonly peak: number;
  /** Numbers that were free in the fit; the scatter, which AICc counts too, is not among them. */
  readonly freeCount: number;
  /** Root mean square of readings less curve, in the readings' unit. */
  readonly rms: number;
  /** Corrected information criterion; only differences between families mean anything. */
  readonly aicc: number;
  /** How much this AICc lies above the best family's. */
  readonly behind: number;
  /** Akaike weight: share of the evidence among the families that were fitted. The weights add up to 1. */
  readonly weight: number;
}

/** Every family fitted to one card. */
export interface FanFits {
  readonly readings: CardReadings;
  /** Best first. */
  readonly fits: readonly FanFit[];
  /** Families that these readings cannot tell from the best (AICc less than 2 behind it); empty where it stands alone. */
  readonly tied: readonly FitFamily[];
  readonly warnings: readonly Warning[];
}

/** Where a number lies with 95 % confidence. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** 95 % intervals of a fit's numbers, in SI or the readings' unit; null for a number that the fit does not have or that was held. */
export type FitIntervals = Readonly<Record<FittedNumber, Interval | null>>;
