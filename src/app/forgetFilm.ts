import { batch } from '@preact/signals';
import { state } from './state.ts';

/**
 * Puts away everything that was worked out from a job, and what was chosen in it: another job, or
 * another coat that cannot be sprayed, must not stand beside the figures of the one before.
 */
export function forgetFilm(): void {
  batch(() => {
    state.film.value = null;
    state.verdict.value = null;
    state.replay.value = null;
    state.replay_s.value = null;
    state.playing.value = false;
    state.timePlaying.value = false;
    state.life.value = null;
    state.moment.value = null;
    state.lifeVerdict.value = null;
    state.chosenFault.value = null;
    state.chosenStrokes.value = [];
    state.strokesAt.value = null;
    state.jobProblem.value = null;
  });
}
