import { state } from './state.ts';

/** Takes another coat in hand; what was chosen of the last one's film is let go. */
export function chooseCoat(id: string): void {
  state.coatId.value = id;
  state.replay_s.value = null;
  state.playing.value = false;
  state.chosenFault.value = null;
  state.chosenStrokes.value = [];
}
