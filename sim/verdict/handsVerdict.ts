import type { Grid } from '../base/grid.ts';
import type { Proportion } from '../base/proportion.ts';
import type { FaultKind } from './verdict.ts';

/** The spread of a figure over many hands. */
export interface HandsSpread {
  readonly mean: number;
  readonly deviation: number;
  /** Below these lie 5 % and 95 % of the hands. */
  readonly low: number;
  readonly high: number;
}

/** What many hands made of one plan. */
export interface HandsVerdict {
  readonly count: number;
  /** No zone of any fault of 1 cm² or more. */
  readonly faultless: Proportion;
  /** At most `SMALL_SHARE` of the panel at fault. */
  readonly nearlyFaultless: Proportion;
  readonly byKind: readonly { readonly kind: FaultKind; readonly chance: Proportion }[];
  /** Share of the panel at fault, over the hands. */
  readonly faultyShare: HandsSpread;
  /** Standard error of its mean. */
  readonly faultyError: number;
  readonly film_m: HandsSpread;
  readonly cv: HandsSpread;
  /** Chance of a fault by cell, not a number outside the panel; and the place where it is most. */
  readonly grid: Grid;
  readonly chance: Float32Array;
  readonly worst: { readonly at_m: readonly [number, number]; readonly chance: number; readonly kind: FaultKind } | null;
}

/** Where a set-up stands among others, by what it forgives. */
export interface HandsRank {
  /** Place in the list that was ranked. */
  readonly place: number;
  /** From 1; those that cannot be told apart from the one before share its rank. */
  readonly rank: number;
}
