/** The film that one stroke leaves across the fan; `u` runs from -1 to 1 over the full width. */
export type Profile =
  | { readonly family: 'double-beta'; readonly beta1: number; readonly beta2: number }
  /** Full width = 4 standard deviations along the long axis, full depth = 4 along the short one. */
  | { readonly family: 'gaussian' }
  | { readonly family: 'parabola' }
  | { readonly family: 'triangle' }
  | { readonly family: 'cosine-squared' }
  /** Even film, falling in a straight line to nothing over `taper_m` at each edge (at the set-up's stated distance). */
  | { readonly family: 'flat-top'; readonly taper_m: number }
  /** A measured stroke: film (any proportional unit) at places from the fan's centre line, m, rising. */
  | { readonly family: 'table'; readonly place_m: readonly number[]; readonly film: readonly number[] };

/** Everything that fixes the fan and what it throws. SI units. */
export interface SetUp {
  readonly id: string;
  readonly name: string;
  readonly fan: {
    /** Full width (long axis) and depth (short axis) on a square panel at `atDistance_m`. */
    readonly width_m: number;
    readonly depth_m: number;
    readonly atDistance_m: number;
    /** Where the rays seem to start, in front of the nozzle (behind it if negative); below `atDistance_m`. */
    readonly origin_m: number;
    readonly profile: Profile;
  };
  /** Liquid leaving the gun with the trigger full on. */
  readonly fluidRate_m3_s: number;
  /** Transfer efficiency η(D) = efficiency · exp(-(D - atDistance_m)/decayLength_m), held to at most 1. */
  readonly transfer: {
    readonly efficiencyFraction: number;
    readonly atDistance_m: number;
    readonly decayLength_m: number;
  };
  /** Volume solids of what is in the cup (after thinning). */
  readonly volumeSolidsFraction: number;
  readonly drops: {
    /** Sauter mean diameter. */
    readonly meanDiameter_m: number;
    /** Geometric standard deviation of the drops' volume, 1 = all alike. */
    readonly spreadRatio: number;
    /** Relative evaporation rate of the thinner, n-butyl acetate = 1. */
    readonly solventSpeedRatio: number;
    /** Viscosity, and air pressure at the cap, at which the drops have that diameter. */
    readonly atViscosity_Pa_s: number;
    readonly atPressure_Pa: number;
  };
  /** Air pressure above the room's at the cap. */
  readonly capPressure_Pa: number;
  /** From trigger to fluid, both ways. */
  readonly triggerLag_s: number;
  /** Distances for which the fan was measured or may be believed; outside, results carry a warning. */
  readonly distanceRange_m: readonly [low: number, high: number];
}
