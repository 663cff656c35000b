import type { Signal } from '@preact/signals';
import { startAutosave } from '../storage/autosave.ts';
import { openShelf, type Shelf } from '../storage/database.ts';
import { startClient } from '../worker/client.ts';
import { DEMO_HAND_COAT } from '../../sim/index.ts';
import { demoWithSession } from './demo.ts';
import { connectFiles } from './files.ts';
import { restore } from './restore.ts';
import { connectShapes } from './shapeCommands.ts';
import { startSession, type Session } from './session.ts';
import { state, type StateKey } from './state.ts';
import { keptIn } from './stateTable.ts';
import { followTheme } from './theme.ts';
import { bindKeys } from './keys.ts';
import { problemOf } from './problem.ts';

/** Restores the last work, starts the worker and the saving; resolves when the window can be shown. */
export async function start(): Promise<void> {
  followTheme();
  bindKeys();
  const shelf = await openKeptWork();
  const hasWork = shelf !== null && (await restoreFrom(shelf));
  if (shelf !== null) keepSaving(shelf);
  if (!hasWork) void openDemo();
  startWorker();
}

async function openKeptWork(): Promise<Shelf | null> {
  try {
    return await openShelf();
  } catch (why) {
    tellStorage(why);
    return null;
  }
}

async function restoreFrom(shelf: Shelf): Promise<boolean> {
  try {
    return restore(await shelf.read());
  } catch (why) {
    tellStorage(why);
    return false;
  }
}

function keepSaving(shelf: Shelf): void {
  const keys = (Object.keys(keptIn) as StateKey[]).filter((key) => keptIn[key] !== 'nowhere');
  const watched = Object.fromEntries(keys.map((key) => [key, state[key] as Signal<unknown>]));
  const autosave = startAutosave(shelf, watched, (why) => {
    if (why === null) state.storageProblem.value = null;
    else tellStorage(why);
  });
  addEventListener('pagehide', () => void autosave.flush());
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void autosave.flush();
  });
}

function tellStorage(why: unknown): void {
  const reason = why instanceof Error ? why.message : String(why);
  state.storageProblem.value = `The browser refused to store it (${reason}). Save the job as a file before you leave this page.`;
}

/** A first visit finds the worst fault open, with its cause and cure. */
const WORST_FAULT = { fault: 0, zone: 0 };

/**
 * A first visit opens on the coat that a hand laid, since its faults show what the tool is for.
 * The recorded session comes after the first film; a job that was changed meanwhile is left alone.
 */
async function openDemo(): Promise<void> {
  state.coatId.value = DEMO_HAND_COAT;
  const first = state.job.peek();
  try {
    const demo = await demoWithSession();
    if (state.job.peek() !== first) return;
    state.job.value = demo;
    state.chosenFault.value = WORST_FAULT;
  } catch (thrown) {
    state.notice.value = problemOf('The recorded session of the demo could not be loaded; its coats are as planned', thrown);
  }
}

function startWorker(): void {
  let session: Session | null = null;
  const open = (): Worker => new Worker(new URL('../worker/worker.ts', import.meta.url), { type: 'module', name: 'crosscoat' });
  const restarted = (why: string): void => {
    state.notice.value = {
      title: 'The simulation stopped and was started again',
      text: `Your job is as you left it. Reason: ${why}.`,
      place: {},
    };
    session?.resend();
  };
  session = startSession(startClient(open, restarted), startClient(open, restarted));
  connectFiles(session);
  connectShapes(session);
}
