import { problemOf } from '../problem.ts';

/** Fetched when storage refuses something: why, and what to do about it. */

const FILE_FIRST = 'Save the job as a file before you leave this page (button Save).';

const WORDS: Readonly<Record<string, string>> = {
  QuotaExceededError: `The room that the browser gives this page is full, or the disk is. ${FILE_FIRST} Then make room: save jobs that you no longer need as files and remove them on the sheet Jobs (putting them away in the archive frees nothing), remove practice sessions, or free the disk. It is tried again every few seconds, and this message goes when it is kept.`,
  InvalidStateError: `A newer version of this page is open in another window, or the browser has closed the storage. ${FILE_FIRST} Then load this page again.`,
  VersionError: `A newer version of this page has been here; this older one cannot read what it kept. Load the page again, with the network if you have one, so that the newer version comes.`,
  SecurityError: `This browser does not let this page keep anything: its settings refuse site data, or this is a private window. You can work, and all is gone when you close the page. ${FILE_FIRST}`,
};

/** Words for what storage threw. */
export function refusedWords(why: unknown): string {
  const name = why instanceof Error ? why.name : '';
  return WORDS[name] ?? `The browser refused to store it (${problemOf('', why).text}). ${FILE_FIRST}`;
}
