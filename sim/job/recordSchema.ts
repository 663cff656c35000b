import * as v from 'valibot';
import { LONGEST_BEFORE } from '../base/historyLimits.ts';
import { record, text } from './words.ts';

/** What log entries and surveys have in common: when, who, what was there before, and the sign-off. */

/** RFC 3339, seconds left out where nobody has them: a moment is read in another zone and another year. */
const MOMENT = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d)?(Z|[+-]([01]\d|2[0-3]):[0-5]\d)$/;
const DIGEST = /^[0-9a-f]{64}$/;

/** A date and time with its offset from UTC. */
export function moment(description: string) {
  const advice = `give a date and time with its offset such as 2026-05-04T08:10+02:00 (${description})`;
  return v.pipe(v.string(advice), v.regex(MOMENT, advice), v.description(description));
}

function digest(description: string) {
  const advice = `give 64 hexadecimal digits (${description})`;
  return v.pipe(v.string(advice), v.regex(DIGEST, advice), v.description(description));
}

/** A person, and the number of the certificate where the record asks for one. */
export const PERSON = {
  who: text(200, 'who did it'),
  certificate: v.optional(text(100, 'number of the person\'s certificate')),
};

/** One change: what was there before. */
export const ChangeSchema = record(
  {
    at: moment('when it was changed'),
    who: text(200, 'who changed it'),
    what: text(300, 'what was changed: a JSON pointer within the entry'),
    before: text(LONGEST_BEFORE, 'what was there before, as JSON; empty where nothing was'),
  },
  'a change that was made later',
);

/** The words are the signing person's own: the record keeps them and certifies nothing. */
export const SignedSchema = record(
  {
    at: moment('when it was signed'),
    ...PERSON,
    words: v.optional(text(1000, 'what the person signs, in their own words')),
    recordingSha256: v.optional(digest('SHA-256 of the text of its recording as it was')),
    sha256: digest('SHA-256 of the canonical form (RFC 8785) of the entry with all of this but the digest itself'),
  },
  'signed off: from now on it is locked',
);
