/** Kinds of input that the model refuses. `internal` is a bug of ours, never the reader's fault. */
export type ErrorCode =
  | 'not-json'
  | 'not-found'
  | 'schema'
  | 'version'
  | 'unit'
  | 'range'
  | 'geometry'
  | 'time'
  | 'columns'
  | 'limit'
  | 'locked'
  | 'cancelled'
  | 'internal';

/** Where in the input something is: as much of it as is known. */
export interface Place {
  readonly file?: string;
  /** JSON pointer (RFC 6901) into the job. */
  readonly pointer?: string;
  /** 1-based row of a text file, the header being row 1. */
  readonly row?: number;
  readonly column?: string;
  /** 0-based stroke index. */
  readonly stroke?: number;
  /** A place on the panel, x right and y up, m. */
  readonly at_m?: readonly [number, number];
}

/**
 * Bad input. The message names the place, the value, the limit, why, and what to do;
 * `place` says the same for a program.
 */
export class CrosscoatError extends Error {
  constructor(
    readonly code: ErrorCode,
    message: string,
    readonly place: Place = {},
  ) {
    super(visible(message));
    this.name = 'CrosscoatError';
  }
}

/** Letters that a message must not pass on from a file: they would move a terminal's cursor, or turn the line about. Line breaks and tabs stay. */
const UNSEEN = /[\u0000-\u0008\u000b-\u001f\u007f\u202a-\u202e\u2066-\u2069]/g;

/** A message says what a reader can take in: more is a file's own text, and its middle is left out. */
const LONGEST = 5000;
const LONGEST_END = 1000;

/** A text with its unseen letters written out, its middle left out where it is too long. */
function visible(text: string): string {
  const short = text.length <= LONGEST ? text : `${text.slice(0, LONGEST - LONGEST_END)} … ${text.slice(-LONGEST_END)}`;
  return short.replace(UNSEEN, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

/** Kinds of doubt that travel with a result to screen, report and JSON. */
export type WarningCode =
  | 'distance-range'
  | 'fan-wider-than-panel'
  | 'outline-moved'
  | 'time-gap'
  | 'row-dropped'
  | 'column-ignored'
  | 'trigger-chatter'
  | 'no-strokes'
  | 'defaults-used'
  | 'model-limit'
  | 'unknown-supply'
  | 'small-zones-dropped'
  | 'coarse-grid'
  | 'off-panel'
  | 'wrong-gauge'
  | 'rule-scope'
  | 'few-readings'
  | 'mixed-kinds'
  | 'below-zero';

/** A doubtful result: shown, never thrown, never logged by the model. */
export interface Warning {
  readonly code: WarningCode;
  readonly text: string;
  readonly place: Place;
}

/** States a bug of ours: throws where `condition` is false. Bad input has `check…` instead. */
export function assertThat(condition: boolean, what: string): asserts condition {
  if (!condition) throw new CrosscoatError('internal', `internal: ${what}; please report this`);
}
