/**
 * What those need to know of the schema who have nothing to check by it: it is the largest part of the model's
 * words, and the page's first film goes without.
 */

/** Version of the job file that this build writes. Older versions are upgraded on reading. */
export const SCHEMA_VERSION = 6;

/** Longest text of one recording, letters. */
export const LONGEST_RECORDING = 64e6;
