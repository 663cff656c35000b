import type { SetUpSpec } from '../../../sim/index.ts';
import { changeJob, closeStep } from '../document.ts';
import { dropDraft } from '../fieldText.ts';
import { pointerOf, withValueAt } from '../path.ts';
import { state } from '../state.ts';

/**
 * Puts what a card has proved in place of the set-up that it was asked of, as one step of undo. A
 * set-up that was changed meanwhile is left as it is. Text that waits in a box of the set-up would
 * hide the new number and is let go; what is being typed on the card stays.
 */
export function applyProved(asked: SetUpSpec, proved: SetUpSpec): void {
  const job = state.job.peek();
  const index = job.setUps.indexOf(asked);
  if (index < 0) return;
  const path = ['setUps', index] as const;
  const [own, card] = [`${pointerOf(path)}/`, `${pointerOf([...path, 'card'])}/`];
  for (const pointer of Object.keys(state.drafts.peek())) {
    if (pointer.startsWith(own) && !pointer.startsWith(card)) dropDraft(pointer);
  }
  closeStep();
  changeJob('Use the test card', withValueAt(job, path, proved));
}
