import { readFileSync } from 'node:fs';

/** The text of a job file kept as a fixture. */
export function jobText(name: string): string {
  return readFileSync(new URL(`../../fixtures/jobs/${name}.json`, import.meta.url), 'utf8');
}

/** The error that a call throws; fails where it throws none. */
export function thrownBy(call: () => unknown): Error {
  try {
    call();
  } catch (error) {
    return error as Error;
  }
  throw new Error('nothing was thrown');
}
