import type { CardPhoto, FanFit, FanFits, FitFamily, FitIntervals, PhotoFan, PhotoTask, SetUpSpec } from '../../sim/index.ts';
import type { Problem } from '../app/problem.ts';

/** What a part of the card comes to, or why it comes to nothing; null where the card has no such part. */
export type Told<Answer> = { readonly answer: Answer } | { readonly problem: Problem } | null;

/** Readings across the fan, fitted with every family, and one of them drawn. */
export interface FitReply {
  readonly fits: FanFits;
  /** Of the fits, the one that is drawn: as asked for, or the best. */
  readonly chosen: FanFit;
  readonly intervals: FitIntervals;
  /** The curve at the readings' places, and as it is drawn. */
  readonly fitted: Float64Array;
  readonly curvePlace_m: Float64Array;
  readonly curveFilm: Float64Array;
}

/** What a set-up's card comes to. */
export interface CardReply {
  readonly fit: Told<FitReply>;
}

/** Messages of the test card: name, what is asked, what comes back. */
export interface CardMessages {
  /** Works the card of a set-up out, part by part: a part that is wrong takes no other with it. */
  cardFit: { request: { setUp: SetUpSpec; family: FitFamily | null; seed: number }; reply: CardReply };
  /** Reads a photograph, whose pixels are handed over; nothing of it is kept. */
  cardPhoto: { request: { photo: CardPhoto; task: PhotoTask }; reply: PhotoFan };
}
