import { closeStep } from '../document.ts';
import { state } from '../state.ts';

/** Nothing before now can be undone. Undo would take a signature back without a word in the history; reopening leaves one. */
export function endUndo(): void {
  closeStep();
  state.past.value = [];
  state.future.value = [];
}
