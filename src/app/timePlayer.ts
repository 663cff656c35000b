import { effect } from '@preact/signals';
import { state } from './state.ts';
import { timeStep_s } from './timeScale.ts';

/** A frame that took longer than this does not leap further: a machine that cannot keep up plays slower, s. */
const LONGEST_FRAME_S = 0.4;
/** A screen shows no more frames than one in this. */
const SHORTEST_FRAME_MS = 16;

/** Shows the film in time, from trigger on at first, or goes back to the film as laid. */
export function showInTime(inTime: boolean): void {
  state.replay_s.value = null;
  state.playing.value = false;
  state.inTime.value = inTime;
}

/** Plays on, from the start when it stands at the end, or pauses. */
export function playTime(): void {
  const life = state.life.peek();
  if (life === null || !life.isWhole) return;
  if (!state.timePlaying.peek() && state.filmTime_s.peek() >= life.watched_s) state.filmTime_s.value = 0;
  state.timePlaying.value = !state.timePlaying.peek();
}

/** Goes to a time and stays there. */
export function goToTime(time_s: number): void {
  const end_s = state.life.peek()?.watched_s ?? 0;
  state.timePlaying.value = false;
  state.filmTime_s.value = Math.min(end_s, Math.max(0, time_s));
}

/** Some arrow steps on or back. */
export function stepTime(steps: number): void {
  const now_s = state.filmTime_s.peek();
  // A step back is as long as the step that led here, so that it returns.
  const from_s = steps < 0 ? now_s - 1e-6 : now_s;
  goToTime(now_s + steps * timeStep_s(from_s, state.life.peek()?.sprayed_s ?? 0));
}

/**
 * Moves the time while it plays. The next time is asked for when the film at the last one has come, so
 * nothing piles up however long a film takes, and the worker goes on while the page draws.
 * @returns a way to stop for good.
 */
export function runTime(): () => void {
  let timer = 0;
  let before_ms: number | null = null;
  const step = (): void => {
    const end_s = state.life.peek()?.watched_s ?? 0;
    const now_ms = performance.now();
    const passed_s = Math.min(LONGEST_FRAME_S, (now_ms - (before_ms ?? now_ms)) / 1000);
    before_ms = now_ms;
    const next_s = Math.min(end_s, state.filmTime_s.peek() + passed_s * state.timeSpeed.peek());
    if (next_s >= end_s) state.timePlaying.value = false;
    state.filmTime_s.value = next_s;
  };
  const stop = effect(() => {
    clearTimeout(timer);
    const shown_s = state.moment.value?.time_s;
    if (!state.timePlaying.value) {
      before_ms = null;
      return;
    }
    before_ms ??= performance.now();
    if (shown_s !== state.filmTime_s.peek()) return;
    timer = setTimeout(step, Math.max(1, SHORTEST_FRAME_MS - (performance.now() - before_ms)));
  });
  return () => {
    stop();
    clearTimeout(timer);
  };
}
