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
}
