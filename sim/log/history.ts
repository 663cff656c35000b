import { CrosscoatError } from '../base/errors.ts';
import { LONGEST_BEFORE, MOST_CHANGES } from '../base/historyLimits.ts';
import { secondsOfMoment } from '../base/moment.ts';
import type { ChangeSpec } from '../job/schema.ts';
import { canonicalForm, sha256Of } from './digest.ts';
import { atPointer, withAtPointer } from './pointer.ts';
import { SIGNED_POINTER, type Done, type Recorded } from './recorded.ts';

/** Typing in one field by one person is one change for so long, s. Assumed: long enough for a sentence, short enough to tell an afterthought. */
export const ONE_CHANGE_S = 120;

/**
 * A record with one value changed, and in its history who changed it when and what was there before. Filling an empty field is no
 * change (undefined, an empty text, an empty list), until the record was signed once; adding to a list is none until the history
 * holds a change. Typing on in one field by the same person within two minutes is one change, with the value before the typing, and
 * so are additions to one list, told by the first; what ends as it was leaves no trace. Each item taken out is a change of its own.
 * @param pointer JSON pointer within the record: `/notes`, `/product/batch`, `/combs/2`.
 * @param value undefined takes the key, or the item of the list, out.
 * @param since the record as it stood when this typing began, where the caller knows: the change is then measured from there, so that
 *   the letters of a first fill are no changes of each other. How long that may go on is the caller's to end: two minutes as well.
 * @throws CrosscoatError `locked` for a signed record, `not-found` for a pointer into nothing, `limit` where the history is full.
 */
export function withChange<T extends Recorded>(entry: T, pointer: string, value: unknown, by: Done, since: T = entry): T {
  if (entry.signed !== undefined) {
    throw new CrosscoatError('locked', `${pointer}: ${entry.signed.who} signed this on ${entry.signed.at}, so it is locked; reopen it first, with a reason`, { pointer });
  }
  const changed = withAtPointer(entry, pointer, value);
  const open = since.history.at(-1);
  const list = atPointer(since, parentOf(pointer));
  const adds = Array.isArray(list) && pointer === `${parentOf(pointer)}/${list.length}` && value !== undefined;
  const isOneChange = adds ? open?.before === '' && parentOf(open.what) === parentOf(pointer) : !Array.isArray(list) && open?.what === pointer;
  const goesOn = since === entry && open !== undefined && isOneChange && isSoonAfter(open, by);
  const begun = since !== entry && entry.history.length > since.history.length ? entry.history.at(-1)?.at : undefined;
  const [kept, change] = goesOn ? [since.history.slice(0, -1), open] : [since.history, { who: by.who, at: begun ?? by.at, what: pointer, before: beforeText(atPointer(since, pointer)) }];
  const plain: T = { ...changed, history: [...kept] };
  const isTold = change.before !== '' || (adds && since.history.length > 0) || since.history.some(({ what }) => what === SIGNED_POINTER);
  return isTold && change.before !== beforeText(value) ? withHistory(plain, change) : plain;
}

/** The record with one more change at the end of its history. @throws CrosscoatError `limit` where the history is full. */
export function withHistory<T extends Recorded>(entry: T, { at, who, what, before }: ChangeSpec): T {
  if (entry.history.length >= MOST_CHANGES) {
    throw new CrosscoatError('limit', `history: ${MOST_CHANGES} changes are kept and this has as many; sign it and begin another entry`);
  }
  return { ...entry, history: [...entry.history, { at, who, what, before }] };
}

/** The place that a pointer's own is in. */
function parentOf(pointer: string): string {
  return pointer.slice(0, pointer.lastIndexOf('/'));
}

/** A clock that was put back begins another change, so that both times are kept. */
function isSoonAfter({ who, at }: ChangeSpec, by: Done): boolean {
  if (who !== by.who) return false;
  const [from, to] = [secondsOfMoment(at), secondsOfMoment(by.at)];
  return from !== null && to !== null && to - from >= 0 && to - from <= ONE_CHANGE_S;
}

/** A value as the history keeps it: JSON, empty where nothing was; what is too long (a photograph) by its length and digest. */
function beforeText(value: unknown): string {
  if (value === undefined || value === '' || (Array.isArray(value) && value.length === 0)) return '';
  const text = canonicalForm(value);
  return text.length <= LONGEST_BEFORE ? text : canonicalForm({ leftOut: `${text.length} letters`, sha256: sha256Of(text) });
}
