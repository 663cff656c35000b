import { startClient } from '../worker/client.ts';
import { DEMO_HAND_COAT } from '../../sim/index.ts';
import { demoWithSession } from './demo.ts';
import { connectFiles } from './files.ts';
import { startKeeping } from './keeping/startKeeping.ts';
import { connectShapes } from './shapeCommands.ts';
import { startSession, type Session } from './session.ts';
import { state } from './state.ts';
import { followTheme } from './theme.ts';
import { bindKeys } from './keys.ts';
import { problemOf } from './problem.ts';

/** Restores the last work, starts the worker and the saving; resolves when the window can be shown. */
export async function start(): Promise<void> {
  followTheme();
  bindKeys();
  if (!(await startKeeping())) void openDemo();
  startWorker();
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
