import { effect } from '@preact/signals';
import { state } from './state.ts';

/** The reader's first look, and the first key, come before what can wait. */
const PAUSE_MS = 2000;

/** Calls `act` once, a little after the first film is laid and judged, or the job is known not to give one. */
export function afterFirstFilm(act: () => void): void {
  let isDone = false;
  const stop = effect(() => {
    const isShown = state.film.value !== null || state.jobProblem.value !== null;
    if (isDone || !isShown || state.working.value) return;
    isDone = true;
    setTimeout(act, PAUSE_MS);
    // Not within the effect's own first run, when it has no way to stop yet.
    queueMicrotask(() => stop());
  });
}
