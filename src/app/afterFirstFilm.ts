import { effect } from '@preact/signals';
import { state } from './state.ts';

/** Calls `act` once, when the first film is laid and judged, or the job is known not to give one: the page has nothing more pressing to do. */
export function afterFirstFilm(act: () => void): void {
  let isDone = false;
  const stop = effect(() => {
    const isShown = state.film.value !== null || state.jobProblem.value !== null;
    if (isDone || !isShown || state.working.value) return;
    isDone = true;
    act();
    // Not within the effect's own first run, when it has no way to stop yet.
    queueMicrotask(() => stop());
  });
}
