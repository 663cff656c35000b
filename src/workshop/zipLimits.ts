import { MOST_LISTED } from '../../sim/index.ts';

/** What a zip may hold before it is believed to be a mistake or a trap. */
export interface ZipLimits {
  /** Bytes of the zip itself. */
  readonly zip: number;
  readonly files: number;
  /** Unpacked bytes of one file, and of all that are read in one go. */
  readonly file: number;
  readonly total: number;
  /** Unpacked over packed bytes of a file, once it has more than `freely` bytes. */
  readonly ratio: number;
  readonly freely: number;
}

/**
 * Assumed: a job of a hundred small photographs and an hour of strokes has 60 MB, a workshop of 500 jobs with a dozen
 * photographs each 1.5 GB unpacked. Files are unpacked one after another, so that the total costs time and no memory. JSON shrinks
 * to a tenth or a fiftieth; DEFLATE (RFC 1951) cannot do better than 1032 to 1, which is what a bomb is made of.
 */
export const ZIP_LIMITS: ZipLimits = { zip: 512e6, files: 2 * MOST_LISTED + 100, file: 128e6, total: 2e9, ratio: 200, freely: 2e6 };
