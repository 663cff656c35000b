import { effect, type Signal } from '@preact/signals';
import { startAutosave } from '../../storage/autosave.ts';
import { openDatabase, shelfOf, type Shelf } from '../../storage/database.ts';
import { jobNews } from '../../storage/jobNews.ts';
import { jobStore, type JobStore } from '../../storage/jobStore.ts';
import { problemOf } from '../problem.ts';
import { restore } from '../restore.ts';
import { state, type StateKey } from '../state.ts';
import { keptIn } from '../stateTable.ts';
import { keepJob } from './jobInHand.ts';
import { lastWork } from './lastWork.ts';
import { lastWords, ownJob, rememberLastWords, rememberOwnJob, type LastWords } from './ownWindow.ts';
import { tellStorage } from './tellStorage.ts';

/** Puts back what this browser keeps, and keeps what changes from now on. @returns whether a job was restored. */
export async function startKeeping(): Promise<boolean> {
  try {
    const database = await openDatabase();
    const [shelf, store] = [shelfOf(database), jobStore(database)];
    const { own, refused } = await keepLastWords(shelf, store);
    const kept = await shelf.read();
    const work = await lastWork(store, [own, kept.get('jobId')]);
    const isRestored = await restore(kept, work);
    const keeper = keepJob(store, isRestored ? work : null);
    const keys = (Object.keys(keptIn) as StateKey[]).filter((key) => keptIn[key] === 'browser' && key !== 'drafts');
    const autosave = startAutosave(shelf, Object.fromEntries(keys.map((key) => [key, state[key] as Signal<unknown>])), (why) => tellStorage('view', why));
    const flush = (): Promise<unknown> => Promise.all([keeper.flush(), autosave.flush()]);
    const remember = (): void => {
      const words = { works: keeper.lastWords(), view: autosave.unsaved() };
      // What was refused stays until it was tried once more.
      rememberLastWords(words.works.length === 0 && words.view.length === 0 && refused !== null ? refused : words);
    };
    addEventListener('pagehide', () => {
      remember();
      // A page that was only put away has the time, and goes on from what it has then.
      void flush().then(remember);
    });
    document.addEventListener('visibilitychange', () => (document.hidden ? void flush() : void keeper.look()));
    effect(() => rememberOwnJob(state.jobId.value));
    return isRestored;
  } catch (why) {
    tellStorage('opening', why);
    return false;
  }
}

/** Keeps what this window had no time to keep when it last went. @returns id of its own job, null where it had none, and what was refused and is to be tried once more. */
async function keepLastWords(shelf: Shelf, store: JobStore): Promise<{ readonly own: string | null; readonly refused: LastWords | null }> {
  let own = ownJob();
  const words = lastWords();
  if (words === null) return { own, refused: null };
  try {
    await shelf.write(new Map(words.view));
    const { keepLastWord } = await import('./keepLastWord.ts');
    const news = jobNews();
    for (const word of words.works) {
      const { id, revision } = await keepLastWord(store, word);
      if (revision !== null) news.tell({ id, revision });
      if (own === word.id) own = id;
    }
    news.close();
    rememberLastWords({ works: [], view: [] });
    return { own, refused: null };
  } catch (why) {
    state.notice.value = problemOf(`What you typed last, before this page was left, could not be kept${words.isRefused === true ? '' : '; it is tried once more when the page is loaded again'}`, why);
    return { own, refused: words.isRefused === true ? null : { ...words, isRefused: true } };
  }
}
