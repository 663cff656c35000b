import type { SignedSpec } from '../../job/schema.ts';
import type { SignatureState } from '../../log/signing.ts';

/** How a record's signature stands, and what was signed, for a table: the same columns for entries and surveys. */
export interface SignatureShown {
  readonly signature: SignatureState;
  readonly signed: SignedSpec | undefined;
}

export const SIGNATURE_COLUMNS: readonly (readonly [name: string, cell: (shown: SignatureShown) => string | undefined])[] = [
  ['signature', ({ signature }) => signature],
  ['signed_at', ({ signed }) => signed?.at],
  ['signed_by', ({ signed }) => signed?.who],
  ['signed_certificate', ({ signed }) => signed?.certificate],
  ['signed_words', ({ signed }) => signed?.words],
  ['signed_sha256', ({ signed }) => signed?.sha256],
];
