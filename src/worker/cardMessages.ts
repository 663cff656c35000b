import type {
  CardPhoto, FanFault, FanOpening, FitFamily, MixSpec, Measured, PhotoFan, PhotoTask, ProvedFit, ProvedNumber, SetUpSpec, SpotShape, Warning,
} from '../../sim/index.ts';
import type { Problem } from '../app/problem.ts';

/** What a part of the card comes to, or why it comes to nothing; null where the card has no such part. */
export type Told<Answer> = { readonly answer: Answer } | { readonly problem: Problem } | null;

/** Readings across the fan, fitted with every family, one of them drawn. */
export interface FitReply {
  readonly fit: ProvedFit;
  /** The curve at the readings' places, and as it is drawn. */
  readonly fitted: Float64Array;
  readonly curvePlace_m: Float64Array;
  readonly curveFilm: Float64Array;
  readonly faults: readonly FanFault[];
}

/** The set-up with what the card has measured in place of what it states. */
export interface ProvedReply {
  readonly setUp: SetUpSpec;
  readonly changed: readonly ProvedNumber[];
  readonly warnings: readonly Warning[];
}

/** What a set-up's card comes to, part by part and as a whole. */
export interface CardReply {
  readonly fit: Told<FitReply>;
  /** Fluid rate, m³/s. */
  readonly caught: Told<Measured>;
  /** Null in the answer for a single width, which shows no opening. */
  readonly widths: Told<FanOpening | null>;
  /** Share of the solids that lands. */
  readonly foil: Told<Measured>;
  readonly comb: Told<Measured>;
  readonly proved: Told<ProvedReply>;
}

/** A set-up with its card, and what the answer depends on beside them. */
export interface CardRequest {
  readonly setUp: SetUpSpec;
  /** What is in the cup; null where the set-up says it. */
  readonly mix: MixSpec | null;
  /** Which family the set-up takes; null for the best, 'table' for the readings as they are. */
  readonly family: FitFamily | 'table' | null;
  /** What a photograph showed of the spot, beside its readings. */
  readonly spot: SpotShape | null;
  readonly seed: number;
}

/** Messages of the test card: name, what is asked, what comes back. */
export interface CardMessages {
  /** Works the card of a set-up out: a part that is wrong takes no other with it. */
  cardFit: { request: CardRequest; reply: CardReply };
  /** Reads a photograph, whose pixels are handed over; nothing of it is kept. */
  cardPhoto: { request: { photo: CardPhoto; task: PhotoTask }; reply: PhotoFan };
}
