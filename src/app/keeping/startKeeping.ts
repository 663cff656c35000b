import { effect, type Signal } from '@preact/signals';
import { startAutosave } from '../../storage/autosave.ts';
import { openDatabase, shelfOf } from '../../storage/database.ts';
import { jobStore } from '../../storage/jobStore.ts';
import { restore } from '../restore.ts';
import { state, type StateKey } from '../state.ts';
import { keptIn } from '../stateTable.ts';
import { keepJob } from './jobInHand.ts';
import { lastWork } from './lastWork.ts';
import { tellStorage } from './tellStorage.ts';

/** Under this name a window remembers its own job, so that two windows on two jobs each come back to theirs. */
const OWN_JOB = 'crosscoat-job';

/** Puts back what this browser keeps, and keeps what changes from now on. @returns whether a job was restored. */
export async function startKeeping(): Promise<boolean> {
  try {
    const database = await openDatabase();
    const [shelf, store] = [shelfOf(database), jobStore(database)];
    const kept = await shelf.read();
    const work = await lastWork(store, [ownJob(), kept.get('jobId')]);
    const isRestored = await restore(kept, work);
    const keeper = keepJob(store, isRestored ? work : null);
    const keys = (Object.keys(keptIn) as StateKey[]).filter((key) => keptIn[key] === 'browser' && key !== 'drafts');
    const autosave = startAutosave(shelf, Object.fromEntries(keys.map((key) => [key, state[key] as Signal<unknown>])), (why) => tellStorage('view', why));
    const flush = (): void => void Promise.all([keeper.flush(), autosave.flush()]);
    addEventListener('pagehide', flush);
    document.addEventListener('visibilitychange', () => (document.hidden ? flush() : void keeper.look()));
    effect(() => rememberOwn(state.jobId.value));
    return isRestored;
  } catch (why) {
    tellStorage('opening', why);
    return false;
  }
}

function ownJob(): string | null {
  try {
    return sessionStorage.getItem(OWN_JOB);
  } catch {
    return null;
  }
}

function rememberOwn(id: string): void {
  try {
    sessionStorage.setItem(OWN_JOB, id);
  } catch {
    // It is remembered for all windows together.
  }
}
