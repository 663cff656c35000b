import canonicalize from 'canonicalize';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { CrosscoatError } from '../base/errors.ts';
import type { SignedSpec } from '../job/schema.ts';
import type { Recorded } from './recorded.ts';

/**
 * The canonical form of a JSON value (RFC 8785, JSON Canonicalization Scheme): no white space, keys in the order of their UTF-16
 * units, numbers as ECMAScript writes them. Keys that hold undefined are left out, as a file leaves them out.
 * @throws CrosscoatError `schema` for what JSON cannot say: NaN, infinities, half of a surrogate pair, a value within itself.
 */
export function canonicalForm(value: unknown): string {
  try {
    const text = canonicalize(value);
    if (text !== undefined) return text;
  } catch (thrown) {
    throw new CrosscoatError('schema', `canonicalForm: ${thrown instanceof Error ? thrown.message : String(thrown)}; a record holds only what JSON can say`);
  }
  throw new CrosscoatError('schema', 'canonicalForm: the value is undefined; give a value that JSON can say');
}

/** SHA-256 (FIPS 180-4) of a text's UTF-8, 64 hexadecimal digits in lower case. */
export function sha256Of(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}

/**
 * What a digest is taken of: the canonical form of the record with its signature, but without the digest itself. Every key that the
 * file states counts, its history too. So that an old digest holds for ever, a later version of the job file may add keys to
 * entries and surveys only where they are left out unless stated.
 */
export function signedForm<T extends Recorded>(entry: T, signature: Omit<SignedSpec, 'sha256'>): string {
  const { at, who, certificate, words, recordingSha256 } = signature;
  return canonicalForm({ ...entry, signed: { at, who, certificate, words, recordingSha256 } });
}
