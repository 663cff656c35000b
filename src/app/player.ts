import { effect } from '@preact/signals';
import { state } from './state.ts';

/** Plays on from where the replay stands, from the start when it is at the end, or pauses. */
export function playOn(): void {
  const film = state.film.peek();
  if (film === null) return;
  if (state.playing.peek()) {
    state.playing.value = false;
    return;
  }
  const now = state.replay_s.peek();
  if (now === null || now >= film.end_s) state.replay_s.value = film.start_s;
  state.playing.value = true;
}

export function seek(time_s: number): void {
  state.playing.value = false;
  state.replay_s.value = time_s;
}

/** Leaves the replay: the finished film with its faults. */
export function endReplay(): void {
  state.playing.value = false;
  state.replay_s.value = null;
}

/** Moves the replay's time while it plays. @returns a way to stop for good. */
export function runPlayer(): () => void {
  let frame = 0;
  let before_ms: number | null = null;
  const tick = (now_ms: number): void => {
    const film = state.film.peek();
    const time_s = state.replay_s.peek();
    if (!state.playing.peek() || film === null || time_s === null) return;
    const passed_s = before_ms === null ? 0 : ((now_ms - before_ms) / 1000) * state.playSpeed.peek();
    before_ms = now_ms;
    const next_s = Math.min(film.end_s, time_s + passed_s);
    state.replay_s.value = next_s;
    if (next_s >= film.end_s) state.playing.value = false;
    else frame = requestAnimationFrame(tick);
  };
  const stop = effect(() => {
    cancelAnimationFrame(frame);
    before_ms = null;
    if (state.playing.value) frame = requestAnimationFrame(tick);
  });
  return () => {
    stop();
    cancelAnimationFrame(frame);
  };
}
