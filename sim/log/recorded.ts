import type { ChangeSpec, SignedSpec } from '../job/schema.ts';

/** What an entry of the log and a survey have in common: changes, oldest first, and the sign-off. */
export interface Recorded {
  readonly history: readonly ChangeSpec[];
  readonly signed?: SignedSpec | undefined;
}

/** The pointer under which the history keeps a signature that was taken back. */
export const SIGNED_POINTER = '/signed';

/** When something was done (RFC 3339, with its offset) and who did it. */
export interface Done {
  readonly at: string;
  readonly who: string;
}
