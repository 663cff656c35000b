import { CrosscoatError } from '../base/errors.ts';
import type { ChangeSpec, SignedSpec } from '../job/schema.ts';
import { canonicalForm, sha256Of, signedForm } from './digest.ts';
import { withHistory } from './history.ts';
import { SIGNED_POINTER, type Done, type Recorded } from './recorded.ts';

/** A record that was signed, and whether it still is what was signed. */
export type SignatureState = 'unsigned' | 'matches' | 'entry-changed' | 'recording-changed' | 'recording-missing';

/** Longest reason for reopening, letters: as long as the words of a signature may be. */
export const LONGEST_REASON = 1000;

/**
 * The record signed off: locked from now on, with the digest of all that it states. The words are the signing person's own; the
 * program records them and certifies nothing.
 * @throws CrosscoatError `locked` where it is signed already, `schema` where nobody signs.
 */
export function signed<T extends Recorded>(entry: T, by: Omit<SignedSpec, 'sha256'>): T {
  if (entry.signed !== undefined) throw new CrosscoatError('locked', `signed: ${entry.signed.who} signed this on ${entry.signed.at}; reopen it first, with a reason`);
  if (by.who.trim() === '') throw new CrosscoatError('schema', 'signed: nobody signs; give the name of the person who does');
  const signature = stated(by);
  return { ...entry, signed: { ...signature, sha256: sha256Of(signedForm(entry, signature)) } };
}

/**
 * A signed record open for changes again. The signature goes into the history with the reason, as JSON
 * `{"signed": …, "why": …}` under `/signed`, so that it is never lost.
 * @throws CrosscoatError `schema` where it is not signed, or nobody says who or why; `limit` where the history is full or the reason too long.
 */
export function reopened<T extends Recorded>(entry: T, by: Done, why: string): T {
  if (entry.signed === undefined) throw new CrosscoatError('schema', 'reopened: this is not signed; it can be changed as it is');
  if (by.who.trim() === '' || why.trim() === '') throw new CrosscoatError('schema', 'reopened: say who reopens it and why; both go into the history');
  if (why.length > LONGEST_REASON) throw new CrosscoatError('limit', `reopened: the reason is ${why.length} letters long, more than ${LONGEST_REASON}; say it shorter`);
  const before = canonicalForm({ signed: entry.signed, why: why.trim() });
  const open: T = { ...entry };
  Reflect.deleteProperty(open, 'signed');
  return withHistory(open, { ...by, what: SIGNED_POINTER, before });
}

/** The signature that a change took back, and the reason; null for any other change, or one that nobody can read. */
export function takenBack(change: ChangeSpec): { readonly signed: SignedSpec; readonly why: string } | null {
  if (change.what !== SIGNED_POINTER) return null;
  try {
    const { signed: signature, why } = JSON.parse(change.before) as { signed?: SignedSpec; why?: unknown };
    return typeof signature?.who === 'string' && typeof why === 'string' ? { signed: signature, why } : null;
  } catch {
    return null;
  }
}

/**
 * Whether a signed record is still what was signed.
 * @param recordingText the text of its recording as it is now; null where the job has none. Only looked at where one was signed for.
 */
export function signatureState(entry: Recorded, recordingText: string | null): SignatureState {
  const signature = entry.signed;
  if (signature === undefined) return 'unsigned';
  if (sha256Of(signedForm(entry, signature)) !== signature.sha256) return 'entry-changed';
  if (signature.recordingSha256 === undefined) return 'matches';
  if (recordingText === null) return 'recording-missing';
  return sha256Of(recordingText) === signature.recordingSha256 ? 'matches' : 'recording-changed';
}

/** The signature with what it states, keys in the schema's order. */
function stated({ at, who, certificate, words, recordingSha256 }: Omit<SignedSpec, 'sha256'>): Omit<SignedSpec, 'sha256'> {
  return {
    at, who,
    ...(certificate === undefined || certificate === '' ? {} : { certificate }),
    ...(words === undefined || words === '' ? {} : { words }),
    ...(recordingSha256 === undefined ? {} : { recordingSha256 }),
  };
}
