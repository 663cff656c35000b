/** What the coat should be. Limits are shares of the target film. */
export interface Target {
  readonly film: 'wet' | 'dry';
  readonly thickness_m: number;
  /** Below this share: thin lap. */
  readonly minFraction: number;
  /** Above this share: heavy spot. */
  readonly maxFraction: number;
  /** Below this share: holiday. */
  readonly holidayFraction: number;
  /** Dry-spray zone where more than this share of the wet film arrived dry. */
  readonly dryFraction: number;
  readonly life: LifeLimits;
}

/** Limits of what a film may go through while it lives. */
export interface LifeLimits {
  /** Distance run, m, of film that has gathered by `gather_m` or more. */
  readonly run_m: number;
  readonly gather_m: number;
  /** Amplitude of the ripple left, m. */
  readonly peel_m: number;
  /** Share of the coat that was set when the rest landed on it (or the rest, where that is less), 0 to 0.5. */
  readonly lapFraction: number;
  /** Film temperature less the dew point, K; below it, blush. */
  readonly blush_K: number;
  /** Fresh film times the solvent share of the film beneath, m. */
  readonly trapped_m: number;
  /** Evaporation over diffusion just before the film sets. */
  readonly skin: number;
  /** Dry film of all coats, m. */
  readonly thick_m: number;
}
