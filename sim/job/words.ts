import * as v from 'valibot';
import { nearestWord } from '../base/nearestWord.ts';

/**
 * Building blocks of the job's schema. Each carries, as its message, what to give instead, so that
 * a reader meets the same words in an error, in the JSON Schema and in the documentation.
 */

const ID_ADVICE = 'give an id of 1 to 64 letters, digits, - or _, beginning with a letter or digit';
/** A stable name that other parts of a file refer to. */
export const id = v.pipe(
  v.string(ID_ADVICE),
  v.regex(/^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/, ID_ADVICE),
  v.description('stable name that other parts of the job refer to'),
);

/** A text of at most `longest` letters. */
export function text(longest: number, description: string) {
  const advice = `give a text of at most ${longest} letters (${description})`;
  return v.pipe(v.string(advice), v.maxLength(longest, advice), v.description(description));
}

/** A finite number from `low` to `high`. NaN and infinities fail. */
export function number(low: number, high: number, description: string) {
  const advice = `give a number from ${low} to ${high} (${description})`;
  return v.pipe(v.number(advice), v.minValue(low, advice), v.maxValue(high, advice), v.description(description));
}

/** A whole number from `low` to `high`. */
export function wholeNumber(low: number, high: number, description: string) {
  const advice = `give a whole number from ${low} to ${high} (${description})`;
  return v.pipe(
    v.number(advice),
    v.integer(advice),
    v.minValue(low, advice),
    v.maxValue(high, advice),
    v.description(description),
  );
}

/** true or false. */
export function yesNo(description: string) {
  return v.pipe(v.boolean(`give true or false (${description})`), v.description(description));
}

/** One of a few words. */
export function oneOf<const W extends readonly string[]>(words: W, description: string) {
  const advice = `give ${words.map((word) => `"${word}"`).join(' or ')} (${description})`;
  return v.pipe(v.picklist(words, advice), v.description(description));
}

/** A list with limits on its length. */
export function list<T extends v.BaseSchema<unknown, unknown, v.BaseIssue<unknown>>>(
  item: T,
  fewest: number,
  most: number,
  description: string,
) {
  const advice = `give a list of ${fewest} to ${most} (${description})`;
  return v.pipe(v.array(item, advice), v.minLength(fewest, advice), v.maxLength(most, advice), v.description(description));
}

/** An object with exactly these keys. */
export function record<E extends v.ObjectEntries>(entries: E, description: string) {
  return v.pipe(
    v.strictObject(entries, (issue) => recordAdvice(issue, entries, description)),
    v.description(description),
  );
}

/** What to do about an unknown key, a missing key, or something that is no object. */
export function recordAdvice(issue: v.StrictObjectIssue, entries: v.ObjectEntries, description: string): string {
  const keys = Object.keys(entries);
  if (issue.expected === 'never') {
    const key = String(issue.input);
    const near = nearestWord(key, keys);
    return `is not a known key${otherUnknown(issue, key, keys)}; ${near === null ? `known here: ${keys.join(', ')}` : `did you mean "${near}"?`}`;
  }
  if (issue.path !== undefined) {
    const key = issue.path[issue.path.length - 1]?.key as string;
    const missing = v.safeParse(entries[key] as v.GenericSchema, undefined);
    return `is missing; ${missing.issues?.[0].message ?? 'give it'}`;
  }
  return `give an object with the keys ${keys.join(', ')} (${description})`;
}

/** The schema stops at an object's first unknown key; a reader wants to hear of all of them. */
function otherUnknown(issue: v.StrictObjectIssue, key: string, known: readonly string[]): string {
  const input = issue.path?.[issue.path.length - 1]?.input as object;
  const others = Object.keys(input).filter((other) => other !== key && !known.includes(other));
  return others.length === 0 ? '' : ` (nor ${others.length === 1 ? 'is' : 'are'} ${others.slice(0, 5).map((other) => `"${other}"`).join(', ')})`;
}
