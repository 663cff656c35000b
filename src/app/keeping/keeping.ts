import { signal } from '@preact/signals';
import type { JobKeeper } from '../../storage/jobKeeper.ts';
import type { JobStore } from '../../storage/jobStore.ts';

/** How well this browser keeps what is here; null: not known (yet). */
export interface Room {
  /** The browser's answer to the wish that it never clears this page's storage by itself. */
  readonly persisted: boolean | null;
  readonly usage_B: number | null;
  readonly quota_B: number | null;
  /** A page is never told: `likely` by signs that private windows give, `unknown` where none was seen. */
  readonly privateGuess: 'likely' | 'unknown';
}

export const room = signal<Room>({ persisted: null, usage_B: null, quota_B: null, privateGuess: 'unknown' });

/** What keeps the job in hand, and where; null while the browser refuses storage. */
export const keeping: { now: { readonly keeper: JobKeeper; readonly store: JobStore } | null } = { now: null };
