/** The numbers of a set-up that a card can replace, in the job file's units. */
export type ProvedKey =
  | 'width_mm'
  | 'depth_mm'
  | 'atDistance_mm'
  | 'origin_mm'
  | 'profile'
  | 'beta1'
  | 'taper_mm'
  | 'fluidRate_mL_min'
  | 'efficiency_percent'
  | 'efficiencyAtDistance_mm'
  | 'nearest_mm'
  | 'farthest_mm';

/** One number that a card replaces. */
export interface ProvedNumber {
  readonly key: ProvedKey;
  /** What the set-up said; null where it had no such number. A profile is named by its family. */
  readonly from: number | string | null;
  readonly to: number | string;
  /** Half 95 % interval in the key's unit; null where none was found. */
  readonly within: number | null;
}
