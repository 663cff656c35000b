import { problemOf } from '../problem.ts';
import { state } from '../state.ts';

/** What does not work now, by what was tried: what works again takes back only its own words. */
const failing = new Map<string, unknown>();

/** Tells that storage refused `what`; null: it works again. */
export function tellStorage(what: string, why: unknown): void {
  if (why === null) failing.delete(what);
  else failing.set(what, why);
  void show();
}

async function show(): Promise<void> {
  const [why] = failing.values();
  if (why === undefined) {
    state.storageProblem.value = null;
    return;
  }
  // Should the fuller words not come.
  state.storageProblem.value ??= `${problemOf('', why).text}. Save the job as a file before you leave this page.`;
  const { refusedWords } = await import('./storageWords.ts');
  if ([...failing.values()][0] === why) state.storageProblem.value = refusedWords(why);
}
