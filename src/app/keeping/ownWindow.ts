import type { LastWord } from '../../storage/lastWord.ts';

/** What a window keeps for itself: it comes back with the window, over a reload and where a closed one is opened again. */

/** The window's own job, so that two windows on two jobs each come back to theirs. */
const OWN_JOB = 'crosscoat-job';
const LAST_WORDS = 'crosscoat-last-words';

/** What the window had not kept when it went. */
export interface LastWords {
  /** Of the jobs that it had in hand. */
  readonly works: readonly LastWord[];
  /** What it looked at and typed beside the job, by the state's keys. */
  readonly view: readonly (readonly [key: string, value: unknown])[];
  /** They were tried once already and could not be kept. */
  readonly isRefused?: boolean;
}

export function ownJob(): string | null {
  return read(OWN_JOB);
}

export function rememberOwnJob(id: string): void {
  write(OWN_JOB, id);
}

/** Null where all was kept, and where what stands there is none. */
export function lastWords(): LastWords | null {
  try {
    return JSON.parse(read(LAST_WORDS) ?? 'null') as LastWords | null;
  } catch {
    return null;
  }
}

/** Done at once, while the page goes. What a window's own storage has no room for (some 5 MB) is left to the database. */
export function rememberLastWords(words: LastWords): void {
  write(LAST_WORDS, words.works.length === 0 && words.view.length === 0 ? null : JSON.stringify(words));
}

function read(key: string): string | null {
  try {
    return sessionStorage.getItem(key);
  } catch {
    return null;
  }
}

function write(key: string, text: string | null): void {
  try {
    sessionStorage.removeItem(key);
    if (text !== null) sessionStorage.setItem(key, text);
  } catch {
    // A browser that refuses it refuses the database too, which is told; and what has no room here is in the database, a moment later.
  }
}
