/** Why a place is read. */
export type PlaceKind = 'spread' | 'thinnest' | 'heaviest';

/** One place to read. */
export interface PlaceToRead {
  /** From 1, in the order to be read. */
  readonly number: number;
  readonly kind: PlaceKind;
  readonly at_m: readonly [number, number];
  /** Names of area and spot for the readings' own fields; area empty where the rule knows none. */
  readonly area: string;
  readonly spot: string;
  /** Readings to take there: three within a circle of 4 cm for a spot, else one. */
  readonly readings: number;
  readonly why: string;
}

/** Where to read a panel. */
export interface SamplingPlan {
  readonly places: readonly PlaceToRead[];
  /** What the rule's own table asks for. */
  readonly asked: { readonly areas: number; readonly spots: number; readonly readings: number; readonly source: string };
  /** Places keep this far from edges and holes, m. */
  readonly margin_m: number;
  /** Radius of a spot, m; 0 where the rule has none. */
  readonly spotRadius_m: number;
  /** What could not be had. */
  readonly doubts: readonly string[];
}
